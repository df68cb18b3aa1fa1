import { startingPoints } from "../../src/components/plan/starting-points.ts";
import type { Raw } from "../../src/lib/inputs.ts";
import type { Worksheet } from "../../src/lib/worksheet.ts";

/** Square, so that a changed side still closes with its diagonals now and then. */
const blanks: readonly Raw[] = [{ width: "300mm", height: "400mm", diagonalA: "500mm", diagonalB: "500mm" }];

const known: Readonly<Record<string, readonly Raw[]>> = {
  plan: startingPoints.map(({ raw }) => raw),
  "square-check": [{}, ...blanks],
};

/** Forms of a calculator that work: its own, or those a page begins with. */
export const startsOf = ({ id }: Worksheet): readonly Raw[] => known[id] ?? [{}];
