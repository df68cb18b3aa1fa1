import { momentCapacity } from "../bending/plastic-moment.ts";
import { type Catalogue, type MaterialId, materialIds, type Outline } from "../catalogue.ts";
import { parallelCapacity, rakedCapacity, surestCapacity } from "../cutting/shear-capacity.ts";
import { perimeter } from "../punching/perimeter.ts";
import { punchForce, punchStress, punchStressLimit } from "../punching/punch-force.ts";

/** What the machines of a shop take in metals that are not on their plates. By force or moment alone: plate and manual decide. */

type Data = Pick<Catalogue, "materials" | "shop">;

/** Largest thickness [mm] of one metal at the full length of each machine. */
export interface CarriedRow {
  readonly material: MaterialId;
  readonly brake: number;
  readonly rolls: number;
  readonly shear: number;
  readonly cornerCutter: number;
}

/** The ratings of the machines that have one, in every metal. */
export function carriedRatings({ materials, shop }: Data): CarriedRow[] {
  return materialIds.map((material) => {
    const { yield: own, shearStrength } = materials[material];
    const moment = ({ rating }: { rating: { material: MaterialId; thickness: number } }) =>
      momentCapacity({
        ratedThickness: rating.thickness,
        ratedYield: materials[rating.material].yield.value,
        yield: own.value,
      });
    const plate = ({ rating }: { rating: { material: MaterialId; thickness: number } }) => ({
      ratedThickness: rating.thickness,
      ratedStrength: materials[rating.material].shearStrength.value,
      shearStrength: shearStrength.value,
    });
    return {
      material,
      brake: moment(shop.brake),
      rolls: moment(shop.rolls),
      shear: (shop.shear.rake > 0 ? rakedCapacity : parallelCapacity)(plate(shop.shear)),
      // The slope of its blades is not in the file.
      cornerCutter: surestCapacity(plate(shop.cornerCutter)),
    };
  });
}

/** What sets the limit of a punch: the force of the machine, or the stress in the punch itself. */
export interface PunchLimit {
  /** [mm] */
  readonly thickness: number;
  readonly by: "force" | "stress";
}

/**
 * Thickest sheet of a metal that a punch goes through with the force of its machine.
 *
 * @param hole - outline of the punch [mm]
 * @returns thickness [mm], and what limits it
 */
export function thickestPunched({ materials, shop }: Data, material: MaterialId, hole: Outline): PunchLimit {
  const shearStrength = materials[material].shearStrength.value;
  const [width, height] = hole.shape === "round" ? [0, 0] : [hole.width, hole.shape === "square" ? hole.width : hole.height];
  const edge = perimeter({ shape: hole.shape, diameter: hole.shape === "round" ? hole.diameter : 0, width, height });
  // Force and stress both go with the thickness, so those of one millimetre say all.
  const byForce = shop.punch.force / punchForce({ perimeter: edge, thickness: 1, shearStrength });
  if (hole.shape !== "round") return { thickness: byForce, by: "force" };
  const byStress = punchStressLimit / punchStress({ diameter: hole.diameter, thickness: 1, shearStrength });
  return byStress < byForce ? { thickness: byStress, by: "stress" } : { thickness: byForce, by: "force" };
}
