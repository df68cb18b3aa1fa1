import { useCallback, useEffect, useMemo, useState } from "preact/hooks";
import { formQuery, rawFromAddress } from "../../lib/address.ts";
import type { Catalogue, StockSheet } from "../../lib/catalogue.ts";
import type { Input, ListInput, Raw, RawRow } from "../../lib/inputs.ts";
import type { Placed } from "../../lib/sheet/cut-order.ts";
import type { CutPlan } from "../../lib/sheet/cut-plan.ts";
import { type SheetRequest, sheetInputs, sheetRequest } from "../../lib/sheet/form.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet as sheetTexts } from "../../texts/en/sheet.ts";
import { CopyButton } from "../calculator/CopyButton.tsx";
import { Field } from "../calculator/Fields.tsx";
import { Given } from "../calculator/Given.tsx";
import { Strays } from "../calculator/Strays.tsx";
import { type Outcome, useForm } from "../calculator/use-form.ts";
import { pageLink } from "../links/page-link.ts";
import type { PlanWords } from "../plan/words.ts";
import { today } from "../shop/shelf.ts";
import { CutResult, gapText, goodness, measured } from "./CutResult.tsx";
import { example } from "./example.ts";
import { keepLastList, lastListQuery, owner } from "./last-list.ts";
import { OffcutShelf } from "./OffcutShelf.tsx";
import { isInForm, rowOf, withOffcut, withoutUsed } from "./offcut-shelf.ts";
import { PasteBox } from "./PasteBox.tsx";
import { StockPicker } from "./StockPicker.tsx";
import { keyOf, useCutPlan } from "./use-cut-plan.ts";
import { useOffcuts } from "./use-offcuts.ts";
import { cutCautions } from "./words.ts";

type Key = keyof typeof sheetInputs;

const text = (value: number) => `${value}mm`;

const queryOf = (raw: Raw) => formQuery(owner, sheetInputs, raw);

const first = (held: Raw): Raw => (Object.keys(held).length === 0 ? example : held);

function lastList(): Raw | undefined {
  const query = lastListQuery();
  return query === undefined ? undefined : rawFromAddress(owner, sheetInputs, new URLSearchParams(query));
}

const rowsOf = (raw: Raw, key: "pieces" | "others"): readonly RawRow[] => {
  const rows = raw[key];
  return Array.isArray(rows) ? rows : sheetInputs[key].default;
};

/** Without the worth of the pieces, which matters only where one sheet is filled. */
const { value: _, ...plainColumns } = sheetInputs.pieces.columns;
const plainPieces: ListInput = { ...sheetInputs.pieces, columns: plainColumns };

interface Props {
  readonly catalogue: Catalogue;
  readonly words: PlanWords;
  /** What is wrong with the address the page was opened with. */
  readonly damage?: string;
  /** Plan of the example, made when the page was built. */
  readonly examplePlan?: CutPlan | undefined;
}

