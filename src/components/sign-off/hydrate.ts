import { waken } from "../calculator/waken.ts";
import { owner } from "../plan/last-plan.ts";

const host = document.querySelector<HTMLElement>("[data-sign-off]");
if (host) waken(host, { owner, atOnce: true, bring: async () => (await import("./mount.tsx")).mount(host) });
