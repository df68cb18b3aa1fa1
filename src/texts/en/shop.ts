/** The page of the shop: what its file says, and the form with which a device changes it. */
export const shop = {
  description:
    "The machines, tooling, stock and measured bends that every answer is held against, and what the ratings mean in other metals.",
  lead: (name: string) =>
    `${name}: the machines, tooling, sheets and measured bends that answers are held against. The shop in this copy of the handbook is invented; the rating on a machine’s own plate, its manual and the people trained on it come first.`,
  failed: "The form could not be loaded. Load the page again.",
  forEverybody: "Changing it for everybody",
  /** The name of the file stands between them. */
  file: [
    "All of this is one text file, ",
    ", in which every line says what it is for. A value that cannot be is refused when the handbook is built, with the file, the line, what is written there and what is allowed. A file saved above is of the same form: put it in the place of ",
    " and build.",
  ],

  device: {
    title: "On this device",
    changedOf: (date: string) => `Calculators and the plan on this device use your changes to the shop, of ${date}.`,
    unchanged:
      "Try other machines, or a shop of your own, without touching the file: changes stay in this browser, and every calculator and the plan on this device use them.",
    fileChanged:
      "The shop’s own file has changed since you began. What you see here is your copy; take your changes off to get the new file.",
    off: "This browser keeps nothing for these pages: changes hold only until the page is left. Save them as a file.",
    newer: (what: string) =>
      `${what} on this device come from a newer version of these pages. They are left as they are; load the page again.`,
    changes: "The changes to the shop",
    measuredBends: "The measured bends",
    unreadable: (name: string) =>
      `Something kept on this device could not be read. It was not deleted: the browser keeps it under “${name}”.`,
    saveUnreadable: "Save it as a file",
    deleteUnreadable: "Delete it",
    unsaved:
      "This browser could not keep the last change: its storage is off or full. It holds until the page is left. Save it as a file.",
    toMend: (count: number) => (count === 1 ? "One value needs another entry." : `${count} values need other entries.`),
    lastCount: "Until then the last values that could be used count.",
    change: "Change the shop on this device",
    changeMore: "Change more",
    open: "Open a shop file",
    save: "Save as shop.yaml",
    takeOff: "Back to the shop’s own file",
    bringBack: (date: string) => `Bring back the changes of ${date}`,
    takenOff: "Everything is held against the shop’s own file again. Your changes are put aside.",
    broughtBack: (date: string) => `The changes of ${date} are in use again.`,
    refused: (file: string) => `${file} cannot be used, and nothing here was changed.`,
    inUse: (file: string) => `${file} is in use on this device.`,
    filled: "What it leaves out was taken from the shop’s own file:",
    savedLastUsable: "Saved the last state that can be used: the values marked below are not in the file.",
    tooLong: (characters: number, most: number) => `The file has ${characters} characters; allowed is up to ${most}.`,
    fault: (line: number, place: string, message: string) => `Line ${line}${place === "" ? "" : `, ${place}`}: ${message}`,
    moreFaults: (unsaid: number) => `And ${unsaid} more.`,
    /** Within the file that is saved. */
    savedOn: (date: string) => `This shop, saved on ${date} from the handbook's own form.`,
    notFilledIn: (names: readonly string[]) => `Not filled in yet: ${names.join(", ")}`,
    needsEntry: "needs another entry",
    bends: "Bends measured on this device",
    bendsFirst: "They come before those of the file.",
    bendFault: "A line with a fault is kept, but not used until it is corrected.",
    bendsFrom: "Practice pieces put theirs here.",
    bendList: "Bends",
    saveBends: "Save bends as CSV",
    bringBackBend: (date: string) => `Bring back the bend of ${date}`,
  },

  changedHere: "changed here",
  fileSays: (what: string) => `; the file says ${what}`,
  changedOnDevice: "(changed on this device)",
  onDevice: "on this device",
  nothing: "nothing",
  none: "There is none.",
  round: (size: string) => `${size} round`,
  square: (size: string) => `${size} square`,

  machines: "Machines",
  /** The calculator of each machine. */
  calculators: {
    brake: "Load on the brake",
    shear: "Load on the shear",
    cornerCutter: "Corner of a box",
    bandSaw: "Blade for the saw",
    punch: "Load on the punch",
    rolls: "Setting of the rolls",
    welder: "Setting of the spot welder",
  },
  ratedFor: "Rated for",
  rating: (thickness: string, metal: string) => `${thickness} ${metal}`,
  ratingOver: (thickness: string, metal: string, length: string) => `${thickness} ${metal} over ${length}`,
  fingers: "Fingers",
  bands: "Bands",
  band: (teeth: number, width: string) => `${teeth} teeth an inch, ${width} wide`,
  punches: { caption: "Punches and the dies they fit", heads: ["Punch", "Its die", "Other dies it enters"] },
  furnaces: {
    caption: "Furnaces for annealing",
    heads: ["Furnace", "Hottest", "Strays from what was set", "Inside, wide × high × deep"],
  },

  stock: { title: "Stock", caption: "Sheets", heads: ["Metal", "Thickness", "Width", "Length"] },

  bends: {
    title: "Measured bends",
    about:
      "What practice pieces said on this brake. A blank worked out with the method “measured in this shop”, and the plan, take the best fitting one: same metal, thickness and radius within 5 %, and the same angle to 1°. How to measure one:",
    practicePieces: "practice pieces",
    none: "None yet.",
    caption: "Bends measured here",
    heads: ["Metal", "Thickness", "Inside radius", "Angle", "Bend deduction", "Pieces", "Date", "Lot, brake"],
  },

  otherMetals: {
    title: "What the plates mean in other metals",
    about:
      "A plate names one metal. In another one the machine takes the sheet that loads it as much as the job on its plate. The plate and the manual win over every number here; a clamp, a frame or a stroke may be the limit where force and moment are not.",
    asIn: "As in",
    and: "and",
    brakeAndRolls: "Brake and rolls:",
    byMoment: "by the bending moment, which goes with the yield strength Y and the square of the thickness:",
    loadOnBrake: "the load on the brake",
    settingOfRolls: "the setting of the rolls",
    shear: "Shear:",
    byForce: "by the force, which under a sloping blade goes with the shear strength τ and the square of the thickness:",
    parallel: ", for parallel blades with the thickness itself",
    loadOnShear: "the load on the shear",
    cornerCutter: "Corner cutter:",
    byLower: "the slope of its blades is not known, so the lower of both rules for a shear.",
    cornerOfBox: "the corner of a box",
    welder: "Spot welder:",
    notCarried: "its plate is for mild steel, and nothing carries that over to other metals. See",
    weldPair: "whether two metals weld",
    caption: "Largest thickness at the full length of each machine",
    metal: "Metal",
    onPlate: (machines: readonly string[]) => `(on the plate of the ${machines.map((each) => each.toLowerCase()).join(", ")})`,
    over: (thickness: string) => `over ${thickness}`,
    moreThanPlate:
      "* More than the thickness on the plate. Force or moment would allow it; clearances, clamp and stroke may not. Only the manual can say.",
    punch: "Punch:",
    byPunch: (name: string, force: string) =>
      `by the force of ${name}, ${force}: edge × thickness × shear strength. Small punches are limited by the stress in the punch itself, marked †.`,
    loadOnPunch: "the load on the punch",
    whichDie: "Which die fits the thickness is another question: see",
    dieForPunch: "the die for a punch",
    punchCaption: "Thickest sheet for each punch",
  },
};
