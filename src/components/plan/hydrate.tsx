import catalogue from "virtual:catalogue";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { PlanEditor } from "./PlanEditor.tsx";

const host = document.querySelector<HTMLElement>("[data-plan]");
if (host) {
  hydrateTyped(<PlanEditor catalogue={catalogue} path={host.dataset.path ?? location.pathname} />, host);
  host.dataset.live = "";
}
