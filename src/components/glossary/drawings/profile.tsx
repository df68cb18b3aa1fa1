import { Path, spot } from "../../figures/pen.tsx";
import { type StripStep, stripPath } from "../../figures/section.ts";
import { Lit, onGround, type Sketches } from "../sketch.tsx";

const sheet = 7;
const ahead = (length: number): StripStep => ({ ahead: length });
const turn = (angle: number, radius = 7): StripStep => ({ turn: angle, radius });

function section(x: number, y: number, steps: readonly StripStep[], heading = 0, thickness = sheet): string {
  return stripPath(steps, thickness, { scale: 1, origin: spot(x, y), turned: heading }).d;
}

/** A channel: two flanges and the web between them. */
const channel = section(40, 30, [ahead(56), turn(90), ahead(110), turn(90), ahead(56)], -90);
const channels = onGround("channel", () => <Path d={channel} kind="sheet" />, {
  legs: () => <path class="face" d="M40 30h7v56h-7ZM171 30h7v56h-7Z" />,
  web: () => <path class="face" d="M54 93h110v7H54Z" />,
});

const edge = (steps: readonly StripStep[]) => (
  <Lit>
    <Path d={section(18, 92, steps, 0, 12)} kind="sheet" />
  </Lit>
);

/** Folded edges; a sharp fold has a hair of radius, so that its two faces can be told apart. */
const hair = 1.2;
const edges: Sketches = {
  closed: {
    about: "closedEdge",
    draw: () => edge([ahead(150), turn(180, hair), ahead(66)]),
  },
  open: {
    about: "openEdge",
    draw: () => edge([ahead(146), turn(180, 9), ahead(66)]),
  },
  teardrop: {
    about: "teardropEdge",
    draw: () => edge([ahead(130), turn(217, 15), ahead(52)]),
  },
  double: {
    about: "doubleEdge",
    draw: () => edge([ahead(140), turn(180, 8), ahead(56), turn(180, hair), ahead(50)]),
  },
};

const step = stripPath([ahead(64), turn(50, 10), ahead(1), turn(-50, 10), ahead(70)], sheet, { scale: 1, origin: spot(14, 88) });
const offset: Sketches = {
  joggle: {
    about: "offset",
    draw: () => (
      <>
        <Path d={`M104 ${88 - step.end.z}h102v${sheet}h-102Z`} kind="sheet" />
        <Lit>
          <Path d={step.d} kind="sheet" />
        </Lit>
      </>
    ),
  },
};

export const profile = { ...channels, ...edges, ...offset };
