import { useLayoutEffect, useState } from "preact/hooks";
import type { LengthView } from "../lib/quantity/format.ts";
import { unitsView, watchUnits } from "./units.ts";

/** How lengths are shown. Millimetres at build and in the first render, which must be alike; the reader's choice from then on. */
export function useUnits(): LengthView {
  const [view, setView] = useState<LengthView>("mm");
  useLayoutEffect(() => {
    setView(unitsView());
    return watchUnits(() => setView(unitsView()));
  }, []);
  return view;
}
