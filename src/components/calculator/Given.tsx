import type { Fixed } from "../../lib/address.ts";
import type { Inputs } from "../../lib/inputs.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { given } from "../../texts/en/given.ts";
import type { Form } from "./Fields.tsx";

interface Props {
  readonly form: Form;
  readonly fixed: Fixed;
  readonly refused: readonly string[];
  readonly inputs: Inputs;
  /** The page without what the link gave; none in a frame, where the values are the task. */
  readonly ownPage: string | undefined;
}

/** Says at the head of a form which of its values the maker of the link fixed. */
export function Given({ form, fixed, refused, inputs, ownPage }: Props) {
  const language = useLanguage();
  const texts = useTexts(given);
  const { keys } = fixed;
  if (keys.length === 0) return null;
  const labels = (names: readonly string[]) => names.map((key) => language.say(inputs[key]?.label ?? key)).join(", ");
  const isUnusable = [...form.problems.keys()].some((field) => keys.includes(field.split(".")[0] ?? ""));
  return (
    <div class="given not-on-paper">
      <p>
        <strong>{texts.lead}</strong> {labels(keys)}. {texts.cannotChange}
      </p>
      {isUnusable && <p class="message">{texts.unusable}</p>}
      <p class="message" role="status">
        {refused.length > 0 && texts.stays(labels(refused))}
      </p>
      {ownPage !== undefined && (
        <p>
          <a href={ownPage}>{texts.startOver}</a>
        </p>
      )}
    </div>
  );
}
