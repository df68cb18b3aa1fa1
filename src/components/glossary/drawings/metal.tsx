import { Arrowhead, at, Line, Path, Size, spot, Text } from "../../figures/pen.tsx";
import { box, Lit, onGround, type Sketches } from "../sketch.tsx";

/** A pull test in outline: stress upwards, stretch to the right. */
const origin = spot(24, 112);
const yields = spot(52, 56);
const highest = spot(138, 28);
const breaks = spot(186, 46);
const curve = `M${at(origin)}L${at(yields)}Q${at(spot(70, 30))} ${at(highest)}Q${at(spot(170, 28))} ${at(breaks)}`;
const pull = onGround(
  "pullTest",
  () => (
    <>
      <Line from={origin} to={spot(210, origin.y)} />
      <Line from={origin} to={spot(origin.x, 12)} />
      <Path d={curve} kind="outline" />
    </>
  ),
  {
    yield: () => (
      <>
        <Line from={spot(origin.x, yields.y)} to={yields} kind="hidden" />
        <circle class="face" cx={yields.x} cy={yields.y} r={4} />
        <Text spot={spot(yields.x + 10, yields.y + 8)} lines="Y" kind="size" />
      </>
    ),
    tensile: () => (
      <>
        <Line from={spot(origin.x, highest.y)} to={highest} kind="hidden" />
        <circle class="face" cx={highest.x} cy={highest.y} r={4} />
        <Text spot={spot(highest.x - 4, highest.y - 9)} lines="Rm" kind="size" />
      </>
    ),
    modulus: () => (
      <>
        <path d={`M${at(origin)}L${at(yields)}`} />
        <Path d={`M${spot(33, 94).x} 94H43V74`} kind="thin" />
        <Text spot={spot(48, 90)} lines="E" kind="size" />
      </>
    ),
    hardening: () => (
      <>
        <path class="hidden" d={`M82 112L${96} ${42}`} />
        <path d={`M${96} 42Q110 32 ${highest.x} ${highest.y}`} />
        <Arrowhead tip={spot(96, 44)} direction={80} />
      </>
    ),
  },
);

const bars: Sketches = {
  neck: {
    about: "tornPiece",
    draw: () => (
      <>
        <Path d="M14 22H206V50H14Z" kind="sheet" />
        <Path d="M14 82H78Q100 82 106 90V102Q100 110 78 110H14Z" kind="sheet" />
        <Path d="M206 82H142Q120 82 114 90V102Q120 110 142 110H206Z" kind="sheet" />
        <Lit>
          <Size from={spot(64, 50)} to={spot(64, 22)} off={0} text="" gap={0} />
          <Size from={spot(110, 102)} to={spot(110, 90)} off={0} text="" outside="to" gap={0} />
        </Lit>
      </>
    ),
  },
  anneal: {
    about: "annealing",
    draw: (labels) => (
      <>
        <Line from={spot(24, 114)} to={spot(210, 114)} />
        <Line from={spot(24, 114)} to={spot(24, 12)} />
        <Path d="M24 106Q52 34 76 34" kind="outline" />
        <Path d="M142 34Q158 96 204 106" kind="outline" />
        <Lit>
          <path d="M76 34H142" />
          <Text spot={spot(109, 26)} lines={labels.hold} anchor="middle" kind="size" />
        </Lit>
        <Text spot={spot(30, 20)} lines="°C" kind="label" />
      </>
    ),
  },
  temper: {
    about: "tempers",
    draw: (labels) => (
      <>
        <Line from={spot(20, 110)} to={spot(206, 110)} />
        {[24, 46, 62, 82].map((height, index) => {
          const bar = box(34 + 42 * index, 110 - height, 26, height);
          return index === 2 ? (
            <Lit key={height}>
              <path class="face" d={bar} />
            </Lit>
          ) : (
            <Path key={height} d={bar} kind="sheet" />
          );
        })}
        <Text spot={spot(47, 126)} lines={labels.soft} anchor="middle" kind="label" />
        <Text spot={spot(173, 126)} lines={labels.hard} anchor="middle" kind="label" />
      </>
    ),
  },
  gauges: {
    about: "gauges",
    draw: (labels) => (
      <>
        {[
          { number: "12", width: 27 },
          { number: "16", width: 15 },
          { number: "20", width: 9 },
        ].map(({ number, width }, index) => {
          const middle = 48 + 62 * index;
          const bar = <Path d={box(middle - width / 2, 20, width, 78)} kind="sheet" />;
          return (
            <g key={number}>
              {index === 1 ? <Lit>{bar}</Lit> : bar}
              <Text spot={spot(middle, 118)} lines={labels.number(number)} anchor="middle" kind="size" />
            </g>
          );
        })}
      </>
    ),
  },
  tolerance: {
    about: "tolerance",
    draw: () => (
      <>
        <Path d={box(30, 52, 140, 46)} kind="sheet" />
        <Size from={spot(30, 52)} to={spot(170, 52)} off={16} text="80 ± 0.3" />
        <Lit>
          <path class="face" d={box(162, 46, 16, 58)} />
          <Line from={spot(162, 40)} to={spot(162, 112)} kind="hidden" />
          <Line from={spot(178, 40)} to={spot(178, 112)} kind="hidden" />
        </Lit>
      </>
    ),
  },
  uncertainty: {
    about: "readings",
    draw: (labels) => (
      <>
        <Line from={spot(20, 96)} to={spot(202, 96)} />
        <Path d={Array.from({ length: 10 }, (_, index) => `M${24 + 19 * index} 96v-8`).join("")} kind="thin" />
        {[70, 88, 100, 104, 118, 126, 140].map((x, index) => (
          <circle key={x} class="outline" cx={x} cy={index % 2 === 0 ? 66 : 56} r={3} />
        ))}
        <Lit>
          <path class="face" d={box(84, 78, 46, 10)} />
          <path d="M107 34V88" />
          <Text spot={spot(112, 40)} lines={labels.mean} kind="size" />
        </Lit>
      </>
    ),
  },
  rating: {
    about: "plate",
    draw: (labels) => (
      <>
        <Path d={box(34, 22, 152, 88)} kind="tool" />
        <circle class="dot" cx={44} cy={32} r={2.5} />
        <circle class="dot" cx={176} cy={32} r={2.5} />
        <circle class="dot" cx={44} cy={100} r={2.5} />
        <circle class="dot" cx={176} cy={100} r={2.5} />
        <Lit>
          <Text spot={spot(110, 56)} lines={labels.mildSteel} anchor="middle" kind="size" />
          <Text spot={spot(110, 74)} lines={labels.plateLimit} anchor="middle" kind="size" />
          <path d="M60 86H160" class="thin" />
        </Lit>
      </>
    ),
  },
};

export const metal = { ...pull, ...bars };
