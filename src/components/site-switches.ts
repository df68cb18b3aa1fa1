import type { LengthView } from "../lib/quantity/format.ts";
import { chooseUnits, unitsView, watchUnits } from "./units.ts";

/** Brings the switches in the head of a page to life: units, look, and language, which takes along what was typed. */
const root = document.documentElement;
const radios = document.querySelectorAll<HTMLInputElement>("[data-units-switch] input");

function showUnits(): void {
  for (const radio of radios) radio.checked = radio.value === unitsView();
}
for (const radio of radios) radio.addEventListener("change", () => chooseUnits(radio.value as LengthView));
watchUnits(showUnits);
showUnits();
if (root.dataset.unitsAsked !== undefined) void import("./links/units-from-link.ts");

const look = document.querySelector<HTMLSelectElement>("select[name=look]");
if (look) {
  look.value = root.dataset.look ?? "";
  look.addEventListener("change", () => {
    if (look.value === "") delete root.dataset.look;
    else root.dataset.look = look.value;
    try {
      localStorage.setItem("flat-to-formed.look", look.value);
    } catch {
      // As with the units: the choice holds until the page is left.
    }
  });
}

for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-language]"))
  link.addEventListener("click", () => {
    // What is still waiting to be written into the address is written first, see address-bar.ts.
    document.dispatchEvent(new Event("visibilitychange"));
    link.search = location.search;
    link.hash = location.hash;
  });
