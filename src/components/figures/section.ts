import type { FoldedSection } from "../../lib/part/fold.ts";
import { arcPath, at, type Spot, spot } from "./pen.tsx";

/** From millimetres in the plane of the section to the paper. */
export interface View {
  readonly scale: number;
  /** where the start of the base, on its lower face, is put */
  readonly origin: Spot;
  /** the whole section turned about that spot [deg], anticlockwise */
  readonly turned?: number;
}

export function onPaper(view: View, x: number, z: number): Spot {
  const angle = ((view.turned ?? 0) * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return spot(view.origin.x + view.scale * (x * cos - z * sin), view.origin.y - view.scale * (x * sin + z * cos));
}

/** Panels in a row and the bend after each; none where the sheet goes straight on. */
interface Section {
  readonly panels: FoldedSection["panels"];
  readonly bends: readonly (FoldedSection["bends"][number] | undefined)[];
}

/** Outline of the bent sheet in section. */
export function sectionPath(section: Section, thickness: number, view: View): string {
  const turned = view.turned ?? 0;
  const face = (offset: number) =>
    section.panels.map(({ start, end, heading }) => {
      const angle = (heading * Math.PI) / 180;
      const shift = (point: { x: number; z: number }) =>
        onPaper(view, point.x - offset * Math.sin(angle), point.z + offset * Math.cos(angle));
      return { start: shift(start), end: shift(end) };
    });
  const bend = (index: number, offset: number, back: boolean): string => {
    const found = section.bends[index];
    if (!found) return "";
    const centre = onPaper(view, found.centre.x, found.centre.z);
    const radius = view.scale * (found.up ? found.faceRadius - offset : found.faceRadius + offset);
    const quarter = found.up ? -90 : 90;
    const from = found.from + quarter + turned;
    const to = found.to + quarter + turned;
    return back ? arcPath(centre, radius, to, from, "L") : arcPath(centre, radius, from, to, "L");
  };
  const below = face(0);
  const above = face(thickness);
  const there = below.map(({ start, end }, index) => `${index === 0 ? "M" : "L"}${at(start)}L${at(end)}${bend(index, 0, false)}`);
  const back = above.map(
    ({ start, end }, index) => `L${at(end)}L${at(start)}${index > 0 ? bend(index - 1, thickness, true) : ""}`,
  );
  return `${there.join("")}${back.reverse().join("")}Z`;
}

/** One step along a strip: a straight length, or a bend about an inside radius; anticlockwise is positive. */
export type StripStep = { readonly ahead: number } | { readonly turn: number; readonly radius: number };

interface Walked {
  /** outline of the section, closed */
  readonly d: string;
  /** where the walked face ends, in mm, and the heading there [deg] */
  readonly end: { readonly x: number; readonly z: number; readonly heading: number };
}

/** Section of a strip walked along its right-hand face, for shapes that are no part: folded edges, half-made bends. */
export function stripPath(steps: readonly StripStep[], thickness: number, view: View): Walked {
  const there: string[] = [];
  const back: string[] = [];
  let x = 0;
  let z = 0;
  let heading = 0;
  const turned = view.turned ?? 0;
  const across = (offset: number): Spot => {
    const angle = (heading * Math.PI) / 180;
    return onPaper(view, x - offset * Math.sin(angle), z + offset * Math.cos(angle));
  };
  there.push(`M${at(across(0))}`);
  back.push(`L${at(across(thickness))}Z`);
  for (const step of steps) {
    if ("ahead" in step) {
      const before = across(thickness);
      x += step.ahead * Math.cos((heading * Math.PI) / 180);
      z += step.ahead * Math.sin((heading * Math.PI) / 180);
      there.push(`L${at(across(0))}`);
      back.push(`L${at(across(thickness))}L${at(before)}`);
      continue;
    }
    const left = step.turn > 0;
    const own = left ? step.radius + thickness : step.radius;
    const other = left ? step.radius : step.radius + thickness;
    const angle = (heading * Math.PI) / 180;
    const sign = left ? 1 : -1;
    const centreX = x - sign * own * Math.sin(angle);
    const centreZ = z + sign * own * Math.cos(angle);
    const centre = onPaper(view, centreX, centreZ);
    const from = heading - sign * 90 + turned;
    const to = from + step.turn;
    heading += step.turn;
    const after = (heading * Math.PI) / 180;
    x = centreX + sign * own * Math.sin(after);
    z = centreZ - sign * own * Math.cos(after);
    there.push(arcPath(centre, own * view.scale, from, to, "L"));
    back.push(arcPath(centre, other * view.scale, to, from, "L"));
  }
  return { d: there.join("") + back.reverse().join(""), end: { x, z, heading } };
}
