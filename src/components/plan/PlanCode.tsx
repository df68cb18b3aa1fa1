import { useEffect, useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { pageLink } from "../links/page-link.ts";
import { CodePicture } from "../scan-code/CodePicture.tsx";
import { useCode } from "../scan-code/use-code.ts";
import { owner } from "./last-plan.ts";

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
  const code = useCode(address);
  useEffect(() => {
    let wanted = true;
    const timer = setTimeout(async () => {
      // A code on paper leads to the whole page, not to the frame it was printed from.
      const link = await pageLink(owner, query, location.pathname.replace(/\/embed\/plan\/$/, "/plan/"));
      if (wanted) setAddress(link);
    }, pause);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [query]);
  return (
    <div class={code && code !== "none" && code.size <= fewModules ? "plan-code is-coarse" : "plan-code"}>
      {code && code !== "none" && <CodePicture code={code} label={texts.codeOf} />}
      {address !== "" && address.length <= readable && <p class="plan-address only-on-paper">{address}</p>}
      {code === "none" && <p>{texts.noCode}</p>}
    </div>
  );
}
