import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { startingPoints } from "../../src/components/plan/starting-points.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import { planFrom } from "../../src/lib/part/plan.ts";
import { withOrder } from "../../src/lib/part/plan-order.ts";
import { type Signed, signOff, signOffCautions } from "../../src/lib/part/sign-off.ts";
import { phraseText } from "../../src/lib/quantity/phrase.ts";
import { machineCautions, machineIds } from "../../src/lib/shop/machine-cautions.ts";
import { signOff as words } from "../../src/texts/en/sign-off.ts";

const catalogue = loadCatalogue();

function signed(raw: Raw): Signed {
  const { plan, rolled, problems } = planFrom(raw, catalogue);
  if (plan) return { plan: withOrder(plan, catalogue) };
  if (rolled) return { rolled };
  throw new Error(problems.map(({ message }) => message).join(" "));
}
const stationsOf = (raw: Raw) => signOff(signed(raw), catalogue);
const start = (id: string) => startingPoints.find((point) => point.id === id)?.raw ?? {};

describe("what a plan is signed off for", () => {
  test.each(startingPoints.map(({ id, raw }) => [id, raw] as const))("%s", (_, raw) => {
    const stations = stationsOf(raw);
    expect(stations[0]?.id).toBe("shear");
    expect(new Set(stations.map(({ id }) => id)).size).toBe(stations.length);
    for (const { id, questions, cautions, work } of stations) {
      expect(words.stations[id]).toBeTruthy();
      expect(phraseText(work).length).toBeGreaterThan(5);
      for (const caution of cautions) expect(Object.keys(catalogue.cautions)).toContain(caution);
      for (const { ask, answer } of questions) {
        expect(phraseText(ask)).toMatch(/\?$/);
        expect(phraseText(answer)).not.toMatch(/NaN|undefined|Infinity|^$/);
      }
    }
  });

  test("each machine that the part needs, and none that it does not", () => {
    const ids = (raw: Raw) => stationsOf(raw).map(({ id }) => id);
    const flat: Raw = { name: "plate", width: "100mm", depth: "80mm", south: [], north: [], holes: [] };
    expect(ids(flat)).toEqual(["shear"]);
    const bent: Raw = { ...flat, north: [{ leg: "25mm", angle: "90deg", way: "up" }] };
    expect(ids(bent)).toEqual(["shear", "brake"]);
    const tube = startingPoints.find(({ raw }) => raw.kind === "tube");
    expect(ids(tube?.raw ?? {})).toContain("rolls");
    expect(ids(tube?.raw ?? {})).not.toContain("brake");
    const cone = startingPoints.find(({ raw }) => raw.kind === "cone");
    expect(ids(cone?.raw ?? {})).toEqual(expect.arrayContaining(["snips", "rolls"]));
  });

  test("the rating asked about is the plate's, carried over to the metal of the part", () => {
    const { shear } = catalogue.shop;
    const same = stationsOf({ ...start("channel"), material: shear.rating.material })[0]?.questions[0];
    const limit = `${shear.rating.thickness.toFixed(2)} mm`;
    expect(phraseText(same?.answer ?? [])).toContain(`Up to ${limit}`);
    const stainless = stationsOf({ ...start("channel"), material: "stainless-304" })[0]?.questions[0];
    expect(phraseText(stainless?.answer ?? [])).not.toContain(`Up to ${limit}`);
  });

  test("the stops asked about are those of the cut list, in its order", () => {
    const own = signed(start("channel"));
    if (!("plan" in own)) throw new Error("The channel is folded");
    const stops = own.plan.cuts.pieces.flatMap(({ settings }) => settings.map(({ stop }) => stop));
    const answer = phraseText(signOff(own, catalogue)[0]?.questions[1]?.answer ?? []);
    expect(stops.length).toBeGreaterThan(1);
    expect(answer.split(", ")).toEqual(stops.map((stop) => `${stop?.toFixed(2)} mm`));
  });
});

test("every caution of a machine asks something, apart from the one that sends to the manual", () => {
  for (const id of machineIds)
    for (const caution of machineCautions[id])
      if (caution !== "defer-to-manual") expect(catalogue.cautions[caution]?.ask, caution).toMatch(/\?$/);
  expect(signOffCautions).toContain("defer-to-manual");
});
