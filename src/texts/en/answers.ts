/** Words of the instructor's page with the answers of an assignment and the codes handed in. */
export const answers = {
  title: "Answers",
  about: "Every student’s numbers and answers of an assignment, and who has handed in a result code.",
  lead: "Open an assignment, paste the class list, and this page works out every student’s numbers and answers. Paste the result codes that were handed in, and it says who is done.",
  noScript:
    "Scripts are off. This page needs them: numbers, answers and codes are worked out on this device, and nothing is sent anywhere. The question bank of an assignment, saved on the page where it was made, holds answers without scripts.",
  failed: "The page could not be loaded completely. Load it again.",
  openLink: "Paste the link of the assignment",

  forAssignment: (title: string) => `Answers: ${title}`,
  courseLine: (course: string, questions: number) =>
    `Course: ${course} · ${questions === 1 ? "1 question" : `${questions} questions`}`,
  asStudent: "Open it as a student",
  other: "Open another assignment",
  damagedTitle: "This assignment cannot be used",
  damagedLead: "The address should hold an assignment, but something in it is missing or was changed:",

  // Class list
  listTitle: "Class list",
  listLabel: "One student a line, the id first",
  listHelp:
    "From a spreadsheet or a file: what stands behind the id, such as a name, is only shown. Commas, semicolons or tabs part the columns; a line of headings is left out.",
  openFile: "Open a file",
  openUnread: "The file could not be read.",
  column: "Which column holds the ids?",
  columnOption: (number: number, example: string) =>
    example === "" ? `column ${number}` : `column ${number}, such as “${example}”`,
  counted: (count: number) => (count === 1 ? "1 student" : `${count} students`),
  heading: (line: string) => `The first line was taken for headings: ${line}`,
  listProblems: (count: number) => (count === 1 ? "1 line cannot be used:" : `${count} lines cannot be used:`),
  keep: "Keep this list on this device",
  keepHelp: "Otherwise it is gone when you leave the page. Nothing is sent anywhere.",
  keepFailed: "This browser could not keep the list: its storage is off or full.",
  keptNewer: "This browser keeps a class list of newer pages. It is left as it is; load the page again.",
  keptUnreadable: "The class list this browser kept could not be read. It was put aside, not deleted.",

  // Result codes
  codesTitle: "Result codes",
  codesLabel: "Everything that holds codes",
  codesHelp:
    "In any order, with the messages around them: the codes are found by themselves. They are not kept when you leave the page.",
  codesNeedList: "Paste the class list first: a code shows whose it is only when it is held against an id.",
  done: (count: number, all: number) => `${count} of ${all} done`,
  partly: (count: number) => `${count} in part`,
  missing: (count: number) => `${count} without a code`,
  doneTitle: "Done",
  partTitle: "In part",
  missingTitle: "Without a code",
  twiceTitle: "More than one code",
  twice: (student: string, times: number) => `${student}: ${times} codes; the best one counts`,
  nobody: "nobody",
  refusedTitle: (count: number) => (count === 1 ? "1 code does not count" : `${count} codes do not count`),
  withoutCode: (count: number) => (count === 1 ? "1 line holds no code." : `${count} lines hold no code.`),
  saveResults: "Save who is done as CSV",

  // The table
  keyTitle: "Numbers and answers",
  keyTable: "Table of every student",
  keyEmpty: "Every student’s numbers and answers stand here once the class list is pasted.",
  keyProblem: "No numbers",
  student: "Student",
  note: "Note",
  code: "Code",
  status: { right: "done", part: "in part", none: "none" },
  results: { right: "right", tried: "tried", untried: "not tried" },
  tolerance: (text: string) => `right within ${text}`,
  saveKey: "Save the table as CSV",
  copyKey: "Copy the table",
  print: "Print the table",
  csvHow: "A cell that a spreadsheet would take for a formula has an apostrophe before it.",

  worthTitle: "What a code can prove, and what it cannot",
};
