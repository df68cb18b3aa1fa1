export const bending: Readonly<Record<string, string>> = {};
