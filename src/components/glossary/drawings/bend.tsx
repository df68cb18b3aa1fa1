import { AngleSize, Arrowhead, arcPath, at, away, Line, Path, Size, spot, Text } from "../../figures/pen.tsx";
import { stripPath } from "../../figures/section.ts";
import { box, Lit, onGround, type Sketches } from "../sketch.tsx";

/** A thick sheet turned through 90°, so that every line of a bend can be told from the next. */
const sheet = { thickness: 22, radius: 22, kFactor: 0.42, level: 70, upright: 32 };
const start = spot(20, 98);
const strip = stripPath([{ ahead: sheet.level }, { turn: 90, radius: sheet.radius }, { ahead: sheet.upright }], sheet.thickness, {
  scale: 1,
  origin: start,
}).d;
const tangent = spot(start.x + sheet.level, start.y);
const apex = spot(tangent.x + sheet.radius + sheet.thickness, start.y);
const centre = spot(tangent.x, start.y - sheet.radius - sheet.thickness);
const upper = spot(apex.x, centre.y);
const top = centre.y - sheet.upright;
const neutral = sheet.radius + sheet.kFactor * sheet.thickness;
const about = "bent";

const Ground = () => <Path d={strip} kind="sheet" />;
const Beyond = () => <Path d={`M${at(tangent)}L${at(apex)}L${at(upper)}`} kind="hidden" />;

const corner = onGround(about, Ground, {
  allowance: () => (
    <>
      <path d={arcPath(centre, neutral, -90, 0)} />
      <Line from={spot(tangent.x, start.y + 5)} to={spot(tangent.x, start.y - sheet.thickness - 5)} />
      <Line from={spot(apex.x + 5, centre.y)} to={spot(apex.x - sheet.thickness - 5, centre.y)} />
      <Text spot={away(centre, -45, neutral + 26)} lines="A" kind="size" />
    </>
  ),
  tangent: () => (
    <>
      <path d={`M${tangent.x} ${start.y + 7}V${start.y - sheet.thickness - 9}`} />
      <path d={`M${apex.x + 7} ${centre.y}H${apex.x - sheet.thickness - 9}`} />
    </>
  ),
  radius: () => (
    <>
      <path d={arcPath(centre, sheet.radius, -90, 0)} />
      <Line from={centre} to={away(centre, -45, sheet.radius)} />
      <circle class="dot" cx={centre.x} cy={centre.y} r={2.2} />
      <Text spot={spot(centre.x - 4, centre.y - 6)} lines="R" anchor="end" kind="size" />
    </>
  ),
  neutral: () => {
    const y = centre.y + neutral;
    return <path class="neutral" d={`M${start.x - 8} ${y}H${tangent.x}${arcPath(centre, neutral, -90, 0, "L")}V${top - 8}`} />;
  },
  zone: () => (
    <path
      class="face"
      d={`${arcPath(centre, sheet.radius, -90, 0)}${arcPath(centre, sheet.radius + sheet.thickness, 0, -90, "L")}Z`}
    />
  ),
  leg: (labels) => (
    <>
      <Line from={spot(tangent.x, start.y)} to={apex} kind="hidden" />
      <Size from={start} to={apex} off={-22} text={labels.outsideLeg} />
    </>
  ),
});

const beyond = onGround(
  about,
  () => (
    <>
      <Ground />
      <Beyond />
    </>
  ),
  {
    apex: () => (
      <>
        <circle class="face" cx={apex.x} cy={apex.y} r={5} />
        <Line from={spot(178, 72)} to={spot(apex.x + 9, apex.y - 6)} />
        <Arrowhead tip={spot(apex.x + 6, apex.y - 4)} direction={213} />
      </>
    ),
    setback: () => (
      <>
        <Size from={tangent} to={apex} off={-20} text="SB" />
        <Size from={apex} to={upper} off={-20} text="SB" />
      </>
    ),
    mould: () => <path d={`M${at(tangent)}L${at(spot(apex.x + 20, apex.y))}M${at(upper)}L${at(spot(apex.x, apex.y + 20))}`} />,
    deduction: () => (
      <>
        <path d={`M${at(tangent)}L${at(apex)}L${at(upper)}`} />
        <path class="neutral" d={arcPath(centre, neutral, -90, 0)} />
        <Text spot={spot(apex.x + 12, apex.y - 16)} lines="2 SB − A" kind="size" />
      </>
    ),
  },
);

const slab = { left: 26, right: 128, top: 26, bottom: 106 };
const depth = slab.top + sheet.kFactor * (slab.bottom - slab.top);
const thick = onGround(
  "sheetSection",
  () => (
    <>
      <Path d={box(slab.left, slab.top, slab.right - slab.left, slab.bottom - slab.top)} kind="sheet" />
      <Path d={`M${slab.left - 8} ${depth}H${slab.right + 4}`} kind="neutral" />
      <Size from={spot(slab.right, slab.bottom)} to={spot(slab.right, slab.top)} off={-64} text="T" />
    </>
  ),
  { depth: () => <Size from={spot(slab.right, depth)} to={spot(slab.right, slab.top)} off={-30} text="K·T" /> },
);

