/** The list of assignments kept on a device. */
export const keptAssignments = {
  name: "Assignments on this device",
  keep: "Keep this assignment on the device",
  kept: (name: string) => `“${name}” is kept on this device.`,
  removed: (name: string) => `“${name}” is removed.`,
  undo: (name: string) => `Undo: bring back “${name}”`,
  back: (name: string) => `“${name}” is back.`,
  remove: (name: string) => `Remove “${name}” from this device`,
  troubles: {
    off: "This browser keeps nothing for this site: save the assignment file, or keep the link.",
    newer: "The assignments on this device were kept by a newer handbook. Load this page again.",
    unreadable: "The list of assignments on this device could not be read. It was put aside, not deleted.",
  },
  full: "There is no room on this device, or storage is switched off: save the assignment file instead.",
  unnamed: "Assignment without a title",
};
