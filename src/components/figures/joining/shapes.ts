import { at, type Spot, spot } from "../pen.tsx";

/** Outlines that the figures of joining share; places are on the paper, y downwards. */

/** Closed outline through corners. */
export function closed(...corners: readonly Spot[]): string {
  return `M${corners.map(at).join("L")}Z`;
}

export function box(left: number, top: number, right: number, bottom: number): string {
  return closed(spot(left, top), spot(right, top), spot(right, bottom), spot(left, bottom));
}

export function ellipse({ x, y }: Spot, wide: number, high: number): string {
  return `M${at(spot(x - wide, y))}A${wide} ${high} 0 1 1 ${at(spot(x + wide, y))}A${wide} ${high} 0 1 1 ${at(spot(x - wide, y))}Z`;
}

export interface TipShape {
  /** Middle of the face that presses. */
  readonly face: Spot;
  /** Half the width of the face. */
  readonly half: number;
  /** Half the width of the body. */
  readonly body: number;
  /** From the face to the end that is drawn. */
  readonly length: number;
  /** Where the body lies, seen from the face. */
  readonly side: "above" | "below";
}

/** A welding tip: a cone of 30° ends in the flat face; the other end is left open, where it goes on. */
export function tipPath({ face, half, body, length, side }: TipShape): string {
  const up = side === "above" ? -1 : 1;
  const shoulder = face.y + up * (body - half) * Math.tan(Math.PI / 3) * 0.6;
  const end = face.y + up * length;
  const points = [
    spot(face.x - body, end),
    spot(face.x - body, shoulder),
    spot(face.x - half, face.y),
    spot(face.x + half, face.y),
    spot(face.x + body, shoulder),
    spot(face.x + body, end),
  ];
  return `M${points.map(at).join("L")}`;
}
