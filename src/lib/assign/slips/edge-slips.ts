import { say } from "../../quantity/phrase.ts";
import type { Rule } from "./rule.ts";

/** Places of a plan's blank are from its south or west edge; which one follows from what the output is called. */
const places = [
  {
    key: /^((north|south)\.(\d+\.(sightLine|line)|edge\.\d)|hole\.\d+\.y)$/,
    along: "blankDepth",
    datum: "south",
    other: "north",
  },
  { key: /^((west|east)\.(\d+\.(sightLine|line)|edge\.\d)|hole\.\d+\.x)$/, along: "blankWidth", datum: "west", other: "east" },
] as const;

/** A place on the blank measured from the edge across from the datum edge. */
export const otherEdge: Rule = function* ({ asked, right, outputs }) {
  const place = places.find(({ key }) => key.test(asked));
  const size = place && outputs[place.along];
  if (!place || typeof size !== "number") return;
  yield {
    value: size - right,
    phrase: say`That is measured from the ${place.other} edge. Every setting is taken from the ${place.datum} edge, the datum.`,
  };
};