/** Sheets and pieces as a form, the cutting plan beside it. */
export function SheetEditor({ catalogue, words, damage = "", examplePlan }: Props) {
  const texts = useTexts(sheetTexts);
  const compute = useCallback(
    (raw: Raw): Outcome<SheetRequest> => {
      const { request, problems } = sheetRequest(raw, catalogue);
      return { good: request, problems };
    },
    [catalogue],
  );
  const { raw, view, form, good, problems, stale, fixed, refused, change, leaveOutUnknown, replaceBy } = useForm({
    instance: owner,
    inputs: sheetInputs,
    first,
    catalogue,
    compute,
  });
  const known = useMemo(() => {
    const { request } = sheetRequest(example, catalogue);
    return examplePlan && request ? { key: keyOf(request), plan: examplePlan, request } : undefined;
  }, []);
  const planning = useCutPlan(stale ? undefined : good, known);
  const shelf = useOffcuts();
  const [shelved, setShelved] = useState<Raw>();
  const query = queryOf(raw);
  const isExample = query === queryOf(example);

  useEffect(() => {
    const last = lastList();
    if (last && queryOf(last) !== query) setShelved(last);
  }, []);
  useEffect(() => {
    if (!isExample && shelved === undefined) keepLastList(query);
  }, [query, isExample, shelved]);

  const edit = (next: (before: Raw) => Raw) => {
    setShelved(undefined);
    change(next);
  };
  const openList = (next: Raw) => {
    setShelved(undefined);
    replaceBy(next);
  };
  const addOthers = (row: RawRow) => edit((before) => ({ ...before, others: [...rowsOf(before, "others"), row] }));
  const takeStock = ({ material, thickness, width, length }: StockSheet) =>
    edit((before) => ({
      ...before,
      material,
      thickness: text(thickness),
      sheetWidth: text(width),
      sheetLength: text(length),
    }));
  const addStock = ({ width, length }: StockSheet) =>
    addOthers({ name: "", width: text(width), length: text(length), count: "" });

  const { planned, fresh, state, doing, problem } = planning;
  // Name, metal and thickness may have changed since: they do not change the cuts.
  const request = fresh && good && !stale ? good : planned?.request;
  const isKept = (part: Placed) =>
    request !== undefined &&
    shelf.offcuts.some(
      ({ name, width, length }) =>
        name.startsWith(texts.keptName(request.values.name, "").trim()) && width === part.width && length === part.length,
    );
  const keep = (part: Placed, count: number, id: string) => {
    if (!request) return;
    const { name, material, thickness } = request.values;
    shelf.change((all) =>
      withOffcut(all, {
        name: texts.keptName(name, id).trim(),
        width: part.width,
        length: part.length,
        count,
        material,
        ...(thickness === undefined ? {} : { thickness }),
        kept: today(),
      }),
    );
  };
  const used =
    planned?.plan.sheets.flatMap(({ sheet, times }) => {
      const stock = planned.request.job.sheets[sheet];
      return sheet > 0 && stock ? [{ name: stock.name, width: stock.width, length: stock.length, times }] : [];
    }) ?? [];
  const usesShelf = shelf.offcuts.length > 0 && withoutUsed(shelf.offcuts, used).length < shelf.offcuts.length;

  const fields = (keys: readonly Key[]) => (
    <div class="field-grid">
      {keys.map((key) => (
        <Field key={key} form={form} field={key} input={sheetInputs[key] as Input} />
      ))}
    </div>
  );
  const byWorth = raw.goal === "fill-one-sheet" || rowsOf(raw, "pieces").some(({ value }) => value !== undefined && value !== "");
  const bestSoFar = planned && fresh ? planned.plan : undefined;
  const working = state === "working" && !stale;
  const verdict = planned
    ? `${state === "stopped" && fresh && !planned.plan.proved ? `${texts.stopped} ` : ""}${goodness(planned.plan, texts)}`
    : "";

  return (
    <div class="plan-body">
      <form class="plan-form not-on-paper" autocomplete="off" noValidate onSubmit={(event) => event.preventDefault()}>
        <Given form={form} fixed={fixed} refused={refused} inputs={sheetInputs} ownPage="./" />
        <Strays form={form} fixed={fixed} inputs={sheetInputs} leaveOutUnknown={leaveOutUnknown} />
        {shelved && (
          <div class="actions cut-last">
            <button type="button" onClick={() => openList(shelved)}>
              {texts.continueWith(String(shelved.name ?? sheetInputs.name.default))}
            </button>
            {!isExample && (
              <button
                type="button"
                onClick={() =>
                  edit((before) => ({ ...before, pieces: [...rowsOf(before, "pieces"), ...rowsOf(shelved, "pieces")] }))
                }
              >
                {texts.addFromLast(String(shelved.name ?? sheetInputs.name.default), rowsOf(shelved, "pieces").length)}
              </button>
            )}
          </div>
        )}
        <fieldset class="plan-group">
          <legend>{texts.groups.goal}</legend>
          {fields(["name", "goal"])}
        </fieldset>
        <fieldset class="plan-group">
          <legend>{texts.groups.stock}</legend>
          <div class="field-grid">
            <StockPicker catalogue={catalogue} view={view} onTake={takeStock} onAdd={addStock} />
          </div>
          {fields(["material", "thickness", "sheetWidth", "sheetLength", "sheetCount", "trim", "others"])}
          <OffcutShelf
            shelf={shelf}
            catalogue={catalogue}
            view={view}
            material={form.material}
            thickness={good?.values.thickness}
            isUsed={(offcut) => isInForm(raw, offcut)}
            onUse={(offcut) => addOthers(rowOf(offcut))}
          />
        </fieldset>
        <fieldset class="plan-group">
          <legend>{texts.groups.pieces}</legend>
          <div class="field-grid">
            <Field form={form} field="pieces" input={byWorth ? sheetInputs.pieces : plainPieces} />
          </div>
        </fieldset>
        <PasteBox
          catalogue={catalogue}
          view={view}
          rows={rowsOf(raw, "pieces").length}
          onTake={(rows, replace) =>
            edit((before) => ({ ...before, pieces: replace ? rows : [...rowsOf(before, "pieces"), ...rows] }))
          }
        />
        <div class="actions">
          <button type="button" class="first" onClick={() => print()}>
            {texts.print}
          </button>
          <CopyButton text={() => pageLink(owner, formQuery(owner, sheetInputs, raw, fixed))}>{texts.copyLink}</CopyButton>
        </div>
        <p class="message" role="alert">
          {damage}
        </p>
      </form>

      <div class={`plan-result${stale || !fresh ? " stale" : ""}`} aria-live="off">
        {stale && (
          <p class="stale-mark">
            {planned ? texts.staleGood : texts.staleNone}
            <span>
              {problems.length === 1 ? texts.staleOne : texts.staleMany(problems.length)}
              {problems[0]?.text(view)}
            </span>
          </p>
        )}
        {!stale && problem && (
          <p class="stale-mark" role="alert">
            {texts.staleNone}
            <span>{problem.text(view)}</span>
          </p>
        )}
        {(working || (state === "stopped" && !stale)) && (
          <div class="cut-progress not-on-paper" data-state={state}>
            {working && (
              <>
                <p>
                  {texts.planning}: {texts.doing[doing] ?? texts.notYet}.{" "}
                  {bestSoFar &&
                    texts.bestSoFar(
                      measured(bestSoFar, bestSoFar.found, texts),
                      measured(bestSoFar, bestSoFar.bound, texts),
                      gapText(bestSoFar.gap),
                    )}
                </p>
                <progress aria-label={texts.planning} />
                {bestSoFar && (
                  <button type="button" onClick={planning.stop}>
                    {texts.stop}
                  </button>
                )}
              </>
            )}
            {state === "stopped" && (
              <>
                <p role="status">{texts.stopped}</p>
                <button type="button" onClick={planning.again}>
                  {texts.goOn}
                </button>
              </>
            )}
          </div>
        )}
        {planned && request && (
          <CutResult
            plan={planned.plan}
            request={request}
            catalogue={catalogue}
            view={view}
            words={words}
            cautions={cutCautions}
            verdict={verdict}
            isKept={isKept}
            onKeep={keep}
          />
        )}
        {usesShelf && (
          <p class="not-on-paper">
            <button type="button" onClick={() => shelf.change((all) => withoutUsed(all, used))}>
              {texts.takeUsed}
            </button>
          </p>
        )}
      </div>
    </div>
  );
}