/** A thin sheet turned through 60°, with the way it would have gone. */
const turned = { from: spot(22, 104), level: 84, angle: 60, radius: 8, thickness: 8 };
const bent = stripPath(
  [{ ahead: turned.level }, { turn: turned.angle, radius: turned.radius }, { ahead: 62 }],
  turned.thickness,
  { scale: 1, origin: turned.from },
).d;
const vertex = spot(turned.from.x + turned.level + 6, turned.from.y - 3);
const angles = onGround(
  "bentUp",
  () => (
    <>
      <Path d={bent} kind="sheet" />
      <Line from={spot(vertex.x + 8, turned.from.y - 4)} to={spot(206, turned.from.y - 4)} kind="hidden" />
    </>
  ),
  {
    turned: () => <AngleSize centre={vertex} radius={50} from={1} to={turned.angle - 6} text="60°" />,
    included: () => (
      <AngleSize centre={spot(vertex.x - 6, vertex.y - 8)} radius={30} from={turned.angle + 2} to={178} text="120°" />
    ),
  },
);

const sprung = { thickness: 7, radius: 20, wanted: 90, held: 104, heldRadius: 17 };
const foot = spot(24, 112);
const level = 70;
const legOf = (turn: number, radius: number) =>
  stripPath([{ ahead: level }, { turn, radius }, { ahead: 52 }], sprung.thickness, { scale: 1, origin: foot }).d;
const pivot = spot(foot.x + level, foot.y - sprung.radius - sprung.thickness);
const reach = 60;
const let_go = onGround(
  "letGo",
  () => (
    <>
      <Path d={legOf(sprung.held, sprung.heldRadius)} kind="sheet-ghost" />
      <Path d={legOf(sprung.wanted, sprung.radius)} kind="sheet" />
    </>
  ),
  {
    back: () => (
      <>
        <path d={arcPath(pivot, reach, 108, 66)} />
        <Arrowhead tip={away(pivot, 63, reach)} direction={-30} />
      </>
    ),
    past: () => (
      <>
        <path d={arcPath(pivot, reach, 66, 108)} />
        <Arrowhead tip={away(pivot, 111, reach)} direction={204} />
      </>
    ),
  },
);

const cracks = [-70, -52, -36, -20];
const sharp = { thickness: 24, radius: 7 };
const sharpStart = spot(30, 104);
const sharpCentre = spot(sharpStart.x + 74, sharpStart.y - sharp.thickness - sharp.radius);
const outside = onGround(
  "tooSharp",
  () => (
    <Path
      d={
        stripPath([{ ahead: 74 }, { turn: 90, radius: sharp.radius }, { ahead: 42 }], sharp.thickness, {
          scale: 1,
          origin: sharpStart,
        }).d
      }
      kind="sheet"
    />
  ),
  {
    cracks: () => (
      <path
        d={cracks
          .map((direction) => {
            const outer = sharp.radius + sharp.thickness;
            return `M${at(away(sharpCentre, direction, outer + 1))}L${at(away(sharpCentre, direction + 4, outer - 7))}L${at(away(sharpCentre, direction - 2, outer - 12))}`;
          })
          .join("")}
      />
    ),
    smallest: () => (
      <>
        <path d={arcPath(sharpCentre, sharp.radius, -90, 0)} />
        <Line from={sharpCentre} to={spot(sharpCentre.x - 26, sharpCentre.y - 26)} />
        <Text spot={spot(sharpCentre.x - 30, sharpCentre.y - 28)} lines="R" anchor="end" kind="size" />
      </>
    ),
  },
);

/** A strip before and after it was bent to be measured. */
const piece: Sketches = {
  piece: {
    about: "practicePiece",
    draw: (labels) => (
      <>
        <Path d={box(18, 26, 100, 7)} kind="sheet" />
        <Size from={spot(18, 26)} to={spot(118, 26)} off={12} text={labels.flat} gap={2} />
        <Lit>
          <Path
            d={stripPath([{ ahead: 44 }, { turn: 90, radius: 8 }, { ahead: 40 }], 7, { scale: 1, origin: spot(92, 112) }).d}
            kind="sheet"
          />
          <Size from={spot(92, 112)} to={spot(151, 112)} off={-14} text="a" />
          <Size from={spot(151, 112)} to={spot(151, 57)} off={-14} text="b" />
        </Lit>
      </>
    ),
  },
};

export const bend = { ...corner, ...beyond, ...thick, ...angles, ...let_go, ...outside, ...piece };
