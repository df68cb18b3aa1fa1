import { queryText, rowsText, textRows } from "../address.ts";
import { InputError } from "../input-error.ts";
import { lengthViews } from "../quantity/format.ts";
import { say } from "../quantity/phrase.ts";
import { assignOwner } from "./assign-owner.ts";
import { type AskedOutput, type Assignment, assignmentVersion, isRange, type Question, type Variation } from "./definition.ts";

/**
 * The readable address of an assignment:
 * `assign.version=1&assign.title=…&assign.course=…&assign.1.calculator=bend-length&assign.1.fix.angle=90deg`
 * `&assign.1.range.thickness=1mm:2mm:0.25mm&assign.1.choices.material=steel-cr;al-5052-h32&assign.1.ask.blank=0.5mm`
 * Questions are counted from 1. What is a list is written as in `src/lib/address.ts`.
 */

const rangeColumns = ["from", "to", "step"] as const;
const choiceColumns = ["choice"] as const;

function variationPart(path: string, variation: Variation): [string, string] {
  if (isRange(variation)) return [`range.${path}`, rowsText([{ ...variation }], rangeColumns)];
  return [
    `choices.${path}`,
    rowsText(
      variation.choices.map((choice) => ({ choice })),
      choiceColumns,
    ),
  ];
}

function questionParts(question: Question): [string, string][] {
  return [
    ["calculator", question.calculator],
    ...(question.intro ? [["intro", question.intro] as [string, string]] : []),
    ...Object.entries(question.fixed).map(([key, text]): [string, string] => [`fix.${key}`, text]),
    ...Object.entries(question.varied).map(([path, variation]) => variationPart(path, variation)),
    ...question.asked.map(({ output, tolerance }): [string, string] => [`ask.${output}`, tolerance]),
    ...(question.predictFirst ? [["predict", "yes"] as [string, string]] : []),
    ...(question.units ? [["units", question.units] as [string, string]] : []),
  ];
}

/** The parameters of an assignment's address, in order. */
export function assignmentParts(assignment: Assignment): [string, string][] {
  const parts: [string, string][] = [
    ["version", String(assignmentVersion)],
    ["title", assignment.title],
    ["course", assignment.course],
    ...(assignment.intro ? [["intro", assignment.intro] as [string, string]] : []),
    ...assignment.questions.flatMap((question, index) =>
      questionParts(question).map(([name, text]): [string, string] => [`${index + 1}.${name}`, text]),
    ),
  ];
  return parts.map(([name, text]) => [`${assignOwner}.${name}`, text]);
}

/** The same as one query text. */
export const assignmentQuery = (assignment: Assignment): string => queryText(assignmentParts(assignment));

interface Draft {
  calculator: string;
  intro?: string;
  fixed: [string, string][];
  varied: [string, Variation][];
  asked: AskedOutput[];
  predictFirst?: true;
  units?: NonNullable<Question["units"]>;
}

function readPart(draft: Draft, name: string, text: string, unknown: () => InputError): void {
  const [, kind = "", path = ""] = /^([a-z]+)(?:\.(.+))?$/.exec(name) ?? [];
  if (path !== "") {
    if (kind === "fix") draft.fixed.push([path, text]);
    else if (kind === "ask") draft.asked.push({ output: path, tolerance: text });
    else if (kind === "range") {
      const [row = {}] = textRows(text, rangeColumns);
      draft.varied.push([path, { from: row.from ?? "", to: row.to ?? "", step: row.step ?? "" }]);
    } else if (kind === "choices")
      draft.varied.push([path, { choices: textRows(text, choiceColumns).map(({ choice = "" }) => choice) }]);
    else throw unknown();
    return;
  }
  const units = lengthViews.find((view) => view === text);
  if (kind === "calculator") draft.calculator = text;
  else if (kind === "intro") draft.intro = text;
  else if (kind === "predict" && text === "yes") draft.predictFirst = true;
  else if (kind === "units" && units) draft.units = units;
  else throw unknown();
}

/**
 * The assignment in an address; parameters that do not begin with `assign.` are none of its.
 *
 * @returns undefined where there is none; what it asks for is not checked yet: see `checkAssignment`
 * @throws InputError for a parameter that no assignment has, or one written by a newer handbook
 */
export function assignmentFromAddress(parameters: Iterable<readonly [string, string]>): Assignment | undefined {
  const own = [...parameters].filter(([name]) => name.startsWith(`${assignOwner}.`));
  if (own.length === 0) return undefined;
  const head: Record<string, string> = {};
  const drafts = new Map<number, Draft>();
  for (const [name, text] of own) {
    const rest = name.slice(assignOwner.length + 1);
    const unknown = () =>
      new InputError(name, text, say`The address holds “${name.slice(0, 60)}=${text.slice(0, 60)}”, which no assignment has.`);
    const [, number, part] = /^([1-9]\d{0,2})\.(.+)$/.exec(rest) ?? [];
    if (number === undefined || part === undefined) {
      if (!["version", "title", "course", "intro"].includes(rest)) throw unknown();
      head[rest] = text;
      continue;
    }
    const draft = drafts.get(Number(number)) ?? { calculator: "", fixed: [], varied: [], asked: [] };
    drafts.set(Number(number), draft);
    readPart(draft, part, text, unknown);
  }
  if (head.version !== String(assignmentVersion))
    throw new InputError(
      "version",
      head.version,
      say`The address is an assignment of version ${head.version ?? "unknown"}; this handbook knows ${assignmentVersion}. Load the page again, or ask for a new link.`,
    );
  return {
    title: head.title ?? "",
    course: head.course ?? "",
    ...(head.intro ? { intro: head.intro } : {}),
    questions: [...drafts]
      .sort(([a], [b]) => a - b)
      .map(([, draft]) => ({
        ...draft,
        fixed: Object.fromEntries(draft.fixed),
        varied: Object.fromEntries(draft.varied),
      })),
  };
}
