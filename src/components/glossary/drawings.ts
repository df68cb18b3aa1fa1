import { bend } from "./drawings/bend.tsx";
import { brake } from "./drawings/brake.tsx";
import { cutting } from "./drawings/cutting.tsx";
import { flat } from "./drawings/flat.tsx";
import { joining } from "./drawings/joining.tsx";
import { marking } from "./drawings/marking.tsx";
import { metal } from "./drawings/metal.tsx";
import { profile } from "./drawings/profile.tsx";
import { rolling } from "./drawings/rolling.tsx";
import type { Sketches, SketchKind } from "./sketch.tsx";

const families: Readonly<Record<string, Sketches>> = { bend, brake, cutting, flat, joining, marking, metal, profile, rolling };

/** Every drawing by its name: family and part, `bend.apex`. */
export const drawings: Readonly<Record<string, SketchKind>> = Object.fromEntries(
  Object.entries(families).flatMap(([family, parts]) =>
    Object.entries(parts).map(([part, kind]) => [`${family}.${part}`, kind] as const),
  ),
);
