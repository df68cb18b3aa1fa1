import { Arrowhead, Line, Path, Size, spot, Text } from "../../figures/pen.tsx";
import { type StripStep, stripPath } from "../../figures/section.ts";
import { box, Lit, onGround, type Sketches } from "../sketch.tsx";

/** Two sheets between the tips of a spot welder, in section. */
const sheet = 12;
const middle = 66;
const tips = { x: 110, face: 14, body: 24 };
const tip = (up: boolean) => {
  const sign = up ? -1 : 1;
  const end = middle + sign * sheet;
  return `M${tips.x - tips.face} ${end}L${tips.x - tips.body} ${end + sign * 16}V${end + sign * 40}H${tips.x + tips.body}V${end + sign * 16}L${tips.x + tips.face} ${end}Z`;
};
const nugget = `M${tips.x - 16} ${middle}a16 8 0 0 1 32 0a16 8 0 0 1 -32 0Z`;

const spotWeld = onGround(
  "tips",
  () => (
    <>
      <Path d={tip(true)} kind="tool" />
      <Path d={tip(false)} kind="tool" />
      <Path d={box(16, middle - sheet, 188, sheet)} kind="sheet" />
      <Path d={box(16, middle, 188, sheet)} kind="sheet" />
    </>
  ),
  {
    nugget: () => <path class="face" d={nugget} />,
    squeeze: () => (
      <>
        <path d={`M${tips.x} 6V40M${tips.x} 126V92`} />
        <Arrowhead tip={spot(tips.x, 47)} direction={-90} />
        <Arrowhead tip={spot(tips.x, 85)} direction={90} />
        <Text spot={spot(tips.x + 6, 26)} lines="F" kind="size" />
      </>
    ),
    tipFace: () => (
      <>
        <path
          d={`M${tips.x - tips.face} ${middle - sheet}H${tips.x + tips.face}M${tips.x - tips.face} ${middle + sheet}H${tips.x + tips.face}`}
        />
        <Size
          from={spot(tips.x - tips.face, middle + sheet)}
          to={spot(tips.x + tips.face, middle + sheet)}
          off={-46}
          text=""
          gap={4}
        />
      </>
    ),
  },
);

const fit: Sketches = {
  fitUp: {
    about: "badFit",
    draw: () => (
      <>
        <Path d="M14 58H80Q110 34 140 58H206V46H144Q110 20 76 46H14Z" kind="sheet" />
        <Path d={box(14, 58, 192, 12)} kind="sheet" />
        <Lit>
          <path class="face" d="M82 58Q110 35 138 58Z" />
          <path d="M110 84V74" />
          <Arrowhead tip={spot(110, 60)} direction={90} />
        </Lit>
      </>
    ),
  },
  button: {
    about: "peeled",
    draw: () => (
      <>
        <Path d={box(14, 104, 192, 9)} kind="sheet" />
        <g transform="rotate(26 200 100)">
          <Path d={`${box(22, 95, 42, 9)}${box(90, 95, 116, 9)}`} kind="sheet" />
        </g>
        <Lit>
          <path class="face" d="M60 104q13 -18 26 0Z" />
        </Lit>
      </>
    ),
  },
};

/** A weld over time: force, and the current while it flows. */
const weldAt = { start: 18, force: 34, on: 92, off: 142, end: 196 };
const overTime = onGround(
  "weldCycle",
  (labels) => (
    <>
      <Line from={spot(14, 112)} to={spot(212, 112)} />
      <Line from={spot(14, 112)} to={spot(14, 14)} />
      <Path d={`M14 60H${weldAt.start}L${weldAt.force} 28H${weldAt.end - 8}L${weldAt.end} 60H212`} kind="outline" />
      <Path d={`M14 104H${weldAt.on}V74H${weldAt.off}V104H212`} kind="outline" />
      <Text spot={spot(20, 22)} lines={labels.force} kind="label" />
      <Text spot={spot(154, 88)} lines={labels.current} kind="label" />
    </>
  ),
  {
    squeezeTime: () => <Size from={spot(weldAt.force, 112)} to={spot(weldAt.on, 112)} off={-10} text="" gap={0} />,
    weldTime: () => (
      <>
        <path class="face" d={`M${weldAt.on} 104V74H${weldAt.off}V104Z`} />
        <Size from={spot(weldAt.on, 112)} to={spot(weldAt.off, 112)} off={-10} text="" gap={0} />
      </>
    ),
    holdTime: () => <Size from={spot(weldAt.off, 112)} to={spot(weldAt.end - 8, 112)} off={-10} text="" gap={0} />,
  },
);

