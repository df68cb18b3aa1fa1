import { useState } from "preact/hooks";
import { deductionFor } from "../../lib/bending/measured-bends.ts";
import { type LegEnd, usualLegEnd } from "../../lib/bending/symbols.ts";
import { bendColumns } from "../../lib/shop/fields.ts";
import { lineFrom } from "../../lib/shop/form.ts";
import { readBend } from "../../lib/shop/read-shop.ts";
import { shopLine } from "../../lib/shop/write-shop.ts";
import { gaugeReader } from "../../lib/stock/gauge.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { keepBend } from "../../texts/en/keep-bend.ts";
import type { AfterProps } from "../calculator/after.ts";
import { tellDeviceShop } from "./device.ts";
import { deviceStore, findBends, keepBends, today } from "./shelf.ts";

/** What the calculator was asked about. */
interface Values {
  readonly thickness: number;
  readonly radius: number;
  readonly angle: number;
  readonly legTo?: LegEnd;
}

/** A length as the shop's file has it; 0.0001 mm is far finer than any caliper. */
const typed = (value: number, unit: string) => `${Number(value.toFixed(4))} ${unit}`;

/** Asks what the calculator does not know of the pieces, and keeps them. */
export function KeepForm({ instance, values, outputs, catalogue, root }: AfterProps) {
  const language = useLanguage();
  const texts = useTexts(keepBend);
  const { thickness, radius, angle, legTo } = values as Values;
  const [material, setMaterial] = useState("steel-cr");
  const [lot, setLot] = useState("");
  const [brake, setBrake] = useState(catalogue.shop.brake.name);
  const [date, setDate] = useState(today().slice(0, 10));
  const [report, setReport] = useState<{ readonly words: string; readonly bad?: boolean; readonly line?: string }>();
  const { deduction, uncertainty, count } = outputs;
  if (typeof deduction !== "number" || typeof uncertainty !== "number") return <p>{texts.onePiece}</p>;

  const usual = usualLegEnd(angle);
  const row = {
    material,
    thickness: typed(thickness, "mm"),
    radius: typed(radius, "mm"),
    angle: typed(angle, "deg"),
    deduction: typed(deductionFor(deduction, { thickness, radius, angle }, legTo ?? usual, usual), "mm"),
    uncertainty: typed(uncertainty, "mm"),
    pieces: String(count),
    date,
    lot: lot.trim(),
    brake: brake.trim(),
  };
  const line = lineFrom(bendColumns, row);
  const { faults } = readBend(line, (id) => gaugeReader(catalogue, id));

  const keep = () => {
    const store = deviceStore();
    const { kept, trouble } = findBends(store);
    if (trouble?.why === "newer") {
      setReport({ words: texts.newer, bad: true });
      return;
    }
    if (keepBends(store, [line, ...(kept?.bends ?? [])])) {
      tellDeviceShop();
      setReport({ words: texts.kept });
    } else
      setReport({
        words: texts.notKept,
        line: `- ${shopLine(bendColumns, line)}`,
        bad: true,
      });
  };

  const id = (name: string) => `${instance}-keep-${name}`;
  const text = (name: "lot" | "brake" | "date", label: string, value: string, set: (next: string) => void) => {
    const fault = faults.find(({ path }) => path[0] === name)?.message;
    return (
      <div class="field">
        <label for={id(name)}>{label}</label>
        <div class="entry">
          <input
            id={id(name)}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={value}
            maxLength={bendColumns[name].maxLength}
            aria-invalid={fault ? "true" : undefined}
            aria-describedby={fault ? id(`${name}-message`) : undefined}
            onInput={(event) => {
              set(event.currentTarget.value);
              setReport(undefined);
            }}
          />
        </div>
        <p class="message" id={id(`${name}-message`)}>
          {fault}
        </p>
      </div>
    );
  };
  const others = faults.filter(({ path }) => !["lot", "brake", "date"].includes(String(path[0])));
  return (
    <div class="keep-form">
      <div class="field-grid">
        <div class="field">
          <label for={id("material")}>{texts.metal}</label>
          <select
            id={id("material")}
            value={material}
            autocomplete="off"
            onChange={(event) => {
              setMaterial(event.currentTarget.value);
              setReport(undefined);
            }}
          >
            {Object.values(catalogue.materials).map(({ id: metal, name }) => (
              <option key={metal} value={metal}>
                {language.say(name)}
              </option>
            ))}
          </select>
        </div>
        {text("lot", texts.lot, lot, setLot)}
        {text("brake", texts.brake, brake, setBrake)}
        {text("date", texts.date, date, setDate)}
      </div>
      {others.map(({ path, message }) => (
        <p class="message" key={path.join(".")}>
          {path.join(".")}: {message}
        </p>
      ))}
      <div class="actions">
        <button type="button" class="first" disabled={faults.length > 0} onClick={keep}>
          {texts.keep}
        </button>
        <span role="status" class={report?.bad ? "message" : undefined}>
          {report?.words} {report && !report.bad && <a href={`${root}/shop/#kept-bends`}>{texts.seeShop}</a>}
          {report?.line && <code>{report.line}</code>}
        </span>
      </div>
    </div>
  );
}
