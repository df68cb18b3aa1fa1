import { type Catalogue, materialIds } from "../catalogue.ts";
import { InputError } from "../input-error.ts";
import { checkRange } from "../inputs.ts";
import { lengthViews } from "../quantity/format.ts";
import { type ParseContext, ParseError, parseQuantity } from "../quantity/parse.ts";
import { type Phrase, phraseWords, say } from "../quantity/phrase.ts";
import { gaugeReader } from "../stock/gauge.ts";
import type { Worksheet } from "../worksheet.ts";
import { type Assignment, isRange, limits, type Question, type Variation } from "./definition.ts";
import { checkId, ownTexts, variationSteps } from "./own-numbers.ts";
import { askedOutput, questionWith, spacedText, type WorksheetOf } from "./own-question.ts";
import { type Place, placeAt, rawOfFixed, rowsOf } from "./place.ts";
import type { Steps } from "./variation.ts";

/** What was found out about an assignment before it is handed out. */
export interface AssignmentCheck {
  /** Empty: it can be handed out. */
  readonly problems: readonly InputError[];
  /** How many combinations each question has, and how many of them were worked through. */
  readonly tried: readonly { readonly combinations: number; readonly tried: number }[];
}

/** Up to so many combinations are all worked through; of more, the ends and a sample. */
const allUpTo = 256;
/** Draws of students that are worked through where there are more, and the usual number of them. */
const usualSamples = 200;
/** Corners of so many ranges are all tried; of more, those of the first few. */
const mostCorners = 8;

type Attempt = <T>(check: () => T) => T | undefined;

function checkLength(field: string, label: string, text: string, most: number, least = 0): void {
  if (text.trim().length >= least && text.length <= most) return;
  const has = text.trim() === "" ? "is empty" : `has ${text.length}`;
  throw new InputError(field, text, say`${label} must have ${least} to ${most} characters; it ${has}.`);
}

/** Refuses a value that the input would refuse, whatever else is given. */
function checkValue(field: string, place: Place, text: string, context: ParseContext): void {
  const { input, label } = place;
  if (input.kind === "choice" || input.kind === "material") {
    const ids: readonly string[] = input.kind === "choice" ? Object.keys(input.choices) : materialIds;
    if (ids.includes(text)) return;
    throw new InputError(field, text, say`${label} must be one of ${ids.join(", ")}; it is “${text.slice(0, 40)}”.`);
  }
  if (input.kind === "text") {
    checkLength(field, label, text, input.maxLength);
    return;
  }
  try {
    checkRange(field, { ...input, label }, parseQuantity(text, input.quantity, context).value, text);
  } catch (error) {
    if (error instanceof ParseError) throw new InputError(field, text, say`${label}: ${error.phrase}`);
    throw error;
  }
}

function checkVariation(
  field: string,
  sheet: Worksheet,
  question: Question,
  path: string,
  variation: Variation,
  context: ParseContext,
): Steps {
  const place = placeAt(sheet.inputs, path);
  if (!place)
    throw new InputError(
      field,
      path,
      say`${sheet.title} has no input “${path.slice(0, 60)}” that can vary. The inputs are ${Object.keys(sheet.inputs).join(", ")}; a cell of a list is named like legs.0.leg.`,
    );
  if (place.row === undefined && Object.hasOwn(question.fixed, path))
    throw new InputError(field, path, say`${place.label} is both fixed and varied; it can be one of the two.`);
  if (place.row !== undefined) {
    const rows = rowsOf(sheet.inputs, rawOfFixed(sheet.inputs, question.fixed), place.key).length;
    if (place.row >= rows) throw new InputError(field, path, say`${place.label} does not exist: the list has ${rows} rows.`);
  }
  if (!isRange(variation)) {
    const { choices } = variation;
    if (choices.length < 2 || choices.length > limits.choices)
      throw new InputError(
        `${field}.choices`,
        String(choices.length),
        say`${place.label} needs 2 to ${limits.choices} choices; it has ${choices.length}.`,
      );
    choices.forEach((choice, index) => {
      const at = `${field}.choices.${index}`;
      if (choices.indexOf(choice) !== index)
        throw new InputError(at, choice, say`${place.label}: the choice “${choice.slice(0, 40)}” is there twice.`);
      checkValue(at, place, choice, context);
    });
    return variationSteps(sheet.inputs, path, variation, field);
  }
  const steps = variationSteps(sheet.inputs, path, variation, field);
  // A range is one stretch, so its ends stand for all of it.
  checkValue(`${field}.from`, place, steps.text(0), {});
  checkValue(`${field}.to`, place, steps.text(steps.count - 1), {});
  return steps;
}

