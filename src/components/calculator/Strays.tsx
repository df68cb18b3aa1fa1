import type { Inputs, Raw } from "../../lib/inputs.ts";
import { useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import type { Form } from "./Fields.tsx";

/** Problems that belong to no field: values in an address that this form does not have. */
export function Strays({ form, inputs, change }: { form: Form; inputs: Inputs; change: (next: (before: Raw) => Raw) => void }) {
  const texts = useTexts(calculator);
  const unknown = Object.keys(form.raw).filter((key) => !Object.hasOwn(inputs, key));
  if (unknown.length === 0) return null;
  return (
    <div class="strays" role="alert">
      {unknown.map((key) => (
        <p key={key}>{form.problems.get(key)}</p>
      ))}
      <button
        type="button"
        onClick={() =>
          change((before) => Object.fromEntries(Object.entries(before).filter(([key]) => Object.hasOwn(inputs, key))))
        }
      >
        {texts.strays}
      </button>
    </div>
  );
}
