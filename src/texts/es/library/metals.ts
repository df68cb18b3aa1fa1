export const metals: Readonly<Record<string, string>> = {};
