import { AngleSize, Arrowhead, at, away, Line, Path, Size, spot, Text } from "../../figures/pen.tsx";
import { box, Lit, onGround, type Sketches } from "../sketch.tsx";

/** Edge of a sheet that a blade or punch has cut, much enlarged; the cut came from above. */
const cut = { top: 26, rolled: 44, smooth: 70, broken: 104, face: 138, slant: 12 };
const edge = onGround(
  "cutEdge",
  () => (
    <Path
      d={`M20 ${cut.top}H${cut.face - 26}Q${cut.face} ${cut.top} ${cut.face} ${cut.rolled}V${cut.smooth}L${cut.face - cut.slant} ${cut.broken}l7 14l-14 -10H20`}
      kind="sheet"
    />
  ),
  {
    rollover: () => <path d={`M${cut.face - 26} ${cut.top}Q${cut.face} ${cut.top} ${cut.face} ${cut.rolled}`} />,
    burnish: () => (
      <>
        <path class="face" d={`M${cut.face} ${cut.rolled}V${cut.smooth}H${cut.face - 8}V${cut.rolled}Z`} />
        <path class="thin" d={[50, 56, 62].map((y) => `M${cut.face + 6} ${y}h22`).join("")} />
      </>
    ),
    fracture: () => {
      const rough = Array.from({ length: 6 }, (_, index) => {
        const share = index / 5;
        const x = cut.face - cut.slant * share + (index % 2 === 0 ? 0 : 3);
        return spot(x, cut.smooth + (cut.broken - cut.smooth) * share);
      });
      return <path d={`M${rough.map(at).join("L")}`} />;
    },
    burr: () => <path class="face" d={`M${cut.face - cut.slant} ${cut.broken}l7 14l-14 -10Z`} />,
  },
);

const fileEdge: Sketches = {
  deburr: {
    about: "filing",
    draw: () => (
      <>
        <Path d="M14 88H118L128 78V108H14Z" kind="sheet" />
        <Lit>
          <path class="tool" d="M96 96L186 20L198 34L108 110Z" />
          <path class="thin" d="M112 86l12 14M124 76l12 14M136 66l12 14M148 56l12 14M160 46l12 14" />
        </Lit>
      </>
    ),
  },
};

/** A shear in section: blades with a gap much too wide, so that it can be seen. */
const gap = 7;
const table = 74;
const blade = { lower: 120, upper: 120 + gap };
const shear = onGround(
  "shear",
  () => (
    <>
      <Path d={box(14, table, blade.lower - 14, 46)} kind="tool" />
      <Path d={`M${blade.upper} 12H156V58L${blade.upper} 54Z`} kind="tool" />
      <Path d={box(82, 18, 22, table - 8 - 18)} kind="tool" />
      <Path d={box(24, table - 8, 160, 8)} kind="sheet" />
      <Path d="M184 54h8v40h-8Z" kind="tool" />
    </>
  ),
  {
    blades: () => (
      <>
        <path class="tool" d={`M${blade.upper} 12H156V58L${blade.upper} 54Z`} />
        <path class="tool" d={box(blade.lower - 26, table, 26, 46)} />
      </>
    ),
    gap: () => <Size from={spot(blade.lower, 112)} to={spot(blade.upper, 112)} off={0} text="" outside="to" gap={0} />,
    holdDown: () => (
      <>
        <path class="tool" d={box(82, 18, 22, table - 8 - 18)} />
        <path d="M93 4V12" />
        <Arrowhead tip={spot(93, 17)} direction={-90} />
      </>
    ),
    backStop: () => (
      <>
        <path class="tool" d="M184 54h8v40h-8Z" />
        <Size from={spot(blade.upper, 104)} to={spot(184, 104)} off={0} text="" gap={0} />
      </>
    ),
  },
);

/** The blades from the front: the upper one slanted, so that it cuts a little at a time. */
const slope = 7;
const heel = spot(200, 40);
const tip = away(heel, 180 + slope, 172);
const front = onGround(
  "slantedBlades",
  () => (
    <>
      <Path d={box(14, 92, 196, 26)} kind="tool" />
      <Path d={box(20, 84, 176, 8)} kind="sheet" />
      <Path d={`M${at(tip)}L${at(heel)}V14H${tip.x}Z`} kind="tool" />
    </>
  ),
  {
    rake: () => (
      <>
        <path d={`M${at(tip)}L${at(heel)}`} />
        <Line from={heel} to={spot(tip.x + 10, heel.y)} kind="hidden" />
        <AngleSize centre={heel} radius={120} from={180} to={180 + slope} text="" />
      </>
    ),
  },
);

