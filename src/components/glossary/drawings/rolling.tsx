import { AngleSize, Arrowhead, arcPath, at, away, Line, Path, Size, spot, Text } from "../../figures/pen.tsx";
import { Lit, onGround, type Sketches } from "../sketch.tsx";

/** Slip rolls from the side: two rolls that pinch the sheet, and a rear roll that curves it. */
const roll = 17;
const sheet = 5;
const pinch = spot(74, 84);
const upper = spot(pinch.x, pinch.y - roll - sheet / 2);
const lower = spot(pinch.x, pinch.y + roll + sheet / 2);
const radius = 78;
const centre = spot(pinch.x + 6, pinch.y + sheet / 2 - radius);
const rear = away(centre, -52, radius + roll);
const through = `M14 ${pinch.y - sheet / 2}${arcPath(centre, radius - sheet, -90, -10, "L")}${arcPath(centre, radius, -10, -90, "L")}H14Z`;

const rolls = onGround(
  "rolls",
  () => (
    <>
      <circle class="tool" cx={upper.x} cy={upper.y} r={roll} />
      <circle class="tool" cx={lower.x} cy={lower.y} r={roll} />
      <circle class="tool" cx={rear.x} cy={rear.y} r={roll} />
      <Path d={through} kind="sheet" />
    </>
  ),
  {
    pinch: () => (
      <>
        <circle class="tool" cx={upper.x} cy={upper.y} r={roll} />
        <circle class="tool" cx={lower.x} cy={lower.y} r={roll} />
      </>
    ),
    rear: () => (
      <>
        <circle class="tool" cx={rear.x} cy={rear.y} r={roll} />
        <path d={`M${rear.x + 30} ${rear.y + 16}V${rear.y - 10}`} />
        <Arrowhead tip={spot(rear.x + 30, rear.y - 15)} direction={90} />
      </>
    ),
  },
);

const hub = spot(110, 62);
const ends = onGround(
  "tube",
  () => <Path d={`${arcPath(hub, 48, -66, 246)}${arcPath(hub, 42, 246, -66, "L")}Z`} kind="sheet" />,
  {
    flat: () => {
      const tip = (direction: number, lean: number) => {
        const outer = away(hub, direction, 48);
        const inner = away(hub, direction, 42);
        return `M${at(outer)}L${at(away(outer, lean, 22))}L${at(away(inner, lean, 22))}L${at(inner)}Z`;
      };
      return <path class="face" d={tip(-66, -156) + tip(246, -24)} />;
    },
  },
);

const radii = [150, 96, 66, 50];
const arcLength = 132;
const passes: Sketches = {
  pass: {
    about: "passes",
    draw: () =>
      radii.map((each, index) => {
        const middle = spot(30, 116 - each);
        const end = -90 + (arcLength / each) * (180 / Math.PI);
        const strip = (
          <>
            <path class={index === radii.length - 1 ? undefined : "hidden"} d={arcPath(middle, each, -90, end)} />
            <Text spot={away(away(middle, end, each), end + 90, 9)} lines={String(index + 1)} anchor="middle" kind="size" />
          </>
        );
        return index === radii.length - 1 ? <Lit key={each}>{strip}</Lit> : <g key={each}>{strip}</g>;
      }),
  },
};

/** A cone, and the sector it is rolled from. */
const cone = { x: 54, top: 32, bottom: 108, small: 14, large: 38 };
const side = [spot(cone.x + cone.small, cone.top), spot(cone.x + cone.large, cone.bottom)] as const;
const apex = spot(164, 118);
const blank = (from: number, to: number) => `${arcPath(apex, 92, from, to)}${arcPath(apex, 40, to, from, "L")}Z`;
const cones = onGround(
  "cone",
  () => (
    <>
      <Path
        d={`M${cone.x - cone.small} ${cone.top}H${cone.x + cone.small}L${cone.x + cone.large} ${cone.bottom}H${cone.x - cone.large}Z`}
        kind="sheet"
      />
      <Line from={spot(cone.x, cone.top - 8)} to={spot(cone.x, cone.bottom + 8)} kind="centre" />
      <Path d={blank(122, 68)} kind="sheet" />
    </>
  ),
  {
    slant: () => <Size from={side[0]} to={side[1]} off={12} text="s" gap={2} />,
    sector: () => (
      <>
        <path class="face" d={blank(122, 68)} />
        <AngleSize centre={apex} radius={24} from={68} to={122} text="" />
        <Line from={apex} to={away(apex, 68, 38)} />
        <Line from={apex} to={away(apex, 122, 38)} />
      </>
    ),
  },
);

export const rolling = { ...rolls, ...ends, ...passes, ...cones };
