import { checkRange } from "../inputs.ts";

/** Colours of hot steel by Chapman, from and to [°C]. Source: Workshop Technology, part 1, as quoted (read). */
export const heatColours = [
  { colour: "black red", from: 426, to: 593 },
  { colour: "very dark red", from: 594, to: 704 },
  { colour: "dark red", from: 705, to: 814 },
  { colour: "cherry red", from: 815, to: 870 },
  { colour: "light cherry red", from: 871, to: 981 },
  { colour: "orange", from: 982, to: 1092 },
  { colour: "yellow", from: 1093, to: 1258 },
  { colour: "yellow-white", from: 1259, to: 1314 },
] as const;

/** The same by Dooley, first red to cherry [°F as printed]. Source: Applied Science for Metal Workers, par. 458 (read). */
export const dooleyColours = [
  { colour: "first red", fahrenheit: 957 },
  { colour: "dull red", fahrenheit: 1290 },
  { colour: "dark cherry", fahrenheit: 1470 },
  { colour: "cherry red", fahrenheit: 1655 },
] as const;

const temperature = { label: "Temperature", quantity: "temperature", min: 0, max: 2000 } as const;

/**
 * Colour that steel glows with in the shade.
 *
 * @param celsius - [°C]; 0 to 2000
 * @returns Chapman's word, or undefined below the first and above the last of his bands
 * @throws InputError for a temperature outside its range
 * @remarks Writers disagree by 50 to 100 °C, and the light of the room decides as much: a thermocouple knows. Source: as `heatColours`.
 * @example heatColour(840); // "cherry red"
 */
export function heatColour(celsius: number): string | undefined {
  checkRange("temperature", temperature, celsius);
  const whole = Math.floor(celsius);
  return heatColours.find(({ from, to }) => whole >= from && whole <= to)?.colour;
}
