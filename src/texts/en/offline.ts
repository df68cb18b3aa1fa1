/** What is said of the copy of the site that a device keeps. */
export const offline = {
  ready: "A new version of these pages is ready.",
  use: "Use it now",
  closeOthers: (others: number) =>
    `A new version is ready. Close the ${others === 1 ? "other page" : "other pages"} of this site first.`,
};
