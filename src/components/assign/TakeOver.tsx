import { useState } from "preact/hooks";
import { addressParts, rawFromAddress } from "../../lib/address.ts";
import type { Question } from "../../lib/assign/definition.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { fieldId } from "../calculator/Fields.tsx";
import { Fold } from "../calculator/Fold.tsx";
import { findKept, type Kept, planShelf } from "../kept/kept-list.ts";
import { packedKey } from "../packed-key.ts";
import { deviceStore } from "../shop/shelf.ts";
import { planId } from "../task/load-sheets.ts";

interface Props {
  readonly instance: string;
  readonly sheet: Worksheet;
  change(next: (before: Question) => Question): void;
}

/** The part of a pasted link after its question mark, without the fragment; a query alone is taken as well. */
const queryOf = (link: string) => (/\?([^#]*)/.exec(link)?.[1] ?? link.replace(/#.*$/, "")).trim();

type Taken = { readonly fixed: Readonly<Record<string, string>> } | { readonly problem: string };

async function fixedFrom(link: string, sheet: Worksheet, texts: typeof assign): Promise<Taken> {
  let query = queryOf(link);
  if (new URLSearchParams(query).has(packedKey(sheet.id))) {
    const { PackedAddressError, unfolded } = await import("../packed.ts");
    try {
      query = (await unfolded(sheet.id, query)) ?? query;
    } catch (error) {
      if (error instanceof PackedAddressError) return { problem: error.message };
      throw error;
    }
  }
  const raw = rawFromAddress(sheet.id, sheet.inputs, new URLSearchParams(query));
  const unknown = Object.keys(raw).filter((key) => !Object.hasOwn(sheet.inputs, key));
  if (unknown.length > 0) return { problem: texts.takeOverUnknown(unknown.join(", ").slice(0, 200)) };
  if (Object.keys(raw).length === 0) return { problem: texts.takeOverNone(sheet.title) };
  return { fixed: Object.fromEntries(addressParts(sheet.inputs, raw)) };
}

/** Fills the fixed values of a question from a link that was copied from its calculator or plan. */
export function TakeOver({ instance, sheet, change }: Props) {
  const texts = useTexts(assign);
  const [link, setLink] = useState("");
  const [said, setSaid] = useState({ problem: "", done: "" });
  const [plans, setPlans] = useState<readonly Kept[]>([]);
  const id = fieldId(instance, "take-over");
  const take = async (text: string) => {
    if (text.trim() === "") {
      setSaid({ problem: texts.takeOverNothing, done: "" });
      return;
    }
    const taken = await fixedFrom(text, sheet, texts);
    if ("problem" in taken) {
      setSaid({ problem: taken.problem, done: "" });
      return;
    }
    setSaid({ problem: "", done: texts.takeOverDone });
    // What the link says is fixed no longer varies; cells of its lists may.
    change((before) => ({
      ...before,
      fixed: taken.fixed,
      varied: Object.fromEntries(Object.entries(before.varied).filter(([path]) => !Object.hasOwn(taken.fixed, path))),
    }));
  };
  return (
    <Fold
      class="overrides"
      summary={texts.takeOver}
      onOpen={() => sheet.id === planId && setPlans(findKept(deviceStore(), planShelf).kept ?? [])}
    >
      {() => (
        <>
          <div class="field">
            <label for={id}>{texts.takeOverLabel}</label>
            <input
              id={id}
              type="text"
              inputMode="url"
              autocomplete="off"
              spellcheck={false}
              value={link}
              aria-invalid={said.problem ? "true" : undefined}
              aria-describedby={said.problem ? `${id}-message ${id}-help` : `${id}-help`}
              onInput={(event) => setLink(event.currentTarget.value)}
            />
            <p class="message" id={`${id}-message`} aria-live="polite">
              {said.problem}
            </p>
            <p class="help" id={`${id}-help`}>
              {texts.takeOverHelp(sheet.title)}
            </p>
          </div>
          <p class="assign-actions">
            <button type="button" onClick={() => void take(link)}>
              {texts.takeOverButton}
            </button>
            <span role="status">{said.done}</span>
          </p>
          {plans.length > 0 && (
            <div class="field">
              <label for={`${id}-plan`}>{texts.takeOverPlans}</label>
              <select
                id={`${id}-plan`}
                autocomplete="off"
                value=""
                onChange={(event) => {
                  const plan = plans[Number(event.currentTarget.value)];
                  event.currentTarget.value = "";
                  if (plan) void take(plan.query);
                }}
              >
                <option value="">{texts.pickOne}</option>
                {plans.map(({ name }, place) => (
                  <option key={name} value={place}>
                    {name}
                  </option>
                ))}
              </select>
            </div>
          )}
        </>
      )}
    </Fold>
  );
}
