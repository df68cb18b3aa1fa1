import { useCallback, useEffect, useState } from "preact/hooks";
import { formQuery, rawFromAddress } from "../../lib/address.ts";
import type { Catalogue } from "../../lib/catalogue.ts";
import { InputError } from "../../lib/input-error.ts";
import type { Input, Raw } from "../../lib/inputs.ts";
import { bendDataKeys, matters } from "../../lib/part/fields-that-matter.ts";
import { partInputs } from "../../lib/part/form.ts";
import type { BendOrder } from "../../lib/part/order/order.ts";
import { type PlanResult, planFrom } from "../../lib/part/plan.ts";
import { useTexts } from "../../texts/context.ts";
import { plan as planTexts } from "../../texts/en/plan.ts";
import { addressParameters } from "../calculator/address-bar.ts";
import { CopyButton } from "../calculator/CopyButton.tsx";
import { Field } from "../calculator/Fields.tsx";
import { Given } from "../calculator/Given.tsx";
import { Strays } from "../calculator/Strays.tsx";
import { type Outcome, useForm } from "../calculator/use-form.ts";
import { KeptList } from "../kept/KeptList.tsx";
import { planShelf } from "../kept/kept-list.ts";
import { pageLink } from "../links/page-link.ts";
import { LazyEditDrawing } from "./LazyEditDrawing.tsx";
import { keepLastPlan, lastPlanQuery, owner } from "./last-plan.ts";
import { PlanLinks } from "./PlanLinks.tsx";
import { PlanSheet } from "./PlanSheet.tsx";
import { RolledSheet } from "./RolledSheet.tsx";
import { example, startingPoints } from "./starting-points.ts";
import { useBendOrder } from "./use-bend-order.ts";
import type { PlanWords } from "./words.ts";

type Key = keyof typeof partInputs;

const groups: readonly {
  readonly id: keyof typeof planTexts.groups;
  readonly keys: readonly Key[];
  readonly folded?: boolean;
}[] = [
  { id: "part", keys: ["kind", "name", "quantity"] },
  { id: "sheet", keys: ["material", "thickness", "radius", "measured"] },
  { id: "base", keys: ["width", "depth"] },
  { id: "tube", keys: ["diameter", "length", "arc"] },
  { id: "cone", keys: ["largeDiameter", "smallDiameter", "height"] },
  { id: "seam", keys: ["seam", "seamWidth", "seamJoint"] },
  { id: "legs", keys: ["south", "north"] },
  { id: "sideLegs", keys: ["west", "east"], folded: true },
  { id: "edges", keys: ["edges"], folded: true },
  { id: "corners", keys: ["cornerGap", "relief", "tabs", "tabWidth", "tabJoint"] },
  { id: "holes", keys: ["holes"] },
  { id: "cutouts", keys: ["cutouts", "circles"], folded: true },
  { id: "attachments", keys: ["attachments"], folded: true },
  { id: "bendData", keys: ["bendData", "kFactor", "hardness", ...bendDataKeys.slice(1)] },
  { id: "marking", keys: ["marking"] },
];

function lastPlan(): Raw | undefined {
  const query = lastPlanQuery();
  return query === undefined ? undefined : rawFromAddress(owner, partInputs, new URLSearchParams(query));
}

/** Fetched when a file is opened or saved, which most visits never do. */
const partFile = () => import("../../lib/part/file.ts");

/** In a frame: nothing is taken from what is kept on the device. */
const firstInFrame = (held: Raw): Raw => (Object.keys(held).length === 0 ? example : held);

/** Bend data alone are handed over by the practice pieces: they go into the plan that was being worked on. */
function first(held: Raw): Raw {
  const keys = Object.keys(held);
  if (keys.length === 0) return example;
  return keys.every((key) => (bendDataKeys as readonly string[]).includes(key)) ? { ...(lastPlan() ?? example), ...held } : held;
}

const queryOf = (raw: Raw) => formQuery(owner, partInputs, raw);

interface Props {
  readonly catalogue: Catalogue;
  readonly words: PlanWords;
  /** Path of this page. */
  readonly path: string;
  /** What is wrong with the address the page was opened with. */
  readonly damage?: string;
  /** Alone in a frame: nothing is kept on the device, where it would stand in for the visitor's own plan. */
  readonly embedded?: boolean;
  /** Order of the bends of the example, found when the page was built. */
  readonly exampleOrder?: BendOrder | undefined;
}