/** Combinations to try, each as the places of the varied values in their ranges. */
function* combinationsOf(counts: readonly number[], all: boolean): Generator<number[]> {
  // All of them, or the corners: the lowest and highest of each.
  const ends = counts.map((count, place) =>
    all ? Array.from({ length: count }, (_, index) => index) : place < mostCorners ? [0, count - 1] : [0],
  );
  const total = ends.reduce((product, each) => product * each.length, 1);
  for (let number = 0; number < total; number++) {
    let rest = number;
    yield ends.map((each) => {
      const index = each[rest % each.length] ?? 0;
      rest = Math.floor(rest / each.length);
      return index;
    });
  }
}

function listed(sheet: Worksheet, texts: Readonly<Record<string, string>>): string {
  const words = Object.entries(texts).map(([path, text]) => {
    const place = placeAt(sheet.inputs, path);
    return `${place?.label ?? path} ${place?.input.kind === "quantity" ? spacedText(text, place.input.quantity) : text}`;
  });
  return words.join(", ");
}

/** Works a question through and tells the first combination that fails for each cause. */
function tryCombinations(
  question: Question,
  index: number,
  sheet: Worksheet,
  steps: Readonly<Record<string, Steps>>,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
  samples: number,
): { problems: InputError[]; combinations: number; tried: number } {
  const paths = Object.keys(steps);
  const counts = paths.map((path) => steps[path]?.count ?? 1);
  const combinations = counts.reduce((product, count) => product * count, 1);
  const failed = new Map<string, { texts: Record<string, string>; problem: InputError; times: number }>();
  let tried = 0;
  const attempt = (texts: Record<string, string>) => {
    tried++;
    try {
      questionWith(question, index, texts, worksheetOf, catalogue);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      // The same sentence with other numbers in it is the same cause.
      const cause = error.field + phraseWords(error.phrase).replace(/\d+/g, "");
      const known = failed.get(cause);
      if (known) known.times++;
      else failed.set(cause, { texts, problem: error, times: 1 });
    }
  };
  // Whoever asks for few samples has a calculator that takes its time.
  const all = combinations <= (samples < usualSamples ? samples : Math.max(allUpTo, samples));
  for (const combination of combinationsOf(counts, all))
    attempt(Object.fromEntries(paths.map((path, place) => [path, steps[path]?.text(combination[place] ?? 0) ?? ""])));
  for (let sample = 1; !all && sample <= samples; sample++)
    attempt(ownTexts(sheet.inputs, question, index, { course: "sample", student: String(sample) }));

  const problems = [...failed.values()].map(({ texts, problem, times }) => {
    const which: Phrase = paths.length === 0 ? [] : say`With ${listed(sheet, texts)}: `;
    const often = paths.length === 0 || tried === 1 ? "" : ` So it is with ${times} of ${tried} combinations tried.`;
    const field = paths.length === 0 && problem.field.endsWith(".varied") ? `questions.${index}.fixed` : problem.field;
    return new InputError(field, problem.value, say`Question ${index + 1}, ${sheet.title}. ${which}${problem.phrase}${often}`);
  });
  return { problems, combinations, tried };
}

