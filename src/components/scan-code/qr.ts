import { encode } from "uqr";

/** A code to scan: the sides of its square in modules, quiet zone included, and its dark modules as one path. */
export interface Code {
  readonly size: number;
  readonly path: string;
}

/** Light modules the standard (ISO/IEC 18004) asks for on every side. */
const quietZone = 4;

/** The code of a text; undefined for one too long for any code. */
export function codeOf(text: string): Code | undefined {
  let data: readonly (readonly boolean[])[];
  try {
    ({ data } = encode(text, { ecc: "L", border: quietZone }));
  } catch {
    // The package says by an error that its largest code is too small.
    return undefined;
  }
  const runs = data.flatMap((row, y) => {
    const found: string[] = [];
    for (let x = 0; x < row.length; ) {
      let length = 0;
      while (row[x + length]) length += 1;
      if (length > 0) found.push(`M${x} ${y}h${length}v1h-${length}z`);
      x += Math.max(1, length);
    }
    return found;
  });
  return { size: data.length, path: runs.join("") };
}
