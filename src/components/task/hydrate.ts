import { assignOwner } from "../../lib/assign/assign-owner.ts";
import { waken } from "../calculator/waken.ts";

const host = document.querySelector<HTMLElement>("[data-task]");
if (host) waken(host, { owner: assignOwner, bring: async () => (await import("./mount.tsx")).mount(host) });
