/** Words of the page on which a student works on an assignment. */
export const task = {
  name: "Task",
  about: "The page an assignment opens: questions with numbers of your own, and feedback on what you enter.",
  brand: "Flat to Formed",

  noScript:
    "This page needs JavaScript: the numbers of your task are worked out on your device, and your answers are checked there. Switch it on for this site, or ask your instructor for the task on paper.",
  failed: "The page could not be loaded completely. Load it again.",

  // Without an assignment
  emptyTitle: "Open your task",
  emptyLead:
    "A task comes as a link from your instructor. The link holds the questions; opened here, every student gets numbers of their own, works by hand, and finds out at once whether the answers are right.",
  openLink: "Paste the link of the task",
  openButton: "Open it",
  openFile: "Open an assignment file",
  openNothing: "That holds no assignment. Paste the whole link, from https to its end, or open the file that came with it.",
  /** In place of the name of a file, for what was pasted. */
  openText: "The text",
  openNoJson: (name: string) => `${name} is not an assignment file: it is not JSON.`,
  openProblem: (name: string, problem: string) => `${name}: ${problem}`,
  openUnread: "The file could not be read.",

  // A damaged address
  damagedTitle: "This link does not work",
  damagedLead: "The address of this page should hold a task, but something in it is missing or was changed:",
  damagedHow:
    "Perhaps only a part of the link was copied. Open it again from where you got it, or ask your instructor for a new one. You can also paste it here.",

  // Who works here
  whoTitle: "Who are you?",
  who: "Your student id",
  whoHelp:
    "As your instructor has it in the list: a number, a user name or your name. Capitals and extra spaces make no difference.",
  whoButton: "Show my numbers",
  whoPrivate:
    "Your numbers are made on this device, from the name of the course and your id. Nothing is sent anywhere: not the id, not your answers.",
  whoKept: "This browser keeps both, so that you can go on later.",
  worksHere: (student: string) => `Numbers for ${student}`,
  numbersProblem: (student: string, problem: string) =>
    `There are no numbers for ${student}: ${problem} Tell your instructor; the assignment needs another range.`,
  another: "Not you? Enter another id",

  // Questions
  courseLine: (course: string) => `Course: ${course}`,
  question: (number: number, title: string) => `${number}. ${title}`,
  given: "Given",
  ownNote: "Values marked “yours” are for your id alone.",
  own: "yours",
  asked: "Find",
  drawingNote: "Drawn with your numbers. A question mark stands where the drawing would give away an answer.",
  answerUnit: (unit: string) => `In ${unit}, or with another unit behind the number.`,
  answerPlain: "A plain number.",
  tolerance: (text: string) => (text === "exactly" ? "It must be exact." : `Right within ${text}.`),
  lengthHelp: "Lengths may be mm, decimal inches or fractions: 82.8, 3.26 in, 3 17/64 in.",
  check: "Check",
  checkNothing: "Enter an answer first.",
  tries: (count: number) => (count === 1 ? "1 try" : `${count} tries`),
  right: "Right.",
  rightWithin: (tolerance: string) => `Right, within ${tolerance}.`,
  slip: "Not yet, but you are close to it.",
  wrong: "Not yet. Check that every value went in as it is given, with its unit, and go through the steps once more.",
  wrongAgain: "Not yet. Compare your steps with the formulas below, one after the other.",
  wrongStuck: "Not yet. Read how it is explained, or ask your instructor: bring the steps you wrote down.",
  explained: (title: string) => `How it is explained: ${title}`,
  rightCount: (right: number, all: number) => `${right} of ${all} answers right`,

  // Prediction
  predictTitle: "First, your prediction",
  predictHow: "What do you expect? An estimate will do and does not count as a try. Then the formulas open.",
  predictLabel: (label: string) => `I expect for ${label.charAt(0).toLowerCase()}${label.slice(1)}`,
  predictButton: "That is my prediction",
  predicted: (text: string) => `You predicted ${text}.`,

  // Working
  formulas: "Formulas",
  working: "The working with your numbers",
  plan: "The plan with your numbers",
  workingElsewhere: "The formulas could not be loaded here. They are on",
  workingPage: "the page of this calculator",

  // Result code
  doneTitle: "All right",
  doneLead: "Hand in this code, as your instructor asked for it:",
  partTitle: "Not finished? A code for what is right so far",
  partLead: "This code says which questions are right and which you have tried. One with more in it can be handed in later.",
  copyCode: "Copy the code",
  scan: "Show it as a code to scan",
  scanLabel: "Your id and result code, to scan with a phone",
  codeAbout:
    "The code holds a mark of this task, a mark of your id, and which questions are right. It does not hold your answers or the number of your tries.",

  // Kept on this device
  keptTitle: "Kept on this device",
  kept: "What you enter stays in this browser until you forget it here. On a shared computer, forget it when you have handed in your code.",
  keptOff: "This browser keeps nothing for this page: hand in your code before you leave it.",
  ownTab: "Open the task in a tab of its own, where it can be kept",
  keptNewer: "What this browser keeps comes from newer pages than these. It is left as it is; load the page again.",
  keptUnreadable: "What this browser kept for this page could not be read. It was put aside, not deleted.",
  forget: "Forget my answers here",
  forgetSure: "Your id and everything you entered for this task will be gone from this device. Forget it?",
  forgetYes: "Yes, forget it",
  forgetNo: "No, keep it",

  caution:
    "These numbers are an exercise. At a machine its own plate and manual, the rules of the shop and your instructor come first.",
};
