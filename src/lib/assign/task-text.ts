import type { Worksheet } from "../worksheet.ts";
import type { Question } from "./definition.ts";

/** Lower case at the start of a name within a sentence, where the name does not begin with a symbol: `K-factor` stays. */
const within = (label: string) => (/^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label);

/** What a question says where its instructor has written nothing: its subject, and what is to be found. */
export function taskText(sheet: Worksheet, question: Question): string {
  if (question.intro) return question.intro;
  const names = question.asked.flatMap(({ output }) => {
    const found = Object.hasOwn(sheet.outputs, output) ? sheet.outputs[output] : undefined;
    return found ? [within(found.label)] : [];
  });
  return names.length === 0 ? `${sheet.title}.` : `${sheet.title}. Work out: ${names.join("; ")}.`;
}
