import { assignOwner } from "../../lib/assign/address.ts";
import { waken } from "../calculator/waken.ts";

const host = document.querySelector<HTMLElement>("[data-assign]");
if (host) waken(host, { owner: assignOwner, bring: async () => (await import("./mount.tsx")).mount(host) });
