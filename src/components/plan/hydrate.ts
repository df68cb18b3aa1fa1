import { waken } from "../calculator/waken.ts";
import { hasLastPlan, owner } from "./last-plan.ts";

const host = document.querySelector<HTMLElement>("[data-plan]");
if (host)
  waken(host, {
    owner,
    // Only a live page can offer to go on with it.
    atOnce: hasLastPlan(),
    bring: async () => (await import("./mount.tsx")).mount(host),
  });
