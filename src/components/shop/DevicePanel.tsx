import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Catalogue, MaterialId } from "../../lib/catalogue.ts";
import type { Input, ListInput, Raw, RawRow } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { ParseContext } from "../../lib/quantity/parse.ts";
import { shopLists, shopName, shopSections } from "../../lib/shop/fields.ts";
import { fieldAt, fileFrom, fileOf, formFrom, lineFrom, type ShopFile, shopInputs, unitApart } from "../../lib/shop/form.ts";
import type { ShopFault } from "../../lib/shop/read-shop.ts";
import { bendsCsv, shopText } from "../../lib/shop/write-shop.ts";
import { gaugeReader } from "../../lib/stock/gauge.ts";
import { useTexts } from "../../texts/context.ts";
import { shop as shopTexts } from "../../texts/en/shop.ts";
import { Field, type Form, fieldId } from "../calculator/Fields.tsx";
import { storedText } from "../calculator/texts.ts";
import { unitsView, watchUnits } from "../units.ts";
import { tellDeviceShop, watchDeviceShop } from "./device.ts";
import {
  asideShop,
  bendFaults,
  bendsFrom,
  deviceStore,
  findBends,
  findShop,
  type KeptShop,
  keepBends,
  keepShop,
  markOf,
  putAside,
  shopFrom,
  type Trouble,
  today,
  unreadable,
} from "./shelf.ts";

interface Props {
  readonly catalogue: Catalogue;
  /** The shop's own file as it is written. */
  readonly file: ShopFile;
}

/** The field of the list of bends kept on this device. */
const bendsField = "kept";

/** A list or choice of metals with their names. */
function withMetals(input: Input, materials: Catalogue["materials"]): Input {
  if (input.kind !== "list" || !("material" in input.columns)) return input;
  const choices = Object.fromEntries(Object.values(materials).map(({ id, name }) => [id, name]));
  return {
    ...input,
    columns: { ...input.columns, material: { ...input.columns.material, choices } as ListInput["columns"][string] },
  };
}

