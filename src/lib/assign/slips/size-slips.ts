import { mm, say } from "../../quantity/phrase.ts";
import { type GivenNumber, millimetres, once, type Rule } from "./rule.ts";

const isRadius = (label: string) => /\bradius\b/i.test(label);
const isDiameter = (label: string) => /\bdiameter\b/i.test(label);
const hasFace = (label: string) => /\b(inside|outside|tool)\b/i.test(label);

/** A thickness too much or too little: inside and outside mixed up. */
export const insideOutside: Rule = function* ({ sheet, output, right, numbers, values, asked, again }) {
  let facesChosen = false;
  for (const [key, input] of Object.entries(sheet.inputs)) {
    if (input.kind !== "choice" || Object.keys(input.choices).sort().join() !== "inside,outside") continue;
    facesChosen = true;
    const stated = String(values[key]);
    const other = stated === "inside" ? "outside" : "inside";
    yield* once(
      again({ [key]: other }),
      () => say`That is the answer for the ${other} size. Here the ${stated} size is given; the thickness lies between the two.`,
    );
  }
  const { thickness } = values;
  if (typeof thickness !== "number") return;

  const legs = numbers.filter(({ key }) => key === "legs");
  if (asked === "blank" && legs.length > 1)
    for (const side of [1, -1]) {
      const texts = legs.map(({ path, typed }, index): [string, string] => {
        const bends = index === 0 || index === legs.length - 1 ? 1 : 2;
        return [path, millimetres(typed.value + side * bends * thickness)];
      });
      yield* once(again(Object.fromEntries(texts)), () =>
        side > 0
          ? say`That is the answer with the legs taken for inside sizes, one thickness more at each bend. They are outside sizes here.`
          : say`That is the answer with the legs made shorter by one thickness at each bend. They are outside sizes, as they are given.`,
      );
    }

  for (const { path, label, typed } of numbers) {
    if (!(hasFace(label) || facesChosen) || !(isRadius(label) || isDiameter(label))) continue;
    const through = isRadius(label) ? thickness : 2 * thickness;
    const how = isRadius(label) ? "one thickness" : "two thicknesses";
    for (const side of [1, -1])
      yield* once(
        again({ [path]: millimetres(typed.value + side * through) }),
        () =>
          say`That is the answer with ${label.toLowerCase()} ${mm(typed.value + side * through)}, ${how} ${side > 0 ? "more" : "less"}: inside and outside are mixed up.`,
      );
  }
  if (output.quantity === "length" && hasFace(output.label) && (isRadius(output.label) || isDiameter(output.label))) {
    const through = isRadius(output.label) ? thickness : 2 * thickness;
    const how = isRadius(output.label) ? "one thickness" : "two thicknesses";
    for (const side of [1, -1])
      yield {
        value: right + side * through,
        phrase: say`That is ${how} ${side > 0 ? "more" : "less"} than asked: inside and outside are mixed up.`,
      };
  }
};

/** Radius and diameter mixed up, given or asked. */
export const radiusDiameter: Rule = function* ({ output, right, numbers, again }) {
  const diameters = numbers.filter(({ label }) => isDiameter(label));
  const halved = (which: readonly GivenNumber[]) =>
    again(Object.fromEntries(which.map(({ path, typed }) => [path, millimetres(typed.value / 2)])));
  if (diameters.length > 1)
    yield* once(
      halved(diameters),
      () => say`That is the answer with radii where diameters are given. A diameter is twice its radius.`,
    );
  for (const each of diameters)
    yield* once(
      halved([each]),
      () => say`That is the answer with ${each.label.toLowerCase()} halved: a radius was taken where a diameter is given.`,
    );
  for (const { path, label, typed } of numbers)
    if (isRadius(label) && !isDiameter(label))
      yield* once(
        again({ [path]: millimetres(2 * typed.value) }),
        () => say`That is the answer with ${label.toLowerCase()} doubled: a diameter was taken where a radius is given.`,
      );
  if (output.quantity !== "length") return;
  if (isRadius(output.label)) yield { value: 2 * right, phrase: say`That is the diameter. Asked is the radius, half of it.` };
  else if (isDiameter(output.label))
    yield { value: right / 2, phrase: say`That is the radius. Asked is the diameter, twice as much.` };
};
