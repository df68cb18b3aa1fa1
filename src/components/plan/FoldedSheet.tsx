import type { Solid } from "../../lib/part/solid.ts";
import type { Painted } from "../../lib/part/view.ts";
import { at, Paper } from "../figures/pen.tsx";
import type { Fit } from "./folding-view.ts";

interface Props {
  readonly solid: Solid;
  readonly painted: readonly Painted[];
  readonly fit: Fit;
  readonly title: string;
  /** Bend, tab or edge that is being made. */
  readonly active?: string | undefined;
}

/** The sheet in space: faces lighter the more they are turned to the light, its cut edges bright. */
export function FoldedSheet({ solid, painted, fit, title, active }: Props) {
  const line = (points: Painted["face"][number], close: boolean) =>
    `M${points.map((point) => at(fit.place(point))).join("L")}${close ? "Z" : ""}`;
  const all = (lines: Painted["face"], close: boolean) => lines.map((points) => line(points, close)).join("");
  return (
    <Paper height={fit.height} title={title}>
      {painted.map(({ facet, id, bands, face, shade, outlines, folds }, index) => {
        const made = id === active && solid.facets[facet]?.kind === "bend";
        return (
          <g key={index}>
            {bands.length > 0 && <path class="fold-band" d={all(bands, true)} />}
            <path class={made ? "fold-face fold-made" : `fold-face shade-${shade}`} fill-rule="evenodd" d={all(face, true)} />
            {folds.length > 0 && <path class="fold-line" d={all(folds, false)} />}
            {outlines.length > 0 && <path class="fold-outline" d={all(outlines, false)} />}
          </g>
        );
      })}
    </Paper>
  );
}
