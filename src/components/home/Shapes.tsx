import type { Raw } from "../../lib/inputs.ts";
import type { FlatLayout, FlatPoint } from "../../lib/part/flatten.ts";
import { fold } from "../../lib/part/fold.ts";
import { blankOf, layoutOf } from "../figures/layout-of.ts";
import { Arrowhead, arcPath, at, away, type Spot, spot } from "../figures/pen.tsx";
import { sectionPath } from "../figures/section.ts";

/** Pictures of the home page, folded by the library from whole parts as the plan takes them. Made at build. */

interface Box {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

function sectionIn({ width, height, margin }: Box, raw: Raw, thicker: number) {
  const layout = layoutOf(raw);
  const section = fold(layout);
  const spots = section.panels.flatMap(({ start, end }) => [start, end]);
  const xs = spots.map(({ x }) => x);
  const zs = spots.map(({ z }) => z);
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...zs), Math.max(...zs)];
  const scale = Math.min((width - 2 * margin) / (right - left), (height - 2 * margin) / Math.max(high - low, 1));
  const origin = spot(width / 2 - scale * ((left + right) / 2), height / 2 + scale * ((low + high) / 2));
  return { path: sectionPath(section, thicker, { scale, origin }), scale };
}

/** A blank with corners cut out, its bend lines on it. */
function blankIn({ width, height, margin }: Box, { outline, pieces, ...size }: FlatLayout) {
  const scale = Math.min((width - 2 * margin) / size.width, (height - 2 * margin) / size.depth);
  const place = ({ x, y }: FlatPoint) =>
    spot(width / 2 + scale * (x - size.width / 2), height / 2 - scale * (y - size.depth / 2));
  const closed = (points: readonly FlatPoint[]) => `M${points.map((point) => at(place(point))).join("L")}Z`;
  return {
    outline: closed(outline),
    bends: pieces.filter(({ kind }) => kind === "bend").map(({ polygon }) => closed(polygon)),
  };
}

/** A small picture of a part seen along its bends, or of its blank where it is bent both ways. Thin sheet would be a hairline, so it is drawn three times as thick. */
export function ShapeIcon({ raw }: { raw: Raw }) {
  const box = { width: 120, height: 72, margin: 14 };
  if (raw.kind === "tube" || raw.kind === "cone") return <RolledIcon small={raw.kind === "cone" ? 0.55 : 1} {...box} />;
  const layout = blankOf({ ...raw, thickness: "1.2mm", holes: [] });
  if (layout.chains.length > 1) {
    const { outline, bends } = blankIn({ ...box, margin: 6 }, layout);
    return (
      <svg class="fig shape-icon" viewBox={`0 0 ${box.width} ${box.height}`} aria-hidden="true">
        <path class="sheet" d={outline} />
        <path class="thin" d={bends.join("")} />
      </svg>
    );
  }
  return (
    <svg class="fig shape-icon" viewBox={`0 0 ${box.width} ${box.height}`} aria-hidden="true">
      <path class="sheet" d={sectionIn(box, { ...raw, thickness: "1.2mm", holes: [] }, 3).path} />
    </svg>
  );
}

/** A tube or a cone seen a little from its end, so that it looks round. */
function RolledIcon({ small, width, height, margin }: Box & { small: number }) {
  const [left, right, middle] = [margin + 14, width - margin - 10, height / 2];
  const large = height / 2 - margin;
  const end = large * small;
  const flat = 0.35;
  const half = (x: number, radius: number, sweep: number, to: number) =>
    `A${(radius * flat).toFixed(1)} ${radius.toFixed(1)} 0 0 ${sweep} ${at(spot(x, to))}`;
  return (
    <svg class="fig shape-icon" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <path
        class="sheet"
        d={`M${at(spot(left, middle - large))}L${at(spot(right, middle - end))}${half(right, end, 1, middle + end)}L${at(spot(left, middle + large))}${half(left, large, 1, middle - large)}Z`}
      />
      <path class="outline" d={`M${at(spot(left, middle - large))}${half(left, large, 1, middle + large)}`} />
    </svg>
  );
}

const channel: Raw = {
  thickness: "2mm",
  radius: "4mm",
  width: "60mm",
  depth: "90mm",
  south: [{ leg: "55mm", angle: "90deg", way: "up", radius: "" }],
  north: [{ leg: "55mm", angle: "90deg", way: "up", radius: "" }],
  holes: [],
};

function Swing({ hinge, side }: { hinge: Spot; side: number }) {
  const radius = scale * 62;
  const [from, to] = side > 0 ? [8, 80] : [172, 100];
  return (
    <g>
      <path class="motion-line" d={arcPath(hinge, radius, from, to)} />
      <Arrowhead tip={away(hinge, to, radius)} direction={to + side * 88} kind="arrow-motion" />
    </g>
  );
}

const scale = 1.75;

/** A blank on its way to a channel: flat, three times in between, formed. */
export function Opening({ title }: { title: string }) {
  const layout = layoutOf(channel);
  const { thickness } = layout.part;
  const middle = spot(200, 172);
  const at = (share: number) => {
    const section = fold(layout, share);
    const base = section.panels.find(({ id }) => id === "base");
    if (!base) throw new Error("A channel without a base");
    const centre = { x: (base.start.x + base.end.x) / 2, z: base.start.z };
    const turned = -base.heading;
    const angle = (turned * Math.PI) / 180;
    const origin = spot(
      middle.x - scale * (centre.x * Math.cos(angle) - ((base.start.z + base.end.z) / 2) * Math.sin(angle)),
      middle.y + scale * (centre.x * Math.sin(angle) + ((base.start.z + base.end.z) / 2) * Math.cos(angle)),
    );
    return sectionPath(section, thickness, { scale, origin, turned });
  };
  return (
    <svg class="fig opening" viewBox="0 36 400 184" role="img" aria-label={title}>
      {[0, 0.25, 0.5, 0.75].map((share) => (
        <path key={share} class={share === 0 ? "outline" : "before"} d={at(share)} />
      ))}
      <path class="sheet" d={at(1)} />
      {[1, -1].map((side) => (
        <Swing key={side} hinge={spot(middle.x + side * scale * 41, middle.y - scale * 6)} side={side} />
      ))}
      <path class="thin" d="M20 200H380" />
      {Array.from({ length: 37 }, (_, mark) => (
        <path key={mark * 10} class="thin" d={`M${20 + mark * 10} 200v${mark % 5 === 0 ? 12 : 6}`} />
      ))}
    </svg>
  );
}
