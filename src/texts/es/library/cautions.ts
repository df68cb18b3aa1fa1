export const cautions: Readonly<Record<string, string>> = {};
