/** The site as the tests build it: under a path, so that an address that forgets the path is found out. */
export const siteUnderTest = { folder: ".cache/site", base: "/handbook/", address: "https://handbook.example" } as const;
