import { describe, expect, test } from "vitest";
import { drawFrom } from "../../scripts/fire/draw.ts";
import { faultsOf } from "../../scripts/fire/faults.ts";
import { anyForm } from "../../scripts/fire/forms.ts";
import { laws, tryLaw } from "../../scripts/fire/laws.ts";
import { shoot } from "../../scripts/fire/shoot.ts";
import { callsOf, knowledgeOf, targets } from "../../scripts/fire/targets.ts";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { InputError } from "../../src/lib/input-error.ts";
import { say } from "../../src/lib/quantity/phrase.ts";
import { runWorksheet, worksheet } from "../../src/lib/worksheet.ts";

const catalogue = loadCatalogue();
const knows = knowledgeOf(catalogue);
const total = 12_000;
const seed = 2026;

describe("whatever a form holds, a calculator answers or says what is wrong", () => {
  test.each([...callsOf(total)].map(([sheet, calls]) => ({ id: sheet.id, sheet, calls })))(
    "$id",
    ({ sheet, calls }) => {
      const { faults, answered } = shoot(sheet, calls, seed, catalogue, knows);
      expect(faults).toEqual([]);
      // Fire that never hits proves nothing.
      expect(answered).toBeGreaterThan(calls / 50);
    },
    60_000,
  );
});

describe("more of one thing never means less of another", () => {
  test.each(laws.map((law) => ({ name: `${law.sheet}: ${law.output} ${law.way} with ${law.input}: ${law.because}`, law })))(
    "$name",
    ({ law }) => {
      const { pairs, breach } = tryLaw(law, 25, seed, catalogue);
      expect(breach).toBeUndefined();
      expect(pairs).toBeGreaterThan(5);
    },
    60_000,
  );
});

describe("the fire itself", () => {
  test("has forms of every manner, the same for the same seed", () => {
    for (const { inputs } of targets.slice(0, 5))
      for (const manner of ["near", "inside", "slip", "wild"] as const)
        expect(anyForm(inputs, manner, drawFrom(5))).toEqual(anyForm(inputs, manner, drawFrom(5)));
  });

  const faulty = (give: (number: number) => number | string) =>
    worksheet({
      id: "faulty",
      title: "Faulty",
      summary: "",
      page: "/",
      inputs: { number: { kind: "quantity", quantity: "ratio", label: "Number", min: 0, max: 1, default: "0.5" } },
      outputs: { twice: { kind: "quantity", quantity: "ratio", label: "Twice" } },
      main: "twice",
      formulas: [],
      validity: [],
      cautions: [],
      sources: [],
      compute: ({ number }) => ({
        outputs: { twice: give(number) as number },
        remarks: [{ level: "note", phrase: say`It is ${give(number)}.` }],
        working: [],
        sources: [],
      }),
    });

  test.each([
    ["a number that is none", () => Number.NaN, "threw"],
    ["an end that is none", (number: number) => (number > 0.9 ? 1 / 0 : 1), "threw"],
    ["a text for a number", () => "two", "is no number"],
    [
      "an error without a name",
      () => {
        throw new TypeError("no");
      },
      "threw TypeError",
    ],
  ] as const)("notices %s", (_, give, what) => {
    const { faults } = shoot(faulty(give), 200, seed, catalogue, knows);
    expect(faults.map((fault) => fault.what).join()).toContain(what);
  });

  test("notices words for what is no number, and a source that is not there", () => {
    const sheet = faulty(() => 1);
    const { answer, ...result } = runWorksheet(sheet, {}, catalogue);
    const said = {
      ...result,
      answer: answer && { ...answer, remarks: [{ level: "note" as const, phrase: ["NaN mm"] }], sources: ["x"] },
    };
    expect([...faultsOf(sheet, {}, said, knows)]).toEqual([
      "remark 0 says: NaN mm",
      "remark 0 says: NaN mm",
      "remark 0 says: NaN mm",
      "cites x",
    ]);
    const refused = { problems: [new InputError("elsewhere", "1", say`No.`)] };
    expect([...faultsOf(sheet, {}, refused, knows)]).toEqual(["a problem at “elsewhere”, which is no field"]);
  });

  test("notices a law that is broken", () => {
    const { breach } = tryLaw(
      { sheet: "sheet-mass", input: "width", output: "mass", way: "falls", because: "wrong on purpose" },
      20,
      seed,
      catalogue,
    );
    expect(breach).toContain("→");
  });
});