function saveFile(name: string, type: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

type Texts = typeof shopTexts.device;

interface Kept {
  readonly shop?: KeptShop | undefined;
  readonly bends: readonly ShopFile[];
  readonly troubles: readonly string[];
  /** Names under which the browser keeps what could not be read. */
  readonly unreadable: readonly string[];
  readonly aside?: KeptShop | undefined;
}

function look(texts: Texts): Kept {
  const store = deviceStore();
  const shop = findShop(store);
  const bends = findBends(store);
  const told = (trouble: Trouble | undefined, what: string) =>
    trouble && trouble.why !== "unreadable" ? [trouble.why === "off" ? texts.off : texts.newer(what)] : [];
  const troubles = new Set([...told(shop.trouble, texts.changes), ...told(bends.trouble, texts.measuredBends)]);
  return {
    shop: shop.kept,
    bends: bends.kept?.bends ?? [],
    troubles: [...troubles],
    unreadable: unreadable(store),
    aside: asideShop(store),
  };
}

const nothing: Kept = { bends: [], troubles: [], unreadable: [] };

/** The shop as it is changed and measured on this device. */
export function DevicePanel({ catalogue, file }: Props) {
  const all = useTexts(shopTexts);
  const texts = all.device;
  const [kept, setKept] = useState<Kept>(nothing);
  const [editing, setEditing] = useState(false);
  const [raw, setRaw] = useState<Raw>({});
  const [view, setView] = useState<LengthView>("mm");
  const [draft, setDraft] = useState<Form["draft"]>();
  const [unsaved, setUnsaved] = useState(false);
  const [report, setReport] = useState<{ readonly words: string; readonly lines?: readonly string[]; readonly bad?: boolean }>();
  const [deleted, setDeleted] = useState<{ readonly line: ShopFile; readonly index: number }>();
  const focusNext = useRef("");
  const own = useMemo(() => markOf(catalogue.shop), [catalogue]);

  useLayoutEffect(() => {
    const read = () => {
      const found = look(texts);
      setKept(found);
      setRaw({
        ...formFrom(found.shop?.draft ?? found.shop?.file ?? file),
        [bendsField]: formFrom({ bends: found.bends }).bends ?? [],
      });
    };
    read();
    setView(unitsView());
    watchUnits(() => setView(unitsView()));
    watchDeviceShop(read);
  }, []);

  useLayoutEffect(() => {
    if (focusNext.current === "") return;
    document.getElementById(focusNext.current)?.focus();
    focusNext.current = "";
  });

  const store = deviceStore();
  const current = useMemo(() => shopFrom(fileFrom(raw), catalogue), [raw, catalogue]);
  const lines = rowsAt(raw, bendsField).map((row) => lineFrom(shopLists.bends.list.columns, row));
  const shopProblems = editing || kept.shop ? current.faults : [];
  const bendProblems = bendFaults(lines, catalogue).flatMap((faults, index) =>
    faults.map(({ path, message }) => ({ path: [bendsField, index, ...path], message })),
  );
  const problems = messages(texts, [...shopProblems, ...bendProblems]);

  /** Keeps the values of the form: those of the shop once they can be used, and until then beside the last that could. */
  const keepRaw = (next: Raw) => {
    setRaw(next);
    const written = fileFrom(next);
    const usable = shopFrom(written, catalogue).shop !== undefined;
    const last = kept.shop?.file ?? file;
    const value = {
      changed: today(),
      own: kept.shop?.own ?? own,
      ...(usable ? { file: written } : { file: last, draft: written }),
    };
    setUnsaved(!keepShop(store, value));
    const found = look(texts);
    setKept(found.shop ? found : { ...found, shop: { version: 1, ...value } });
    tellDeviceShop();
  };
  const keepRows = (next: Raw) => {
    setRaw(next);
    const rows = rowsAt(next, bendsField).map((row) => lineFrom(shopLists.bends.list.columns, row));
    setUnsaved(!keepBends(store, rows));
    setKept({ ...look(texts), bends: rows });
    tellDeviceShop();
  };
  const change = (field: string, next: Raw) => (field.split(".")[0] === bendsField ? keepRows(next) : keepRaw(next));

  /** Gauge numbers are read in the list of the metal beside them. */
  const contextAt = (field: string): ParseContext => {
    const path = field.split(".");
    const list = path.slice(0, -2).join(".");
    const material =
      inputAt(list)?.kind === "list" ? rowsAt(raw, list)[Number(path.at(-2))]?.material : raw[`${path[0]}.rating.material`];
    return typeof material === "string" && Object.hasOwn(catalogue.materials, material)
      ? { gauge: gaugeReader(catalogue, material as MaterialId) }
      : {};
  };
  const form: Form = {
    instance: "shop",
    catalogue,
    view,
    context: {},
    contextAt,
    raw,
    live: true,
    material: "",
    draft,
    problems,
    cautions: new Map(),
    type(field, input, text) {
      const stored = input.kind === "quantity" ? unitApart(storedText(text, input.quantity, view, contextAt(field))) : text;
      setDraft({ field, text });
      setReport(undefined);
      if (field in shopInputs) return change(field, { ...raw, [field]: stored });
      const path = field.split(".");
      const [column = "", index = ""] = [path.pop(), path.pop()];
      const list = path.join(".");
      const rows = rowsAt(raw, list).map((row, at) => (String(at) === index ? { ...row, [column]: stored } : row));
      change(list, { ...raw, [list]: rows });
    },
    leave: () => setDraft(undefined),
    addRow(field, input) {
      const rows = rowsAt(raw, field);
      const columns = Object.entries(input.columns);
      focusNext.current = fieldId("shop", `${field}.${rows.length}.${columns[0]?.[0]}`);
      const empty = Object.fromEntries(columns.map(([name, cell]) => [name, ("default" in cell && cell.default) || ""]));
      if ("date" in empty) empty.date = today().slice(0, 10);
      change(field, { ...raw, [field]: [...rows, empty] });
    },
    removeRow(field, input, index) {
      const rows = rowsAt(raw, field);
      const after = rows.filter((_, at) => at !== index);
      const next = Math.min(index, after.length - 1);
      const [first = ""] = Object.keys(input.columns);
      focusNext.current =
        after.length === 0
          ? `${fieldId("shop", field)}-add`
          : after.length > input.minRows
            ? `${fieldId("shop", `${field}.${next}`)}-remove`
            : fieldId("shop", `${field}.${next}.${first}`);
      const [gone] = field === bendsField ? lines.slice(index, index + 1) : [];
      if (gone) setDeleted({ line: gone, index });
      change(field, { ...raw, [field]: after });
    },
  };

  const bringBackBend = () => {
    if (!deleted) return;
    const all = [...lines];
    all.splice(deleted.index, 0, deleted.line);
    setDeleted(undefined);
    keepRows({ ...raw, [bendsField]: formFrom({ bends: all }).bends ?? [] });
  };

  /** Puts a file in the place of the changes; those are put aside, not deleted. */
  const takeFile = (next: ShopFile) => {
    putAside(store);
    const value = { changed: today(), own, file: next };
    setUnsaved(!keepShop(store, value));
    const found = look(texts);
    setKept(found.shop ? found : { ...found, shop: { version: 1, ...value } });
    setRaw({ ...formFrom(next), [bendsField]: rowsAt(raw, bendsField) });
    setEditing(true);
    tellDeviceShop();
  };

  const takeOff = () => {
    putAside(store);
    keepShop(store, undefined);
    const found = look(texts);
    setKept(found);
    setRaw({ ...formFrom(file), [bendsField]: rowsAt(raw, bendsField) });
    setEditing(false);
    setReport({ words: texts.takenOff });
    tellDeviceShop();
  };

  const bringBack = () => {
    const { aside } = kept;
    if (!aside) return;
    putAside(store);
    setUnsaved(!keepShop(store, aside));
    const found = look(texts);
    setKept(found);
    setRaw({ ...formFrom(aside.draft ?? aside.file), [bendsField]: rowsAt(raw, bendsField) });
    setEditing(true);
    setReport({ words: texts.broughtBack(aside.changed.slice(0, 10)) });
    tellDeviceShop();
  };

  const open = async (chosen: File | undefined) => {
    if (!chosen) return;
    const { readShopText } = await import("./open-shop.ts");
    const { file: read, filled, faults } = readShopText(chosen.name, await chosen.text(), catalogue, all);
    if (!read) {
      setReport({ words: texts.refused(chosen.name), lines: faults, bad: true });
      return;
    }
    takeFile(read);
    setReport({
      words: `${texts.inUse(chosen.name)}${filled.length > 0 ? ` ${texts.filled}` : ""}`,
      lines: filled,
    });
  };

  const save = () => {
    const usable = kept.shop?.file ?? fileOf(catalogue.shop);
    const good = lines.filter((_, index) => !bendFaults(lines, catalogue)[index]?.length);
    const bends = (Array.isArray(usable.bends) ? (usable.bends as ShopFile[]) : []).filter(
      (bend) => !good.some((each) => JSON.stringify(each) === JSON.stringify(bend)),
    );
    const remark = texts.savedOn(today().slice(0, 10));
    saveFile("shop.yaml", "application/yaml", shopText({ ...usable, bends: [...good, ...bends] }, remark));
    if (kept.shop?.draft) setReport({ words: texts.savedLastUsable, bad: true });
  };

  const opener = (
    <label class="button open-file">
      {texts.open}
      <input
        type="file"
        accept=".yaml,.yml,.json"
        onChange={(event) => {
          const { currentTarget } = event;
          void open(currentTarget.files?.[0]).then(() => {
            currentTarget.value = "";
          });
        }}
      />
    </label>
  );

  const { shop } = kept;
  return (
    <div class="device-body">
      <p>{shop ? texts.changedOf(shop.changed.slice(0, 10)) : texts.unchanged}</p>
      {shop && shop.own !== own && <p class="stale-mark">{texts.fileChanged}</p>}
      {kept.troubles.map((trouble) => (
        <p class="message" role="alert" key={trouble}>
          {trouble}
        </p>
      ))}
      {kept.unreadable.map((name) => (
        <div class="unreadable" key={name}>
          <p class="message" role="alert">
            {texts.unreadable(name)}
          </p>
          <div class="actions">
            <button type="button" onClick={() => saveFile(`${name}.txt`, "text/plain", store?.getItem(name) ?? "")}>
              {texts.saveUnreadable}
            </button>
            <button
              type="button"
              onClick={() => {
                store?.removeItem(name);
                setKept(look(texts));
              }}
            >
              {texts.deleteUnreadable}
            </button>
          </div>
        </div>
      ))}
      {unsaved && (
        <p class="message" role="alert">
          {texts.unsaved}
        </p>
      )}
      {shopProblems.length > 0 && (
        <p class="message" role="status">
          {texts.toMend(shopProblems.length)} {texts.lastCount}
        </p>
      )}
      <div class="actions">
        {!editing && (
          <button type="button" onClick={() => setEditing(true)}>
            {shop ? texts.changeMore : texts.change}
          </button>
        )}
        {opener}
        {(shop || lines.length > 0) && (
          <button type="button" onClick={save}>
            {texts.save}
          </button>
        )}
        {shop && (
          <button type="button" onClick={takeOff}>
            {texts.takeOff}
          </button>
        )}
        {kept.aside && (
          <button type="button" onClick={bringBack}>
            {texts.bringBack(kept.aside.changed.slice(0, 10))}
          </button>
        )}
      </div>
      <div role="status" class={report?.bad ? "report bad" : "report"}>
        {report && <p>{report.words}</p>}
        {report?.lines && report.lines.length > 0 && (
          <ul>
            {report.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        )}
      </div>

      {editing && (
        <form class="shop-form" autocomplete="off" noValidate onSubmit={(event) => event.preventDefault()}>
          <div class="field-grid">
            <Field form={form} field="name" input={shopName} />
          </div>
          {Object.entries(shopSections).map(([section, { title, about, inputs }]) => (
            <Group key={section} title={title} about={about} marked={concerns(problems, section)}>
              {Object.entries<Input>(inputs).map(([key, input]) => (
                <Field key={key} form={form} field={`${section}.${key}`} input={input} />
              ))}
            </Group>
          ))}
          {Object.entries(shopLists).map(([key, { title, about, list }]) => (
            <Group key={key} title={title} about={about} marked={concerns(problems, key)}>
              <Field form={form} field={key} input={withMetals(list, catalogue.materials)} />
            </Group>
          ))}
        </form>
      )}

      {(lines.length > 0 || deleted || editing) && (
        <section class="kept-bends" aria-labelledby="kept-bends">
          <h3 id="kept-bends">{texts.bends}</h3>
          <p>
            {texts.bendsFirst} {bendProblems.length > 0 && `${texts.bendFault} `}
            {texts.bendsFrom}
          </p>
          <form class="shop-form" autocomplete="off" noValidate onSubmit={(event) => event.preventDefault()}>
            <Field
              form={form}
              field={bendsField}
              input={withMetals({ ...shopLists.bends.list, label: texts.bendList }, catalogue.materials)}
            />
          </form>
          <div class="actions">
            {lines.length > 0 && (
              <button
                type="button"
                onClick={() => saveFile("measured-bends.csv", "text/csv", bendsCsv(bendsFrom(lines, catalogue)))}
              >
                {texts.saveBends}
              </button>
            )}
            {deleted && (
              <button type="button" onClick={bringBackBend}>
                {texts.bringBackBend(String(deleted.line.date ?? "").slice(0, 10))}
              </button>
            )}
          </div>
        </section>
      )}
    </div>
  );
}

function rowsAt(raw: Raw, field: string): readonly RawRow[] {
  const rows = raw[field];
  return Array.isArray(rows) ? (rows as readonly RawRow[]) : [];
}

const inputAt = (field: string): Input | undefined => (field === bendsField ? shopLists.bends.list : shopInputs[field]);

/** The message at each field. In a line of a list it names its column, and what is empty is said once. */
function messages(texts: Texts, faults: readonly ShopFault[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const empty = new Map<string, { readonly field: string; readonly names: string[] }>();
  for (const { path, message } of faults) {
    const field = fieldAt(path);
    const list = inputAt(path.slice(0, -2).join("."));
    const label = list?.kind === "list" ? list.columns[String(path.at(-1))]?.label : undefined;
    if (!label) found.set(field, message);
    else if (message !== "is empty" && message !== "is missing") found.set(field, `${label}: ${message}`);
    else {
      const row = path.slice(0, -1).join(".");
      const first = empty.get(row);
      if (first) first.names.push(label);
      else empty.set(row, { field, names: [label] });
    }
  }
  for (const { field, names } of empty.values()) found.set(field, texts.notFilledIn(names));
  return found;
}

const concerns = (problems: ReadonlyMap<string, string>, section: string) =>
  [...problems.keys()].some((field) => field === section || field.startsWith(`${section}.`));

interface GroupProps {
  readonly title: string;
  readonly about: string;
  readonly marked: boolean;
  readonly children: preact.ComponentChildren;
}

/** One machine or list, folded away until somebody wants it or something in it is wrong. */
function Group({ title, about, marked, children }: GroupProps) {
  const texts = useTexts(shopTexts).device;
  const element = useRef<HTMLDetailsElement>(null);
  // Opened by a fault, but not closed when it is corrected: somebody is typing in it.
  useLayoutEffect(() => {
    if (marked && element.current) element.current.open = true;
  }, [marked]);
  return (
    <details class="shop-group" ref={element}>
      <summary>
        {title}
        {marked && <span class="group-mark"> {texts.needsEntry}</span>}
      </summary>
      <p class="help">{about}</p>
      <div class="field-grid">{children}</div>
    </details>
  );
}
