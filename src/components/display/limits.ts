import type { Catalogue, MaterialId, Rating } from "../../lib/catalogue.ts";
import { formatQuantity, type LengthView } from "../../lib/quantity/format.ts";
import { atLeast, atMost, phraseText } from "../../lib/quantity/phrase.ts";
import type { Quantity } from "../../lib/quantity/units.ts";
import { carriedRatings } from "../../lib/shop/carry-over.ts";
import type { MachineId } from "../../lib/shop/machine-cautions.ts";
import { display } from "../../texts/en/display.ts";
import { english } from "../../texts/english.ts";
import type { Language } from "../../texts/language.ts";
import { shortName } from "./words.ts";

export interface Limit {
  readonly label: string;
  readonly value: string;
}

type Data = Pick<Catalogue, "materials" | "shop" | "markingMethods">;

const trimmed = (text: string) => text.replace(/(\.\d*?)0+(?=\D|$)/, "$1").replace(/\.(?=\D|$)/, "");

/** The metal in stock of which a machine takes the thinnest sheet: the one to be careful with. */
export function hardestInStock(
  data: Pick<Catalogue, "materials" | "shop">,
  machine: "brake" | "shear" | "cornerCutter" | "rolls",
): { readonly material: MaterialId; readonly thickness: number } | undefined {
  const stocked = new Set(data.shop.stock.map(({ material }) => material));
  const rows = carriedRatings(data).filter(({ material }) => stocked.has(material));
  const [first] = rows.sort((one, other) => one[machine] - other[machine]);
  return first && { material: first.material, thickness: first[machine] };
}

/** What a machine of the shop takes, a line each: rounded so that who keeps to the number keeps to the limit. */
export function limitsOf(
  id: MachineId,
  { materials, shop, markingMethods }: Data,
  view: LengthView,
  language: Language = english,
): Limit[] {
  const { limits: words } = language.texts(display);
  const most = (value: number) => trimmed(phraseText([atMost(value)], view));
  const least = (value: number) => trimmed(phraseText([atLeast(value)], view));
  /** A sheet's thickness is no sixty-fourth of an inch. */
  const sheet = (value: number) => trimmed(phraseText([atMost(value)], view === "fraction" ? "inch" : view));
  const fine = (value: number) => trimmed(formatQuantity(value, "length", view === "fraction" ? "inch" : view, "setting"));
  const plain = (value: number, quantity: Quantity) => trimmed(formatQuantity(value, quantity));
  const name = (material: MaterialId) => shortName(language.say(materials[material].name));
  /** One unit at the end is enough. */
  const range = (from: string, to: string) => {
    const unit = /[^\d.,/–-]+$/.exec(to)?.[0] ?? "";
    return unit !== "" && from.endsWith(unit) ? `${from.slice(0, -unit.length)}–${to}` : `${from}–${to}`;
  };
  const rated = (machine: "brake" | "shear" | "cornerCutter" | "rolls"): Limit[] => {
    const { rating } = shop[machine] as { rating: Omit<Rating, "length"> & Partial<Rating> };
    const hardest = hardestInStock({ materials, shop }, machine);
    return [
      { label: name(rating.material), value: words.upTo(sheet(rating.thickness)) },
      ...(hardest && hardest.material !== rating.material && hardest.thickness < rating.thickness
        ? [{ label: name(hardest.material), value: words.upTo(sheet(hardest.thickness)) }]
        : []),
      ...(rating.length === undefined ? [] : [{ label: words.ratedOver, value: most(rating.length) }]),
    ];
  };
  switch (id) {
    case "marking":
      return Object.values(markingMethods).map((method) => ({
        label: language.say(method.name),
        value: words.around(fine(method.error)),
      }));
    case "shear":
      return [
        ...rated("shear"),
        { label: words.backStop, value: range(least(shop.shear.shortestStop), most(shop.shear.longestStop)) },
        { label: words.shortestHeld, value: least(shop.shear.shortestPiece) },
      ];
    case "cornerCutter":
      return [...rated("cornerCutter"), { label: words.longestSide, value: most(shop.cornerCutter.largestSide) }];
    case "bandSaw":
      return [
        { label: words.throat, value: most(shop.bandSaw.throat) },
        { label: words.bandSpeed, value: `${shop.bandSaw.slowest}–${plain(shop.bandSaw.fastest, "speed")}` },
        { label: words.teeth, value: shop.bandSaw.bands.map(({ teeth }) => teeth).join(", ") },
        { label: words.coolant, value: words[shop.bandSaw.coolant] },
      ];
    case "punch": {
      const round = shop.punch.punches.flatMap((punch) => (punch.shape === "round" ? [punch.diameter] : []));
      const sizes = [...new Set(round)].sort((one, other) => one - other);
      return [
        { label: words.largestForce, value: plain(shop.punch.force, "force") },
        { label: words.throat, value: most(shop.punch.throat) },
        ...(sizes.length > 0
          ? [
              {
                label: words.roundPunches,
                value: sizes.map((size, at) => (at + 1 < sizes.length ? bare(fine(size)) : fine(size))).join(", "),
              },
            ]
          : []),
      ];
    }
    case "brake":
      return [
        ...rated("brake"),
        { label: words.outsideLeg, value: range(least(shop.brake.shortestLeg), most(shop.brake.longestLeg)) },
        { label: words.swing, value: words.upTo(plain(shop.brake.largestSwing, "angle")) },
      ];
    case "rolls":
      return [
        ...rated("rolls"),
        { label: words.smallestTube, value: least(shop.rolls.smallestDiameter) },
        { label: words.risePerPass, value: words.upTo(fine(shop.rolls.risePerPass)) },
      ];
    case "welder":
      return [
        { label: words.eachSheet, value: range(least(shop.welder.thinnest), sheet(shop.welder.thickest)) },
        { label: words.largestForce, value: plain(shop.welder.largestForce, "force") },
        { label: words.largestCurrent, value: plain(shop.welder.largestCurrent, "current") },
        { label: words.throat, value: most(shop.welder.throat) },
        { label: words.weldEnds, value: shop.welder.time === "timer" ? words.timer : words.finger },
      ];
    case "furnace":
      return shop.furnaces.slice(0, 2).flatMap((furnace) => [
        {
          label: shop.furnaces.length > 1 ? `${language.say(furnace.name)}: ${words.hottest}` : words.hottest,
          value: plain(furnace.hottest, "temperature"),
        },
        { label: words.strays, value: words.around(`${furnace.control} °C`) },
        {
          label: words.clearInside,
          value: [furnace.width, furnace.height]
            .map((each) => bare(most(each)))
            .concat(most(furnace.depth))
            .join(" × "),
        },
      ]);
  }
}

/** `3 mm` without its unit. */
const bare = (text: string) => text.replace(/\s.*$/, "");

/** What stands below the limits, in smaller letters. */
export function notesOf(id: MachineId, { materials, shop }: Data, language: Language): string[] {
  const texts = language.texts(display);
  if (id === "marking") return [texts.methodsFrom];
  const section = id === "furnace" ? undefined : shop[id];
  const own = section ? language.say(section.name) : shop.furnaces.map(({ name }) => language.say(name)).join(", ");
  const notes = [`${own}. ${texts.plateFirst}`];
  if (id === "brake" || id === "shear" || id === "cornerCutter" || id === "rolls") {
    const hardest = hardestInStock({ materials, shop }, id);
    const { material, thickness } = shop[id].rating;
    if (hardest && hardest.material !== material && hardest.thickness < thickness)
      notes.push(texts.carried(shortName(language.say(materials[hardest.material].name))));
  }
  return notes;
}
