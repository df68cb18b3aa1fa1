import { type FullSize, type LayerId, layers, lineStyles, type Mark, pathData } from "./drawing.ts";

/** Room round the blank [mm]: half the width of a line, and the ends of centre lines. */
const margin = 5;

const escaped = (text: string) =>
  text.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign] as string);

/** Characters XML cannot hold, however they are written. */
const clean = (text: string) =>
  escaped([...text].filter((sign) => sign >= " " && sign !== "\ufffe" && sign !== "\uffff").join(""));

/**
 * The flat layout as an SVG file at full size: one unit of its view box is a millimetre, and so is its width and height.
 *
 * @returns the text of the file. Layers are groups with the ids of `layers`; an empty layer is left out
 * @remarks The blank's south-west corner lies 5 mm from the left and from the bottom of the picture.
 */
export function flatSvg(sheet: FullSize): string {
  const { drawing } = sheet;
  const width = sheet.width + 2 * margin;
  const height = sheet.depth + 2 * margin;
  const place = ({ x, y }: { x: number; y: number }) => ({ x: x + margin, y: height - margin - y });
  const size = (value: number) => String(Number(value.toFixed(3)));
  const drawn = (mark: Mark) => {
    const name = "name" in mark && mark.name !== undefined ? `<title>${clean(mark.name)}</title>` : "";
    if (mark.kind === "circle") {
      const { x, y } = place(mark.centre);
      return `<circle cx="${size(x)}" cy="${size(y)}" r="${size(mark.radius)}"/>`;
    }
    const d = pathData(mark, place);
    return name === "" ? `<path d="${d}"/>` : `<path d="${d}">${name}</path>`;
  };
  const style = (id: LayerId) => {
    const { width: stroke, dashes } = lineStyles[id];
    return `stroke-width="${stroke}"${dashes === undefined ? "" : ` stroke-dasharray="${dashes}"`}`;
  };
  const groups = (Object.keys(layers) as LayerId[])
    .filter((id) => drawing[id].length > 0)
    .map((id) => `<g id="${id}" ${style(id)}>\n${drawing[id].map(drawn).join("\n")}\n</g>`);
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${size(width)}mm" height="${size(height)}mm" viewBox="0 0 ${size(width)} ${size(height)}" fill="none" stroke="#000" stroke-linejoin="round">
<title>${clean(`${sheet.name}: flat layout, ${sheet.face}, ${size(sheet.width)} × ${size(sheet.depth)} mm, ${sheet.material}, ${size(sheet.thickness)} mm thick`)}</title>
${groups.join("\n")}
</svg>
`;
}
