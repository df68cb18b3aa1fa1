import { useEffect, useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { askedUnits, unitsEnd } from "../links/asked-units.ts";
import { owner } from "./last-plan.ts";
import type { Code } from "./qr.ts";

/** How long an address must stay the same before its code is made [ms]: nobody scans while typing. */
const pause = 250;

/** A longer address takes more than a line of the paper, and nobody types it off [characters]. */
const readable = 110;
/** A code of no more modules than this is still easy to scan at three quarters of the size. */
const fewModules = 61;

/** The address of the plan as a code to scan and, where it is short, in letters. The code is made in the browser: only there is the address known. */
export function PlanCode({ query }: { readonly query: string }) {
  const texts = useTexts(planSheet);
  const [address, setAddress] = useState("");
  const [code, setCode] = useState<Code>();
  useEffect(() => {
    let wanted = true;
    const timer = setTimeout(async () => {
      const [{ codeOf }, { sharedQuery }] = await Promise.all([import("./qr.ts"), import("../packed.ts")]);
      // A code on paper leads to the whole page, not to the frame it was printed from.
      const page = location.pathname.replace(/\/embed\/plan\/$/, "/plan/");
      const text = `${location.origin}${page}?${await sharedQuery(owner, query)}${unitsEnd(askedUnits())}`;
      if (!wanted) return;
      setAddress(text);
      setCode(codeOf(text));
    }, pause);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [query]);
  return (
    <div class={code && code.size <= fewModules ? "plan-code is-coarse" : "plan-code"}>
      {code && (
        <svg viewBox={`0 0 ${code.size} ${code.size}`} role="img" aria-label={texts.codeOf} shape-rendering="crispEdges">
          <path class="code-ground" d={`M0 0h${code.size}v${code.size}H0z`} />
          <path class="code-ink" d={code.path} />
        </svg>
      )}
      {address !== "" && address.length <= readable && <p class="plan-address only-on-paper">{address}</p>}
      {address !== "" && !code && <p>{texts.noCode}</p>}
    </div>
  );
}
