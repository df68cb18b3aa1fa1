/** The page for instructors on links and frames; `code`, **strong** words and [links](/path/) in it. */
export const linksPage = {
  description:
    "For instructors: a link, a frame or a code that opens a calculator or a plan with your values in it, some of them fixed, in the units you choose.",
  lead: "For instructors: a link, a frame in a course page or a code on paper that opens a calculator or a plan with your values in it. You say which of them your students can change. There is nothing to sign up for, and nothing is sent anywhere: everything is in the address.",
  make: "Make one",
  steps: [
    "Open the page with the calculator, or [plan a part](/plan/), and enter the values your students are to start from.",
    "Below the answer, or below the form of the plan, open **Link and course page**.",
    "Tick the values they cannot change. Choose the units lengths are shown in, or leave that to each visitor.",
    "Copy the link into a message, copy the frame into the source of a course page, or show the code for phones to scan.",
  ],
  example: "Try it: [a bend in 2 mm cold-rolled steel](example), with metal and thickness fixed and lengths in millimetres.",
  address: "What is in the address",
  addressLead:
    "You can write such an address by hand, or change one. Every value is a name, an equals sign and what you would type into the field.",
  parts: [
    [
      "`bend-length.thickness=2mm`",
      "A value: the name of the calculator, a point, the name of the input. Both are listed with [all calculators](/tables/calculators/). Values of a plan begin with `plan.`. What is left out is at its start value.",
    ],
    [
      "`bend-length.fixed=material,thickness`",
      "Inputs that cannot be changed there, with commas between them. They are shown with the words “Given by the link”, in a frame too. Give each of them its value as well, or it is fixed at the start value of that page. A name that the calculator does not have is named in a message.",
    ],
    [
      "`units=mm`, `units=inch` or `units=fraction`",
      "Lengths are shown in millimetres, decimal inches, or inches and sixty-fourths. The switch at the top of the page is locked and says why. What a visitor has chosen before stays chosen on every other page.",
    ],
    ["`plan.packed=1.…`", "A plan whose address would be very long is packed into fewer letters, fixed values and all."],
  ],
  wayOut:
    "On its ordinary page a visitor can always **start over with own values**; in a frame that way out is not shown. The display of the shop and the command line know no fixed values.",
  honest: "What it does not do",
  honestText:
    "Fixed means that nobody loses the given value by a slip of the finger. It is no lock: whoever edits the address can change it. For numbers of each student’s own, and to see who has done the work, make an [assignment](/assign/).",
  frame: "A frame in a course page",
  frameLead:
    "Put this into the source of the course page. Each calculator has such a page of its own, and so has the plan, at `/embed/plan/`.",
  frameText:
    "The frame works as it is: what is taller than the frame is scrolled inside it. A student’s browser asks this site for the frame, so the site has to be one that your students can reach. Where a course page does not show frames of other sites, give the link instead.",
  height: "As tall as it needs",
  heightLead:
    "If your course page may hold scripts, put this one in once. It gives every frame of this handbook the height it asks for.",
  heightText:
    "It listens for a message that a framed page sends to the page around it, once when it is shown and again whenever its height changes:",
  message: [
    ["`type`", "always `flat-to-formed:height`"],
    ["`id`", "name of the calculator, such as `bend-length`, or `plan`, or `task` for the page of an assignment"],
    ["`height`", "of the whole page in the frame, in CSS pixels"],
  ],
  stays: "The message holds nothing else, and a framed page listens to none. These names will stay as they are.",
  safety: "Cautions go with it",
  safetyText:
    "A calculator in a frame brings its cautions and sources along. It knows neither your machine nor your sheet: the machine’s manual, the rules of your shop and the people trained on the machine come first. Students who are to work at a machine need [all the cautions](/safety/) and your instruction, not only a number.",
} as const;
