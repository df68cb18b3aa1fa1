import type { ComponentChildren } from "preact";
import type { Catalogue } from "../../../lib/catalogue.ts";
import type { LengthView } from "../../../lib/quantity/format.ts";
import type { Spot } from "../../figures/pen.tsx";

/** What a calculator hands to its drawing: the values and outputs of its worksheet, which each drawing knows the types of. */
export interface DrawingProps {
  /** Makes the ids in the drawing unique on the page. */
  readonly id: string;
  readonly values: unknown;
  readonly outputs: unknown;
  readonly view: LengthView;
  /** The machines that an answer is held against. */
  readonly shop: Catalogue["shop"];
}

interface Props {
  readonly id: string;
  readonly height: number;
  readonly title: string;
  /** What the drawing shows, in a sentence with its numbers. */
  readonly description: string;
  readonly children: ComponentChildren;
}

/** 360 units wide, about the width of a phone, so that its letters stay readable there. */
export const drawingWidth = 360;

export function Drawing({ id, height, title, description, children }: Props) {
  return (
    <svg
      class="fig"
      viewBox={`0 0 ${drawingWidth} ${height}`}
      role="img"
      aria-labelledby={`${id}-drawing-title`}
      aria-describedby={`${id}-drawing-text`}
    >
      <title id={`${id}-drawing-title`}>{title}</title>
      <desc id={`${id}-drawing-text`}>{description}</desc>
      {children}
    </svg>
  );
}

/** A remark in a corner of a drawing. */
export function Aside({ place, end = false, children }: { place: Spot; end?: boolean; children: ComponentChildren }) {
  return (
    <text class="aside" x={place.x} y={place.y} text-anchor={end ? "end" : undefined}>
      {children}
    </text>
  );
}
