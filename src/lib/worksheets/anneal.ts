import { annealing, canAnneal, slowCooling, slowCoolingFormula } from "../furnace/annealing.ts";
import { dooleyColours, heatColour, heatColours } from "../furnace/heat-colours.ts";
import { amount, type Phrase, say } from "../quantity/phrase.ts";
import { toBase } from "../quantity/units.ts";
import { materialInput, materialWith, propertyInputs } from "../stock/material.ts";
import { type AnswerTable, type Remark, worksheet } from "../worksheet.ts";

/** Within so many °C of melting a small furnace's error matters. */
const nearMelting = 250;

const degrees = (value: number) => amount(value, "temperature");

/** Colours by two writers: one row a colour word, °C where each puts it. */
function colourTable(temperature: number): AnswerTable {
  const glow = heatColour(temperature);
  return {
    caption: "Colour in the shade: two writers who disagree",
    columns: [{ label: "Colour" }, { label: "From", quantity: "temperature" }, { label: "To", quantity: "temperature" }],
    rows: [
      ...heatColours.map(({ colour, from, to }) => ({
        cells: [colour, from, to],
        chosen: colour === glow,
        source: "chapman-workshop",
      })),
      ...dooleyColours.map(({ colour, fahrenheit }) => ({
        cells: [`${colour}, by the other`, toBase(fahrenheit, "temperature", "°F"), null],
        source: "dooley",
      })),
    ],
  };
}

export default worksheet({
  id: "anneal",
  title: "Annealing before forming",
  summary:
    "How hot, how long and how to cool each metal so that it takes a tight bend, and which metals must not be annealed here.",
  page: "/furnace/",
  inputs: { material: materialInput, ...propertyInputs },
  outputs: {
    temperature: { kind: "quantity", label: "Furnace temperature", symbol: "T", quantity: "temperature" },
    time: {
      kind: "quantity",
      label: "Hold",
      quantity: "time",
      help: "Once the whole piece is as hot as the furnace. 0: take it out then.",
    },
    cooling: { kind: "text", label: "Cool it" },
    note: { kind: "text", label: "What to know" },
  },
  main: "temperature",
  formulas: [slowCoolingFormula],
  validity: [
    "Bare, clean, dry sheet in a furnace with a thermocouple in the load. Most of these temperatures are from memory of the handbooks.",
    "It softens for forming. It is no heat treatment with a certificate, and no repair of aircraft or vehicle parts.",
  ],
  cautions: ["furnace-heat", "furnace-load", "over-temperature", "zinc-fume", "hot-work", "defer-to-manual"],
  sources: [
    "asm-aluminium-annealing",
    "heat-treatment-sheet",
    "asm-copper-annealing",
    "cda-brass-forum",
    "cda-cold-rolled",
    "asm-steel-annealing",
    "asm-titanium-annealing",
    "aws-fact-sheet-25",
    "tm-43-0106",
    "chapman-workshop",
    "dooley",
    "common-practice",
  ],

  compute(values, catalogue) {
    const material = materialWith(catalogue, values.material, values);
    const how = annealing[material.id];
    if (!canAnneal(how))
      return {
        outputs: { temperature: null, time: null, cooling: "Do not anneal it here.", note: how.why },
        remarks: [
          {
            level: "caution",
            field: "material",
            phrase: say`${material.name} must not be annealed in a simple furnace. ${how.why}`,
            source: how.source,
          },
        ],
        working: [],
        sources: [how.source],
      };

    const { temperature, hold, cooling, note, ranges, slow, melts } = how;
    const remarks: Remark[] = [];
    const caution = (phrase: Phrase, source: string) => remarks.push({ level: "caution", field: "material", phrase, source });
    if (ranges.every(({ seen }) => seen === "memory"))
      caution(
        say`This temperature is from memory of the handbook and was not looked up again. Try an offcut first: anneal it, bend it, and compare.`,
        ranges[0]?.source ?? "common-practice",
      );
    if (ranges.some(({ low, high }) => low < high))
      remarks.push({
        level: "note",
        phrase: say`${degrees(temperature)} is chosen inside what the sources give; hotter softens more and coarsens the grain.`,
        source: "common-practice",
      });
    if (melts - temperature < nearMelting)
      caution(
        say`It begins to melt at about ${degrees(melts)} (from memory) and does not glow before. Set the over-temperature cut-out and put the thermocouple at the piece.`,
        "common-practice",
      );

    const { furnaces } = catalogue.shop;
    const able = furnaces.filter(({ hottest }) => hottest >= temperature);
    if (able.length === 0)
      caution(
        furnaces.length === 0
          ? say`This shop has no furnace.`
          : say`No furnace of this shop gets as hot as ${degrees(temperature)}.`,
        "common-practice",
      );
    for (const { name, hottest, control, width, height, depth } of able)
      remarks.push({
        level: "note",
        phrase: say`${name}: up to ${degrees(hottest)}, ± ${degrees(control)}; a piece up to ${amount(width, "length")} × ${amount(height, "length")} × ${amount(depth, "length")} goes in. Good enough to soften; a certified treatment keeps within ± 3 °C.`,
        source: "tm-43-0106",
      });

    const cooled = slow && slowCooling({ from: temperature, to: slow.to, rate: slow.rate });
    if (cooled !== undefined)
      remarks.push({
        level: "note",
        phrase: say`Slow cooling takes ${amount(cooled, "time")} or more: start in the morning, and only where the furnace may run so long under watch.`,
      });
    if (material.family === "aluminium")
      remarks.push({ level: "note", phrase: say`Aluminium shows no usable colour. Only the thermocouple knows.` });
    else
      remarks.push({
        level: "note",
        phrase: say`Go by the thermocouple: those who wrote colours down differ by 50 to 100 °C.`,
        source: "chapman-workshop",
      });
    if (material.id === "brass-half-hard")
      remarks.push({
        level: "note",
        phrase: say`Why it is worth it: rolled quarter hard this brass stretches 43 % before it breaks, rolled hard only 8 %.`,
        source: "cda-cold-rolled",
      });

    const published: AnswerTable = {
      caption: "What the sources give",
      columns: [{ label: "Range" }, { label: "From", quantity: "temperature" }, { label: "To", quantity: "temperature" }],
      rows: ranges.map(({ name, low, high, source, seen, note: more }) => ({
        cells: [name, low, high],
        source,
        note: [seen === "memory" ? "from memory" : undefined, more].filter((words) => words !== undefined).join("; "),
      })),
    };

    return {
      outputs: { temperature, time: hold, cooling, note },
      remarks,
      working:
        slow && cooled !== undefined
          ? [
              {
                formula: slowCoolingFormula,
                values: { from: temperature, to: slow.to, rate: slow.rate, hours: cooled / toBase(1, "time", "h") },
              },
            ]
          : [],
      tables: [published, ...(material.family === "aluminium" ? [] : [colourTable(temperature)])],
      sources: [...new Set([...ranges.map(({ source }) => source), "tm-43-0106"])],
    };
  },
});