/** The whole job in one place: the part as a form, its plan beside it. */
export function PlanEditor({ catalogue, words, path, damage = "", embedded = false, exampleOrder }: Props) {
  const texts = useTexts(planTexts);
  const compute = useCallback(
    (raw: Raw): Outcome<PlanResult> => {
      const result = planFrom(raw, catalogue);
      return { good: result.problems.length === 0 ? result : undefined, problems: result.problems };
    },
    [catalogue],
  );
  const { raw, view, form, good, problems, stale, fixed, refused, change, leaveOutUnknown, replaceBy } = useForm({
    instance: owner,
    inputs: partInputs,
    first: embedded ? firstInFrame : first,
    catalogue,
    compute,
  });
  const plan = useBendOrder(good?.plan, catalogue, exampleOrder);
  const [shelved, setShelved] = useState<Raw>();
  const [fileProblem, setFileProblem] = useState(damage);
  const query = queryOf(raw);
  const shared = formQuery(owner, partInputs, raw, fixed);
  const isExample = query === queryOf(example);

  useEffect(() => {
    const last = embedded ? undefined : lastPlan();
    if (last && addressParameters().every(([name]) => !name.startsWith(`${owner}.`))) setShelved(last);
  }, []);
  useEffect(() => {
    if (!isExample && !embedded) keepLastPlan(query);
  }, [query, isExample, embedded]);

  const openPart = (next: Raw) => {
    setShelved(undefined);
    // A part that is all defaults still needs one value in the address, or the address would mean the example.
    replaceBy(next, [["name", String(next.name ?? partInputs.name.default)]]);
  };

  const open = async (file: File | undefined) => {
    if (!file) return;
    const { rawFromPartFile } = await partFile();
    try {
      openPart(rawFromPartFile(await file.text()));
      setFileProblem("");
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      setFileProblem(`${file.name}: ${error.message} ${texts.unchanged}`);
    }
  };
  const save = async () => {
    const { partFileFrom } = await partFile();
    const link = document.createElement("a");
    const text = `${JSON.stringify(partFileFrom(raw), null, 2)}\n`;
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = `${(String(raw.name ?? "") || "part").toLowerCase().replace(/[^a-z0-9]+/g, "-")}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  };

  const concerned = (key: Key) => problems.some(({ field }) => field === key || field.startsWith(`${key}.`));
  const shown = { view, words, query: shared, markingMethods: catalogue.markingMethods };
  const filled = (key: Key) => Array.isArray(raw[key]) && raw[key].length > 0;

  return (
    <div class="plan-body">
      <nav class="starting-points not-on-paper" aria-label={texts.startFrom}>
        <p>{texts.startFrom}</p>
        <ul>
          {startingPoints.map((point) => (
            <li key={point.id}>
              <a
                href={`${path}?${queryOf(point.raw)}`}
                onClick={(event) => {
                  if (event.ctrlKey || event.metaKey || event.shiftKey) return;
                  event.preventDefault();
                  openPart(point.raw);
                }}
              >
                <strong>{texts.startingPoints[point.id].name}</strong> <span>{texts.startingPoints[point.id].words}</span>
              </a>
            </li>
          ))}
        </ul>
        {shelved && (
          <p>
            <button type="button" onClick={() => openPart(shelved)}>
              {texts.goOn(String(shelved.name ?? partInputs.name.default))}
            </button>
          </p>
        )}
      </nav>

      <form class="plan-form not-on-paper" autocomplete="off" noValidate onSubmit={(event) => event.preventDefault()}>
        <Given form={form} fixed={fixed} refused={refused} inputs={partInputs} ownPage={embedded ? undefined : path} />
        <Strays form={form} fixed={fixed} inputs={partInputs} leaveOutUnknown={leaveOutUnknown} />
        {good && <LazyEditDrawing layout={good.plan?.layout} sheet={good.rolled?.sheet} form={form} change={change} />}
        {groups.map(({ id, keys, folded }) => {
          const fieldKeys = keys.filter((key) => matters(key, raw) || concerned(key));
          if (fieldKeys.length === 0) return null;
          const fields = (
            <div class="field-grid">
              {fieldKeys.map((key) => (
                <Field key={key} form={form} field={key} input={partInputs[key] as Input} />
              ))}
            </div>
          );
          return folded ? (
            <details key={id} class="plan-group" open={fieldKeys.some((key) => concerned(key) || filled(key)) || undefined}>
              <summary>{texts.groups[id]}</summary>
              {fields}
            </details>
          ) : (
            <fieldset key={id} class="plan-group">
              <legend>{texts.groups[id]}</legend>
              {fields}
            </fieldset>
          );
        })}
        <div class="actions">
          <button type="button" class="first" onClick={() => print()}>
            {texts.print}
          </button>
          <CopyButton text={() => pageLink(owner, shared)}>{texts.copyLink}</CopyButton>
          <button type="button" onClick={() => void save()}>
            {texts.saveFile}
          </button>
          <label class="button open-file">
            {texts.openFile}
            <input type="file" accept=".json,application/json" onChange={(event) => void open(event.currentTarget.files?.[0])} />
          </label>
        </div>
        <PlanLinks
          raw={raw}
          fixed={fixed}
          shown={groups.flatMap(({ keys }) => keys.filter((key) => matters(key, raw) || concerned(key)))}
          path={path}
        />
        <p class="message" role="alert">
          {fileProblem}
        </p>
        {!embedded && (
          <KeptList
            shelf={planShelf}
            words={texts.saved}
            unnamed={texts.withoutName}
            name={String(raw.name ?? partInputs.name.default)}
            query={query}
            onOpen={(held) => openPart(rawFromAddress(owner, partInputs, new URLSearchParams(held)))}
          />
        )}
      </form>

      <div class={`plan-result${stale ? " stale" : ""}`} aria-live="off">
        {stale && (
          <p class="stale-mark">
            {good ? texts.stale : texts.noPlanYet}{" "}
            <span>
              {texts.fieldsToMend(problems.length)} {problems[0]?.text(view)}
            </span>
          </p>
        )}
        {plan && <PlanSheet plan={plan} {...shown} />}
        {good?.rolled && <RolledSheet plan={good.rolled} {...shown} />}
      </div>
    </div>
  );
}