/** A punch and its die in section, the hole just cut. */
const die = { left: 82, right: 138, top: 66, play: 5 };
const punch = onGround(
  "punchAndDie",
  () => (
    <>
      <Path d={box(26, die.top, die.left - 26, 42)} kind="tool" />
      <Path d={box(die.right, die.top, 194 - die.right, 42)} kind="tool" />
      <Path d={box(16, die.top - 10, die.left + die.play - 16, 10)} kind="sheet" />
      <Path d={box(die.right - die.play, die.top - 10, 204 - die.right + die.play, 10)} kind="sheet" />
      <Path d={box(die.left + die.play, 10, die.right - die.left - 2 * die.play, 52)} kind="tool" />
      <Path d={box(34, 36, 48, 8)} kind="tool" />
      <Path d={box(138, 36, 48, 8)} kind="tool" />
      <Path d={box(die.left + die.play, 86, die.right - die.left - 2 * die.play, 10)} kind="sheet" />
    </>
  ),
  {
    punch: () => <path class="tool" d={box(die.left + die.play, 10, die.right - die.left - 2 * die.play, 52)} />,
    die: () => (
      <>
        <path class="tool" d={box(26, die.top, die.left - 26, 42)} />
        <path class="tool" d={box(die.right, die.top, 194 - die.right, 42)} />
      </>
    ),
    clearance: () => (
      <Size from={spot(die.right - die.play, 116)} to={spot(die.right, 116)} off={0} text="c" outside="to" gap={0} />
    ),
    slug: () => <path class="face" d={box(die.left + die.play, 86, die.right - die.left - 2 * die.play, 10)} />,
    stripping: () => (
      <>
        <path class="tool" d={box(34, 36, 48, 8)} />
        <path class="tool" d={box(138, 36, 48, 8)} />
        <path d="M110 34V14" />
        <Arrowhead tip={spot(110, 8)} direction={90} />
      </>
    ),
    galling: () => (
      <path
        d={[0, 1, 2, 3]
          .map(
            (index) =>
              `M${die.left + die.play + 4 + 3 * index} ${26 + 5 * index}v${26 - 3 * index}M${die.right - die.play - 4 - 3 * index} ${24 + 4 * index}v${26 - 3 * index}`,
          )
          .join("")}
      />
    ),
  },
);

/** Edge of a saw band with its teeth. */
const pitch = 22;
const teeth = (from: number) =>
  Array.from({ length: 8 }, (_, index) => `L${from + pitch * index} 64l4 20l${pitch - 4} -20`).join("");
const band = onGround(
  "sawTeeth",
  () => (
    <>
      <Path d={`M22 30${teeth(22)}V30Z`} kind="tool" />
      <Path d={box(84, 84, 62, 36)} kind="sheet" />
    </>
  ),
  {
    teeth: () => (
      <>
        <Size from={spot(26, 84)} to={spot(26 + pitch, 84)} off={-18} text="" gap={2} />
        <path d={`M22 64l4 20l${pitch - 4} -20l4 20`} />
      </>
    ),
  },
);

const kerfs: Sketches = {
  kerf: {
    about: "sawCut",
    draw: () => (
      <>
        <Path d="M20 24H200V62H92V70H200V108H20Z" kind="sheet" />
        <Lit>
          <path class="face" d="M92 62H200V70H92Z" />
          <Size from={spot(168, 62)} to={spot(168, 70)} off={0} text="" outside="from" gap={0} />
        </Lit>
      </>
    ),
  },
  snips: {
    about: "snips",
    draw: () => (
      <>
        <Path d="M14 40H118L92 66H14Z" kind="sheet" />
        <Path d="M92 66H14V104H150L128 74Z" kind="sheet" />
        <Lit>
          <path class="tool" d="M84 64L138 46L204 22L206 32L146 62Z" />
          <path class="tool" d="M84 70L138 84L204 108L206 98L146 68Z" />
          <circle class="dot" cx={140} cy={65} r={3.5} />
        </Lit>
      </>
    ),
  },
  slide: {
    about: "shearing",
    draw: () => (
      <>
        <Path d="M34 52H106V92H34Z" kind="sheet" />
        <Path d="M112 42H186V82H112Z" kind="sheet" />
        <Lit>
          <path d="M109 30V104" class="hidden" />
          <path d="M88 118V100M132 16V34" />
          <Arrowhead tip={spot(88, 95)} direction={90} />
          <Arrowhead tip={spot(132, 39)} direction={-90} />
          <Text spot={spot(150, 28)} lines="τ" kind="size" />
        </Lit>
      </>
    ),
  },
};

export const cutting = { ...edge, ...fileEdge, ...shear, ...front, ...punch, ...band, ...kerfs };
