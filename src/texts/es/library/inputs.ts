export const inputs: Readonly<Record<string, string>> = {};
