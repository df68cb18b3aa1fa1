/** Notices of the copy that a device keeps of the site. */
export const offline = {
  newVersion: "A new version of these pages is ready. What you typed stays.",
  othersOpen: "A new version is ready. Close the other open pages of this site first, then choose it again.",
  stuck: "The new version could not be put in place. Close all pages of this site, then open it again.",
  useIt: "Use it now",
  later: "Later",
  missingPart:
    "A part of this page could not be fetched: there is no network, or the page was renewed after you opened it. What you typed stays.",
  reload: "Load the page again",
};
