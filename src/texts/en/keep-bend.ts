/** Keeping the result of practice pieces on a device. */
export const keepBend = {
  summary: "Keep this result on this device",
  onePiece: "One piece has no ±, so it is not kept. Bend two or more, better five.",
  newer: "The bends on this device come from newer pages than these. Load the page again.",
  kept: "Kept. Blanks by the method “measured in this shop”, and the plan, use it on this device.",
  notKept: "This browser keeps nothing: its storage is off or full. This is the line for the shop’s file:",
  metal: "Metal of the pieces",
  lot: "Lot of the sheet, if known",
  brake: "Brake",
  date: "Date",
  keep: "Keep it",
  seeShop: "See this shop",
};
