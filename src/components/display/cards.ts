import type { Catalogue, Caution } from "../../lib/catalogue.ts";
import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { machineCautions } from "../../lib/shop/machine-cautions.ts";
import { gaugeReader } from "../../lib/stock/gauge.ts";
import { sheetMass } from "../../lib/stock/sheet-mass.ts";
import { display } from "../../texts/en/display.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import { type Limit, limitsOf } from "./limits.ts";
import { machinesOf } from "./machines.ts";
import { pieces, shortName } from "./words.ts";

/** What the screen shows while nobody is there: facts of the handbook and of this shop, one at a time. */
export interface Card {
  readonly kind: "limits" | "caution" | "number";
  readonly title: string;
  /** Lines of a name and its value. */
  readonly lines: readonly Limit[];
  readonly text: string;
}

/** More than these do not go on a card that leaves room to wander. */
const mostLines = 3;
/** Letters of a caution on a card. */
const mostLetters = 150;
const commonGauge = "18";

type Cautions = Readonly<Record<string, Pick<Caution, "title" | "text">>>;

function numberCards(catalogue: Catalogue, view: LengthView, language: Language): Card[] {
  const { cards: texts } = language.texts(display);
  const { materials, shop } = catalogue;
  const length = (value: number) => formatQuantity(value, "length", view === "fraction" ? "inch" : view, "setting");
  const card = (title: string, lines: Limit[]): Card[] =>
    lines.length === 0 ? [] : [{ kind: "number", title, lines: lines.slice(0, mostLines), text: "" }];
  const name = (material: keyof typeof materials) => shortName(language.say(materials[material].name));
  const heaviest = [...shop.stock]
    .map((sheet) => ({ sheet, mass: sheetMass({ ...sheet, density: materials[sheet.material].density.value }) }))
    .sort((one, other) => other.mass - one.mass)
    .slice(0, mostLines);
  const stocked = [...new Set(shop.stock.map(({ material }) => material))];
  const gauges = stocked.flatMap((material): Limit[] => {
    const thickness = gaugeReader(catalogue, material)(commonGauge);
    return typeof thickness === "number" ? [{ label: name(material), value: length(thickness) }] : [];
  });
  const gaugeLines = gauges.filter(({ value }, at) => gauges.findIndex((each) => each.value === value) === at);
  return [
    ...card(
      texts.mass,
      heaviest.map(({ sheet, mass }) => ({
        label: texts.massLine(length(sheet.thickness), name(sheet.material)),
        value: formatQuantity(mass, "mass"),
      })),
    ),
    ...(gaugeLines.length > 1 ? card(texts.gauge(commonGauge), gaugeLines) : []),
    ...card(
      texts.bend,
      shop.bends.map((bend) => ({
        label: texts.bendLine(name(bend.material), length(bend.thickness), formatQuantity(bend.angle, "angle").replace(".0", "")),
        value: length(bend.deduction),
      })),
    ),
  ];
}

/** All cards, in an order in which no two of a kind follow each other for long. */
export function cardsOf(catalogue: Catalogue, cautions: Cautions, view: LengthView, language: Language = english): Card[] {
  const texts = language.texts(display);
  const ids = machinesOf(catalogue.shop);
  const limits = ids.map(
    (id): Card => ({
      kind: "limits",
      title: texts.cards.limits(texts.machines[id]),
      lines: limitsOf(id, catalogue, view, language).slice(0, mostLines),
      text: "",
    }),
  );
  const warnings = ids.flatMap((id): Card[] => {
    const caution = cautions[machineCautions[id][0] ?? ""];
    return caution
      ? [{ kind: "caution", title: caution.title, lines: [], text: pieces(caution.text, mostLetters)[0] ?? "" }]
      : [];
  });
  const numbers = numberCards(catalogue, view, language);
  return limits.flatMap((card, at) => {
    const number = at % 3 === 2 ? numbers[((at - 2) / 3) % Math.max(1, numbers.length)] : undefined;
    const warning = warnings[at];
    return [card, ...(warning ? [warning] : []), ...(number ? [number] : [])];
  });
}
