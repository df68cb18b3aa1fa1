import type { Fixed } from "../../lib/address.ts";
import type { Inputs } from "../../lib/inputs.ts";
import { useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { given } from "../../texts/en/given.ts";
import type { Form } from "./Fields.tsx";

/** More words than this from one address are counted, not named. */
const named = 5;

function fixedProblem(unknown: readonly string[], inputs: Inputs, texts: typeof given): string {
  const shown = unknown.slice(0, named).map((word) => `“${word.slice(0, 40)}”`);
  if (unknown.length > named) shown.push(texts.more(unknown.length - named));
  return texts.unknown(shown.join(", "), Object.keys(inputs).join(", "));
}

interface Props {
  readonly form: Form;
  readonly fixed: Fixed;
  readonly inputs: Inputs;
  leaveOutUnknown(): void;
}

/** Problems that belong to no field: values in an address that this form does not have. */
export function Strays({ form, fixed, inputs, leaveOutUnknown }: Props) {
  const texts = useTexts(calculator);
  const words = useTexts(given);
  const unknown = Object.keys(form.raw).filter((key) => !Object.hasOwn(inputs, key));
  const notFixed = fixed.unknown;
  if (unknown.length === 0 && notFixed.length === 0) return null;
  return (
    <div class="strays" role="alert">
      {unknown.map((key) => (
        <p key={key}>{form.problems.get(key)}</p>
      ))}
      {notFixed.length > 0 && <p>{fixedProblem(notFixed, inputs, words)}</p>}
      <button type="button" onClick={() => leaveOutUnknown()}>
        {texts.strays}
      </button>
    </div>
  );
}
