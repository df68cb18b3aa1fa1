import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";

/** Calculators of one technique. */
export interface PickerGroup {
  readonly title: string;
  readonly calculators: readonly { readonly id: string; readonly title: string; readonly summary: string }[];
}

interface Props {
  readonly groups: readonly PickerGroup[];
  readonly isFirst: boolean;
  add(id: string): Promise<void>;
}

/** Chooses the calculator of a further question. */
export function Picker({ groups, isFirst, add }: Props) {
  const texts = useTexts(assign);
  const [id, setId] = useState("");
  const [busy, setBusy] = useState(false);
  const chosen = groups.flatMap(({ calculators }) => calculators).find((each) => each.id === id);
  const onClick = async () => {
    setBusy(true);
    try {
      await add(id);
      setId("");
    } finally {
      setBusy(false);
    }
  };
  return (
    <fieldset class="picker">
      <legend>{texts.add}</legend>
      {isFirst && <p>{texts.none}</p>}
      <div class="field">
        <label for="assign-pick">{texts.pick}</label>
        <select id="assign-pick" autocomplete="off" value={id} onChange={(event) => setId(event.currentTarget.value)}>
          <option value="">{texts.pickHint}</option>
          {groups.map(({ title, calculators }) => (
            <optgroup key={title} label={title}>
              {calculators.map((each) => (
                <option key={each.id} value={each.id}>
                  {each.title}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
        {chosen && <p class="help">{chosen.summary}</p>}
      </div>
      <button type="button" class="first" disabled={id === "" || busy} onClick={() => void onClick()}>
        {texts.addButton}
      </button>
    </fieldset>
  );
}
