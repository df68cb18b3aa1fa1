import { inflateSync } from "node:zlib";

/** A straight stroke on a page, in millimetres from its lower left corner. */
export interface PdfLine {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

type Matrix = readonly [number, number, number, number, number, number];

/** First the inner, then the outer one: as `cm` puts them together. */
const times = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[1] * b[2],
  a[0] * b[1] + a[1] * b[3],
  a[2] * b[0] + a[3] * b[2],
  a[2] * b[1] + a[3] * b[3],
  a[4] * b[0] + a[5] * b[2] + b[4],
  a[4] * b[1] + a[5] * b[3] + b[5],
];

const perPoint = 25.4 / 72;

/** The texts of all streams of a file that are page content, in order. */
function contents(pdf: Buffer): string[] {
  const text = pdf.toString("latin1");
  const found: string[] = [];
  for (const match of text.matchAll(/<<([^>]*)>>\s*stream\r?\n/g)) {
    const start = (match.index ?? 0) + match[0].length;
    const length = Number(/\/Length (\d+)/.exec(match[1] ?? "")?.[1]);
    if (!/FlateDecode/.test(match[1] ?? "") || /\/(Subtype|Type|Length1|FunctionType)\b/.test(match[1] ?? "")) continue;
    const body = inflateSync(pdf.subarray(start, start + length)).toString("latin1");
    if (/\bcm\b/.test(body) && /\b(S|s|f)\b/.test(body)) found.push(body);
  }
  return found;
}

/**
 * The straight lines a file draws, page by page: what a printer would draw, measured in what the file itself says.
 * Understands the operators that place and draw paths, which is all there is to a line.
 */
export function pdfLines(pdf: Buffer): PdfLine[][] {
  return contents(pdf).map((body) => {
    const lines: PdfLine[] = [];
    const stack: Matrix[] = [];
    let matrix: Matrix = [1, 0, 0, 1, 0, 0];
    let operands: number[] = [];
    let at: [number, number] | undefined;
    const placed = (x: number, y: number): [number, number] => [
      (matrix[0] * x + matrix[2] * y + matrix[4]) * perPoint,
      (matrix[1] * x + matrix[3] * y + matrix[5]) * perPoint,
    ];
    for (const [token] of body.replace(/\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f]*>/g, " ").matchAll(/[^\s[\]]+/g)) {
      const number = Number(token);
      if (!Number.isNaN(number)) {
        operands.push(number);
        continue;
      }
      const [x = 0, y = 0] = operands;
      if (token === "q") stack.push(matrix);
      else if (token === "Q") matrix = stack.pop() ?? matrix;
      else if (token === "cm" && operands.length === 6) matrix = times(operands as unknown as Matrix, matrix);
      else if (token === "m") at = placed(x, y);
      else if (token === "l") {
        const to = placed(x, y);
        if (at) lines.push({ from: at, to });
        at = to;
      } else if (token === "c") at = placed(operands[4] ?? 0, operands[5] ?? 0);
      operands = [];
    }
    return lines;
  });
}

export const lineLength = ({ from, to }: PdfLine): number => Math.hypot(to[0] - from[0], to[1] - from[1]);
