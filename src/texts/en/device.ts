/** The page about what one device keeps of the handbook. */
export const device = {
  lead: "After one visit this browser keeps a copy of the whole handbook, search included, and needs no network. Nothing of it leaves the device.",
  noScript:
    "With JavaScript off no copy is made. A copy that is there already is deleted, like everything a site keeps, in the settings of the browser.",
  copy: "Copy of the handbook",
  looking: "Looking …",
  unsupported: "This browser keeps no copies of sites, or not in this kind of window. The handbook works with a network only.",
  refused: "No copy is kept on this device, because you chose so here.",
  none: "There is no copy yet. It is fetched after a page has been opened with a network.",
  fetching: "The copy is being fetched. You can go on reading meanwhile.",
  partial:
    "A copy was begun and is not complete. It is gone on with when a page is opened. When that does not help, there may be no room on this device: delete something else, then fetch it again.",
  complete: (files: number, size: string, when: string) => `Complete: ${files} files, ${size}, fetched ${when}.`,
  version: (version: string) => `Version ${version}.`,
  waiting: "A newer version has been fetched too. It is used once the other open pages of this site are closed.",
  silent: "The program that hands out the copy does not answer. Fetch it again.",
  room: (used: string, most: string) => `This site uses ${used} here; the browser gives it up to ${most}.`,
  look: "Look for a new version",
  newest: "This is the newest version.",
  noNetwork: "The site cannot be reached just now.",
  again: "Delete the copy and fetch it again",
  againWhy:
    "For when pages look wrong or old. The pages of this site reload from the network; plans, the shop’s changes and other things you made are not touched.",
  unreachable: "The site cannot be reached just now. Without its copy it cannot be opened until it can be.",
  againAnyway: "Delete it all the same",
  refuse: "Delete the copy and keep none",
  want: "Keep a copy",
  clearing: "Deleting the copy …",
  install: "As a program",
  installHow:
    "The handbook can be installed, and then opens in a window of its own. Look in the menu of the browser for “Install”, “Add to home screen” or “Add to dock”.",
  kept: "What else is kept here",
  keptAbout:
    "Made on this device and kept in this browser only. Clearing the browser’s data for this site deletes it; save what matters as a file on the page it belongs to.",
  nothing: "Nothing yet.",
  unreadable: "What could not be read",
  unreadableAbout:
    "Nothing is deleted because it cannot be read: it waits here. Save it as a file and show it to whoever looks after the handbook.",
  save: (name: string) => `Save ${name} as a file`,
  remove: (name: string) => `Delete ${name}`,
  /** What is kept under a key of the browser's storage. */
  names: {
    "flat-to-formed.units": "units chosen",
    "flat-to-formed.look": "look chosen",
    "flat-to-formed.copy": "whether a copy is kept",
    "flat-to-formed.shop": "changes to the shop",
    "flat-to-formed.shop.put-aside": "earlier changes to the shop",
    "flat-to-formed.bends": "bends measured here",
    "flat-to-formed.plans": "plans kept",
    "flat-to-formed:last-plan": "the last plan",
    "flat-to-formed.display": "settings of the shop screen",
  } as Readonly<Record<string, string>>,
};
