import { linkUnits } from "../../texts/en/link-units.ts";
import { pageTexts } from "../../texts/page-language.ts";
import { askedUnits } from "./asked-units.ts";

/**
 * Locks the units switch where the address says in which units lengths are shown, and says so beside it. What the visitor has
 * chosen stays as it is on this device. An address that asks for other units than there are locks nothing.
 */
const units = askedUnits();
const asked = document.documentElement.dataset.unitsAsked ?? "";
const texts = await pageTexts(linkUnits);
for (const control of document.querySelectorAll<HTMLFieldSetElement>("[data-units-switch]")) {
  const choices = [...control.querySelectorAll("input")];
  const chosen = choices.find(({ value }) => value === units);
  const said = document.createElement("p");
  said.className = "units-said not-on-paper";
  said.textContent = units
    ? texts.locked(chosen?.ariaLabel ?? units)
    : texts.refused(asked.slice(0, 40), choices.map(({ value }) => value).join(", "));
  if (units) control.disabled = true;
  control.after(said);
}
