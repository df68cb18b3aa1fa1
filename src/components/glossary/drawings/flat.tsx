import { Arrowhead, Line, Path, Size, spot } from "../../figures/pen.tsx";
import { box, Lit, onGround, type Sketches } from "../sketch.tsx";

/** A blank seen from above. */
const blank = { left: 26, top: 40, width: 168, height: 64 };
const right = blank.left + blank.width;
const bottom = blank.top + blank.height;
const outline = box(blank.left, blank.top, blank.width, blank.height);
const zone = { from: 104, sight: 113, to: 124 };

const Ground = () => <Path d={outline} kind="sheet" />;
const upright = (x: number) => `M${x} ${blank.top}V${bottom}`;

const plain = onGround("blank", Ground, {
  blank: () => <path class="face" d={outline} />,
  bendLine: () => <path d={upright(114)} />,
  scribed: () => (
    <>
      <path d={upright(114)} />
      <path class="tool" d="M114 64L128 22L136 26Z" />
    </>
  ),
  grain: () => (
    <>
      <path
        class="thin"
        d={Array.from({ length: 7 }, (_, index) => `M${blank.left + 6} ${blank.top + 8 + 8 * index}H${right - 6}`).join("")}
      />
      <path d="M70 26H142" />
      <Arrowhead tip={spot(150, 26)} direction={0} />
    </>
  ),
  template: () => (
    <>
      <path class="face" d="M20 34H150L164 48V110H20Z" />
      <path d="M150 34V48H164" />
    </>
  ),
});

const zoned = onGround(
  "blankTangents",
  () => (
    <>
      <Ground />
      <Path d={upright(zone.from)} kind="thin" />
      <Path d={upright(zone.to)} kind="thin" />
    </>
  ),
  {
    sight: () => (
      <>
        <path d={`M${zone.sight} ${blank.top - 8}V${bottom + 8}`} />
        <Size from={spot(zone.from, bottom)} to={spot(zone.sight, bottom)} off={-14} text="R" outside="to" gap={2} />
      </>
    ),
  },
);

const lines = [70, 112, 158];
const marked = onGround(
  "blankLines",
  () => (
    <>
      <Ground />
      {lines.map((x) => (
        <Path key={x} d={upright(x)} kind="thin" />
      ))}
    </>
  ),
  {
    datum: () => (
      <>
        <path d={upright(blank.left)} />
        {lines.map((x, index) => (
          <Size key={x} from={spot(blank.left, bottom)} to={spot(x, bottom)} off={-8 - 8 * index} text="" gap={2} />
        ))}
      </>
    ),
    chain: () => (
      <>
        {[blank.left, ...lines].map((x, index, all) => {
          const next = all[index + 1];
          return next === undefined ? null : (
            <Size key={x} from={spot(x, bottom)} to={spot(next, bottom)} off={-14} text="" gap={2} />
          );
        })}
      </>
    ),
  },
);

/** Corner of a box blank: two bend lines that meet. */
const cornerAt = spot(86, 84);
const notched = `M206 26H${cornerAt.x}V${cornerAt.y}H20V126H206Z`;
const square = onGround(
  "boxCorner",
  () => (
    <>
      <Path d={notched} kind="sheet" />
      <Line from={spot(cornerAt.x + 8, 26)} to={spot(cornerAt.x + 8, 126)} />
      <Line from={spot(20, cornerAt.y + 8)} to={spot(206, cornerAt.y + 8)} />
    </>
  ),
  {
    notch: () => (
      <>
        <path class="hidden" d={`M20 ${cornerAt.y}V26H${cornerAt.x}`} />
        <path d={`M${cornerAt.x} 26V${cornerAt.y}H20`} />
      </>
    ),
    relief: () => <circle class="face" cx={cornerAt.x + 8} cy={cornerAt.y + 8} r={9} />,
  },
);

/** Holes in a row near an edge. */
const row = [58, 106, 154];
const holeRadius = 15;
const holes = onGround(
  "holes",
  () => (
    <>
      <Path d="M14 20H206V108H14" kind="sheet" />
      {row.map((x) => (
        <circle key={x} class="outline" cx={x} cy={66} r={holeRadius} />
      ))}
    </>
  ),
  {
    pitch: (labels) => <Size from={spot(row[0] ?? 0, 66)} to={spot(row[1] ?? 0, 66)} off={-54} text={labels.pitch} />,
    web: () => {
      const from = (row[0] ?? 0) + holeRadius;
      const to = (row[1] ?? 0) - holeRadius;
      return <path class="face" d={`M${from} 58H${to}V74H${from}Z`} />;
    },
    edge: () => <Size from={spot(row[2] ?? 0, 66)} to={spot(206, 66)} off={-22} text="" gap={2} />,
  },
);

/** A sheet drawn at a slant, and the finished tray. */
const shapes: Sketches = {
  tray: {
    about: "box",
    draw: () => (
      <>
        <Path d="M40 52L110 24L190 50L118 82Z" kind="sheet" />
        <Path d="M110 24V46L68 62.8M110 46L161.4 62.7" kind="thin" />
        <Lit>
          <path class="face" d="M40 52V84L118 114V82Z" />
          <path class="face" d="M118 114L190 82V50L118 82Z" />
        </Lit>
      </>
    ),
  },
  flange: {
    about: "rim",
    draw: () => (
      <>
        <Path d="M22 88L134 50L196 72L82 114Z" kind="sheet" />
        <Lit>
          <path class="face" d="M22 88L134 50V22L22 58Z" />
        </Lit>
      </>
    ),
  },
};

export const flat = { ...plain, ...zoned, ...marked, ...square, ...holes, ...shapes };
