/** What each page is called and what one finds there, in one sentence, by its path. Other languages say it by these words. */
export const siteMap = {
  "/marking/": { title: "Marking out", about: "Get lines and centres from a drawing onto the sheet, from one datum edge." },
  "/cutting/": { title: "Cutting", about: "Shears, snips and saws: which one, how much force, and how corners are notched." },
  "/punching/": { title: "Punching", about: "Holes with punch and die: force, clearance, and how near to an edge or a bend." },
  "/bending/": {
    title: "Bending",
    about: "How long the blank must be, where the line goes, and how far past the angle to swing.",
  },
  "/rolling/": { title: "Rolling", about: "Tubes and cones: the blank, the setting of the rolls, the flat ends." },
  "/joining/": { title: "Joining", about: "Spot welds, rivets and folded seams: how many, how far apart, how strong." },
  "/furnace/": { title: "Furnace", about: "Soften metal that earlier work has hardened, before a bend that would crack it." },
  "/plan/": {
    title: "Plan a part",
    about: "From a drawing to a blank with every scribe line, hole and check, on one sheet of paper.",
  },
  "/sign-off/": {
    title: "Sign-off sheet",
    about: "The machines that a plan uses, with their cautions and what is asked before starting, for a signature.",
  },
  "/sheet/": {
    title: "Cut plan",
    about: "Many blanks out of stock sheets and offcuts: as few sheets as possible, every stop setting in order.",
  },
  "/shop/": { title: "This shop", about: "The machines, stock and measured bends that the answers are held against." },
  "/tables/": { title: "Tables", about: "Gauges, metals, radii, welds, rivets, tolerances: every number with its source." },
  "/tables/calculators/": {
    title: "Calculators",
    about: "Every calculator with its inputs, answers, embed link and command line.",
  },
  "/checked/": { title: "Checked values", about: "Every published value beside what this handbook computes." },
  "/sources/": { title: "Sources", about: "Where each formula and number was read, or that it is from memory." },
  "/device/": {
    title: "On this device",
    about: "The copy that works without a network, what else this device keeps, and how to clear it.",
  },
  "/safety/": { title: "Safety", about: "All standing cautions in one place." },
  "/glossary/": { title: "Glossary", about: "Trade terms in plain words." },
  "/assign/": {
    title: "Assignments",
    about: "For instructors: questions with own numbers for every student, as a link, on paper or as a question bank.",
  },
  "/links/": {
    title: "Links and course pages",
    about: "For instructors: a link, a frame or a code with your values in it, some of them fixed.",
  },
  "/display/": {
    title: "Shop display",
    about: "For a touch screen on the wall: limits, cautions and one number of each machine, in large letters.",
  },
  "/tables/gauges/": {
    title: "Gauge numbers",
    about: "What a gauge number is in inches and millimetres, in every list side by side.",
  },
  "/tables/materials/": {
    title: "Metals",
    about: "Density, stiffness and strengths of every metal, with the band each value lies in.",
  },
  "/tables/smallest-radii/": {
    title: "Smallest radii",
    about: "How sharp a bend may be before it cracks, by metal and thickness.",
  },
  "/tables/spot-settings/": {
    title: "Spot settings",
    about: "Force, time and current to start from when spot welding, by thickness.",
  },
  "/tables/hole-circles/": {
    title: "Hole circle table",
    about: "Centres and chords of evenly spaced holes, and a list of coordinates to copy.",
  },
  "/tables/rivets/": { title: "Rivet sizes", about: "Sizes of solid rivets with their drills, least pitch and edge distance." },
  "/tables/fractions/": { title: "Inch fractions", about: "Every sixty-fourth of an inch in decimal inches and in millimetres." },
  "/tables/general-tolerances/": {
    title: "General tolerances",
    about: "What ± a size has when the drawing says only “ISO 2768-m”.",
  },
  "/tables/thickness-tolerances/": {
    title: "Thickness tolerances",
    about: "How far real sheet may be from the thickness it was sold as.",
  },
};