/** A lap joint from above, with a row of spots or rivets. */
const lapFrom = 84;
const lapTo = 136;
const lap = onGround(
  "lap",
  () => (
    <>
      <Path d={box(14, 18, lapTo - 14, 96)} kind="sheet" />
      <Path d={box(lapFrom, 18, 206 - lapFrom, 96)} kind="sheet" />
      {[42, 66, 90].map((y) => (
        <circle key={y} class="outline" cx={(lapFrom + lapTo) / 2} cy={y} r={5} />
      ))}
    </>
  ),
  { lap: () => <Size from={spot(lapFrom, 114)} to={spot(lapTo, 114)} off={-11} text="" gap={2} /> },
);

/** A driven rivet in section. */
const hole = { left: 97, right: 123 };
const rivetBody = "M97 46V86H123V46H138Q136 26 110 26Q84 26 82 46Z";
const drivenHead = "M84 86H136V100H84Z";
const rivet = onGround(
  "rivet",
  () => (
    <>
      <Path d={`${box(16, 46, hole.left - 16, 20)}${box(hole.right, 46, 204 - hole.right, 20)}`} kind="sheet" />
      <Path d={`${box(16, 66, hole.left - 16, 20)}${box(hole.right, 66, 204 - hole.right, 20)}`} kind="sheet" />
      <Path d={rivetBody} kind="tool" />
      <Path d={drivenHead} kind="tool" />
    </>
  ),
  {
    rivet: () => <path class="tool" d={`${rivetBody}${drivenHead}`} />,
    grip: () => <Size from={spot(172, 86)} to={spot(172, 46)} off={-14} text="G" gap={0} />,
    driven: () => <path class="tool" d={drivenHead} />,
  },
);

const metal = 6;
const hair = 1;
const ahead = (length: number): StripStep => ({ ahead: length });
const turn = (angle: number, radius = hair): StripStep => ({ turn: angle, radius });
const strip = (x: number, y: number, steps: readonly StripStep[], turned = 0) =>
  stripPath(steps, metal, { scale: 1, origin: spot(x, y), turned }).d;

/** Seams in section. */
const seams: Sketches = {
  lapSeam: {
    about: "lapSection",
    draw: () => (
      <>
        <Path d={strip(14, 74, [ahead(122)])} kind="sheet" />
        <Lit>
          <Path d={strip(84, 67, [ahead(122)])} kind="sheet" />
        </Lit>
      </>
    ),
  },
  grooved: {
    about: "groovedSeam",
    draw: () => (
      <>
        <Path d={strip(14, 88, [ahead(112), turn(180, 4), ahead(34)])} kind="sheet" />
        <Lit>
          <Path d={strip(206, 61, [ahead(112), turn(180, 4), ahead(34)], 180)} kind="sheet" />
        </Lit>
      </>
    ),
  },
  standing: {
    about: "standingSeam",
    draw: () => (
      <>
        <Path d={strip(14, 112, [ahead(84), turn(90, 2), ahead(58)])} kind="sheet" />
        <Lit>
          <Path
            d="M206 112V106H122Q118 106 118 102V42Q118 34 110 34H98Q90 34 90 42V64H96V42Q96 40 98 40H110Q112 40 112 42V102Q112 112 122 112Z"
            kind="sheet"
          />
        </Lit>
      </>
    ),
  },
};

export const joining = { ...spotWeld, ...fit, ...overTime, ...lap, ...rivet, ...seams };