function checkQuestion(
  question: Question,
  index: number,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
  samples: number,
  problems: InputError[],
): { combinations: number; tried: number } {
  const field = `questions.${index}`;
  const before = problems.length;
  const attempt: Attempt = (check) => {
    try {
      return check();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(error);
      return undefined;
    }
  };
  const refuse = (at: string, value: unknown, phrase: Phrase) => problems.push(new InputError(`${field}.${at}`, value, phrase));

  const sheet = worksheetOf(question.calculator);
  if (!sheet) {
    const id = question.calculator.slice(0, 40);
    refuse("calculator", question.calculator, say`Question ${index + 1}: there is no calculator “${id}”.`);
    return { combinations: 0, tried: 0 };
  }
  attempt(() => checkLength(`${field}.intro`, "Text of the question", question.intro ?? "", limits.intro));
  if (question.units !== undefined && !lengthViews.includes(question.units))
    refuse("units", question.units, say`Units must be one of ${lengthViews.join(", ")}; they are “${String(question.units)}”.`);

  const materials = new Set<string>();
  for (const [key, text] of Object.entries(question.fixed)) {
    const input = Object.hasOwn(sheet.inputs, key) ? sheet.inputs[key] : undefined;
    if (!input)
      refuse(
        `fixed.${key}`,
        text,
        say`${sheet.title} has no input “${key.slice(0, 40)}”. The inputs are ${Object.keys(sheet.inputs).join(", ")}.`,
      );
    else attempt(() => checkLength(`${field}.fixed.${key}`, input.label, text, limits.text));
    if (input?.kind === "material") materials.add(text);
  }

  const varied = Object.entries(question.varied);
  if (varied.length > limits.varied)
    refuse("varied", varied.length, say`Up to ${limits.varied} inputs of a question may vary; here are ${varied.length}.`);
  // A gauge number among the choices has to be there in the fixed metal; with several metals the combinations tell.
  const material = Object.values(sheet.inputs).find((input) => input.kind === "material");
  const [metal = material?.default] = materials;
  const known = materialIds.find((id) => id === metal);
  const context: ParseContext = known ? { gauge: gaugeReader(catalogue, known) } : {};
  const steps: Record<string, Steps> = {};
  for (const [path, variation] of varied) {
    const read = attempt(() => checkVariation(`${field}.varied.${path}`, sheet, question, path, variation, context));
    if (read) steps[path] = read;
  }

  question.asked.forEach((asked, place) => {
    attempt(() => askedOutput(sheet, asked, `${field}.asked.${place}`));
    if (question.asked.findIndex(({ output }) => output === asked.output) !== place)
      refuse(`asked.${place}.output`, asked.output, say`${asked.output} is asked for twice.`);
  });

  if (problems.length > before) return { combinations: 0, tried: 0 };
  const { problems: found, ...tried } = tryCombinations(question, index, sheet, steps, worksheetOf, catalogue, samples);
  problems.push(...found);
  return tried;
}

/**
 * What is wrong with an assignment whatever its calculators are: title, course, text, how many questions and answers. A
 * student's page asks for no more, because their own numbers are worked through there in any case.
 */
export function frameProblems({ title, course, intro, questions }: Assignment): InputError[] {
  const checks: (() => void)[] = [
    () => checkLength("title", "Title", title, limits.title, 1),
    () => checkId("course", course),
    () => checkLength("intro", "Text of the assignment", intro ?? "", limits.intro),
    () => {
      const count = questions.length;
      if (count === 0 || count > limits.questions)
        throw new InputError(
          "questions",
          count,
          say`An assignment has 1 to ${limits.questions} questions; this one has ${count}.`,
        );
    },
    ...questions.map((question, index) => () => {
      const { length } = question.asked;
      if (length === 0 || length > limits.asked)
        throw new InputError(
          `questions.${index}.asked`,
          length,
          say`A question asks for 1 to ${limits.asked} answers; here are ${length}.`,
        );
    }),
  ];
  return checks.flatMap((check) => {
    try {
      check();
      return [];
    } catch (error) {
      if (error instanceof InputError) return [error];
      throw error;
    }
  });
}

/**
 * Looks an assignment through before it is handed out: does every calculator, input and output exist, do the variations
 * stay in the ranges of their inputs, and does every calculator answer for the numbers that students will get.
 *
 * Where there are at most 256 combinations all are worked through (at most `samples` where those are fewer than usual),
 * otherwise the ends of all ranges and `samples`
 * students' draws; a rare refusal between them can stay unseen.
 *
 * @returns problems with the field they concern, such as `questions.0.varied.thickness.to`
 */
export function checkAssignment(
  assignment: Assignment,
  worksheetOf: WorksheetOf,
  catalogue: Catalogue,
  samples = usualSamples,
): AssignmentCheck {
  const problems = frameProblems(assignment);
  const tried = assignment.questions
    .slice(0, limits.questions)
    .map((question, index) => checkQuestion(question, index, worksheetOf, catalogue, samples, problems));
  return { problems, tried };
}
