import type { Strip } from "../../bending/springback.ts";
import type { Catalogue } from "../../catalogue.ts";
import { InputError } from "../../input-error.ts";
import type { Phrase } from "../../quantity/phrase.ts";
import { loadedRadiusFor, radiusLeft } from "../../rolling/loaded-radius.ts";
import { type Pass, passPlan } from "../../rolling/passes.ts";
import { flatEnd, rearRollRise, tightestLoadedRadius } from "../../rolling/three-roll.ts";
import type { RolledEnd, RolledPart, RolledSheet } from "./model.ts";

/** How the rolls are set for one end of the part. Lengths in mm. */
export interface RollSetting {
  readonly end: RolledEnd["name"];
  /** Inside radius wanted, square to the lines that lie along the rolls. */
  readonly radius: number;
  readonly loadedRadius: number;
  /** Of the rear roll from flat contact. */
  readonly rise: number;
  readonly turns: number;
  /** Nearly flat at each end of the sheet. */
  readonly flatEnd: number;
  /** In order; the last has the rise above. */
  readonly passes: readonly (Pass & { readonly turns: number })[];
}

/** Why the rolls cannot be set for one end. */
export interface NoSetting {
  readonly end: RolledEnd["name"];
  readonly radius: number;
  readonly because: Phrase;
}

export interface RollSettings {
  readonly settings: readonly RollSetting[];
  readonly refused: readonly NoSetting[];
  /** Smallest inside diameter that these rolls leave in this sheet, by geometry [mm]; undefined when it always comes back flat. */
  readonly smallestDiameter?: number;
}

export const stripOf = ({ material, thickness }: Pick<RolledPart, "material" | "thickness">): Strip => ({
  thickness,
  yield: material.yield.value,
  elasticModulus: material.elasticModulus.value,
});

/** The rolls of the shop as the calculations read them. */
export const machineOf = ({ shop: { rolls } }: Pick<Catalogue, "shop">) => ({
  frontRoll: rolls.frontRoll,
  rearRoll: rolls.rearRoll,
  rollSpacing: rolls.spacing,
  screwPitch: rolls.screwPitch,
});

/**
 * First settings of this shop's rolls, at each end of the part.
 * @remarks As the calculator “roll-setting”; passes of a cone are planned end by end.
 */
export function rollSettings({ part, ends }: RolledSheet, catalogue: Pick<Catalogue, "shop">): RollSettings {
  const strip = stripOf(part);
  const job = { ...strip, ...machineOf(catalogue) };
  const tightest = tightestLoadedRadius(job);
  const least = radiusLeft(strip, tightest);
  const settings: Omit<RollSetting, "passes">[] = [];
  const refused: NoSetting[] = [];
  for (const { name: end, radius } of ends) {
    try {
      const loadedRadius = loadedRadiusFor({ ...strip, radius, tightest });
      const rise = rearRollRise({ ...job, loadedRadius });
      settings.push({
        end,
        radius,
        loadedRadius,
        rise,
        turns: rise / job.screwPitch,
        flatEnd: flatEnd({ ...job, loadedRadius }),
      });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      refused.push({ end, radius, because: error.phrase });
    }
  }
  // Both ends of a cone go through the rolls together, so they take the same number of passes.
  const passesFor = (rise: number, passes?: number) =>
    passPlan({ ...job, rise, largestStep: catalogue.shop.rolls.risePerPass, ...(passes !== undefined && { passes }) });
  const most = Math.max(0, ...settings.map(({ rise }) => passesFor(rise).length));
  const planned = settings.map((setting) => ({
    ...setting,
    passes: passesFor(setting.rise, most).map((pass) => ({ ...pass, turns: pass.rise / job.screwPitch })),
  }));
  return { settings: planned, refused, ...(least !== undefined && { smallestDiameter: 2 * least }) };
}
