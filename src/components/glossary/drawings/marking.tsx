import { Arrowhead, at, away, Line, Path, Size, spot } from "../../figures/pen.tsx";
import { box, Lit, onGround, type Sketches } from "../sketch.tsx";

const tools: Sketches = {
  scriber: {
    about: "scriber",
    draw: () => (
      <>
        <Path d={box(16, 34, 188, 84)} kind="sheet" />
        <Path d={box(16, 86, 188, 24)} kind="tool" />
        <Line from={spot(20, 84)} to={spot(118, 84)} kind="sight" />
        <Lit>
          <path class="tool" d="M118 84L138 50L172 8L182 15L148 58Z" />
        </Lit>
      </>
    ),
  },
  prickPunch: {
    about: "prickPunch",
    draw: () => (
      <>
        <Path d="M16 96H106L110 102L114 96H204V116H16Z" kind="sheet" />
        <Lit>
          <path class="tool" d="M110 102L100 84V14H120V84Z" />
        </Lit>
      </>
    ),
  },
  layoutCoat: {
    about: "coat",
    draw: () => (
      <>
        <Path d="M16 70H104L110 76L116 70H204V112H16Z" kind="sheet" />
        <Lit>
          <path class="face" d="M16 60H94L104 70H16ZM204 60H126L116 70H204Z" />
        </Lit>
      </>
    ),
  },
  oddLeg: {
    about: "oddLegs",
    draw: () => (
      <>
        <Path d={box(62, 98, 142, 16)} kind="sheet" />
        <Line from={spot(136, 94)} to={spot(136, 102)} kind="sight" />
        <Lit>
          <path class="tool" d="M92 20L50 92V112H62V96L100 30ZM108 20L142 72L136 98L132 74L100 30Z" />
          <circle class="face" cx={100} cy={22} r={9} />
        </Lit>
      </>
    ),
  },
  centrePunch: {
    about: "centrePunch",
    draw: () => (
      <>
        <Path d="M20 96L140 80L206 96L86 116Z" kind="sheet" />
        <Line from={spot(52, 106)} to={spot(172, 88)} />
        <Line from={spot(74, 87)} to={spot(150, 107)} />
        <Lit>
          <path class="tool" d="M112 97L104 78V12H120V78Z" />
        </Lit>
      </>
    ),
  },
  dividers: {
    about: "dividers",
    draw: () => (
      <>
        <Path d={box(16, 100, 188, 16)} kind="sheet" />
        <Lit>
          <path d="M74 100L106 22M146 100L114 22" />
          <circle class="face" cx={110} cy={20} r={8} />
          <Size from={spot(74, 100)} to={spot(146, 100)} off={0} text="" gap={0} />
        </Lit>
      </>
    ),
  },
  heightGauge: {
    about: "heightGauge",
    draw: () => (
      <>
        <Path d={box(10, 108, 200, 14)} kind="tool" />
        <Path d={box(136, 24, 60, 84)} kind="sheet" />
        <Lit>
          <path class="tool" d="M34 108V98H74V108ZM48 98V12H58V98Z" />
          <path class="tool" d="M42 54H136L126 64H42Z" />
          <path d="M136 54H192" />
        </Lit>
      </>
    ),
  },
  caliper: {
    about: "caliper",
    draw: () => (
      <>
        <Path d={box(14, 46, 192, 72)} kind="sheet" />
        <Lit>
          <path d="M14 90H84" />
          <path class="tool" d="M84 46V38H124V12H136V106H124V98L84 90L124 84V46Z" />
          <Size from={spot(40, 46)} to={spot(40, 90)} off={0} text="" gap={0} />
        </Lit>
      </>
    ),
  },
  square: {
    about: "square",
    draw: () => (
      <>
        <Path d={box(26, 40, 170, 80)} kind="sheet" />
        <Lit>
          <path class="tool" d="M60 30H128V46H84V114H70V46H60Z" />
          <path d="M86 48V118" />
        </Lit>
      </>
    ),
  },
  parallax: {
    about: "parallax",
    draw: () => (
      <>
        <Path d={box(16, 98, 188, 12)} kind="sheet" />
        <Path d="M16 98V46H96L104 54V90L96 98Z" kind="tool" />
        <Line from={spot(104, 14)} to={spot(104, 98)} kind="hidden" />
        <Lit>
          <path d="M60 8L142 98" />
          <Size from={spot(104, 112)} to={spot(142, 112)} off={-6} text="" gap={0} />
        </Lit>
      </>
    ),
  },
};

/** Holes on a circle, with its centre lines. */
const centre = spot(104, 66);
const radius = 46;
const count = 6;
const places = Array.from({ length: count }, (_, index) => away(centre, (360 * index) / count, radius));
const circle = onGround(
  "sixHoles",
  () => (
    <>
      <Line from={spot(centre.x - 62, centre.y)} to={spot(centre.x + 62, centre.y)} kind="centre" />
      <Line from={spot(centre.x, centre.y - 60)} to={spot(centre.x, centre.y + 60)} kind="centre" />
      {places.map((place) => (
        <circle key={at(place)} class="outline" cx={place.x} cy={place.y} r={7} />
      ))}
    </>
  ),
  {
    circle: () => <circle class="centre" cx={centre.x} cy={centre.y} r={radius} />,
    chord: () => <Size from={places[1] ?? centre} to={places[0] ?? centre} off={0} text="c" gap={0} />,
  },
);

const spans: Sketches = {
  diagonals: {
    about: "diagonals",
    draw: () => (
      <>
        <Path d={box(30, 20, 160, 92)} kind="sheet" />
        <Lit>
          <path d="M30 20L190 112M30 112L190 20" />
          <Arrowhead tip={spot(190, 112)} direction={-30} />
          <Arrowhead tip={spot(190, 20)} direction={30} />
        </Lit>
      </>
    ),
  },
};

export const marking = { ...tools, ...circle, ...spans };
