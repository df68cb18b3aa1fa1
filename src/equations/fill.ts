/**
 * Writes the numbers of the moment into the slots of an equation made by `renderEquation`, visual part and MathML alike.
 * @throws Error when a slot has no value: an equation must not keep an old number beside new ones
 */
export function fillSlots(root: Element, values: Readonly<Record<string, string>>): void {
  for (const slot of root.querySelectorAll("[data-v]")) {
    const key = slot.getAttribute("data-v") ?? "";
    const text = values[key];
    if (text === undefined) throw new Error(`No value for the slot “${key}” of an equation`);
    if (slot.textContent !== text) slot.textContent = text;
  }
}
