export const units: Readonly<Record<string, string>> = {};
