/**
 * An independent check of a plan: it has a stack of raw sheets and a list of strokes, and does what the strokes say. It shares
 * types with the library, and none of its code. Lengths in mm.
 */
import type { SheetCuts } from "../../src/lib/sheet/cut-order.ts";
import type { SheetJob } from "../../src/lib/sheet/model.ts";

interface Rectangle {
  x: number;
  y: number;
  width: number;
  length: number;
}

/** Lengths nearer than this are the same [mm]. */
const same = 1e-5;
const equal = (a: number, b: number) => Math.abs(a - b) < same;
const text = ({ x, y, width, length }: Rectangle) => `${width} × ${length} at ${x}, ${y}`;

/** Faults of the strokes of one sheet; none: the list is good. */
export function replay(job: SheetJob, sheetNumber: number, { cuts, pieces, offcuts, stopSettings }: SheetCuts): string[] {
  const faults: string[] = [];
  const sheet = job.sheets[sheetNumber];
  if (!sheet) return [`there is no sheet ${sheetNumber}`];
  const lying: (Rectangle & { id: string })[] = [{ id: "", x: 0, y: 0, width: sheet.width, length: sheet.length }];
  let set: number | undefined;
  let changes = 0;

  cuts.forEach((cut, index) => {
    const where = `cut ${index + 1}`;
    const at = lying.findIndex(
      ({ id, width, length }) => id === cut.from.id && equal(width, cut.from.width) && equal(length, cut.from.length),
    );
    const plate = lying[at];
    if (!plate) {
      faults.push(`${where}: no plate ${cut.from.id} of ${cut.from.width} × ${cut.from.length} lies there`);
      return;
    }
    const widthways = cut.across === "width";
    const full = widthways ? plate.length : plate.width;
    const along = widthways ? plate.width : plate.length;
    if (!equal(cut.cutLength, full)) faults.push(`${where}: ${cut.cutLength} long on a plate that is ${full} there`);
    const off = widthways ? cut.off.width : cut.off.length;
    const held = widthways ? cut.held.width : cut.held.length;
    if (!(off > 0 && held > 0 && equal(off + held, along))) faults.push(`${where}: ${off} + ${held} is not ${along}`);
    if (!equal(widthways ? cut.off.length : cut.off.width, full))
      faults.push(`${where}: the part cut off does not go from edge to edge`);
    if (!equal(widthways ? cut.held.length : cut.held.width, full))
      faults.push(`${where}: the part held does not go from edge to edge`);
    if (cut.stop !== undefined) {
      if (!equal(cut.stop, off)) faults.push(`${where}: stop ${cut.stop}, cut off ${off}`);
      if (job.shear && (cut.stop < job.shear.shortestStop - same || cut.stop > job.shear.longestStop + same))
        faults.push(`${where}: stop ${cut.stop} is out of range`);
      if (cut.stop !== set) changes += 1;
      set = cut.stop;
    } else if (!job.shear || (off >= job.shear.shortestStop + same && off <= job.shear.longestStop - same))
      faults.push(`${where}: no stop for ${off}`);
    const tooLong = job.shear !== undefined && full > job.shear.longestCut + same;
    if (tooLong !== cut.faults.includes("longer-than-shear")) faults.push(`${where}: ${full} long, said ${cut.faults.join()}`);
    const tooSmall = job.shear !== undefined && held < job.shear.shortestHold - same;
    if (tooSmall !== cut.faults.includes("too-small-to-hold")) faults.push(`${where}: held ${held}, said ${cut.faults.join()}`);

    const first: Rectangle = { ...plate };
    const second: Rectangle = { ...plate };
    const size = cut.offAt === "start" ? off : held;
    if (widthways) {
      first.width = size;
      second.x += size;
      second.width -= size;
    } else {
      first.length = size;
      second.y += size;
      second.length -= size;
    }
    const [offPart, heldPart] = cut.offAt === "start" ? [first, second] : [second, first];
    lying.splice(at, 1);
    if (cut.off.kind === "trim") {
      if (!equal(off, job.trim)) faults.push(`${where}: a strip of trim is ${text(offPart)}`);
    } else lying.push({ ...offPart, id: cut.off.id });
    lying.push({ ...heldPart, id: cut.held.id });
  });

  if (changes !== stopSettings) faults.push(`${changes} settings of the stop, said ${stopSettings}`);

  // Everything on the floor at the end is a piece or an offcut of the plan, where the plan says.
  const expected = [...pieces, ...offcuts];
  if (lying.length !== expected.length) faults.push(`${lying.length} parts lie there, ${expected.length} are in the plan`);
  for (const part of expected) {
    const at = lying.findIndex(
      (each) =>
        equal(each.x, part.x) && equal(each.y, part.y) && equal(each.width, part.width) && equal(each.length, part.length),
    );
    if (at < 0) faults.push(`nothing lies at ${text(part)}`);
    else lying.splice(at, 1);
  }

  for (const part of pieces) {
    const wanted = job.pieces[part.piece ?? -1];
    if (!wanted) {
      faults.push(`piece ${part.piece} was not asked for`);
      continue;
    }
    const [width, length] = part.turned ? [wanted.length, wanted.width] : [wanted.width, wanted.length];
    if (!equal(part.width, width) || !equal(part.length, length)) faults.push(`${wanted.name} came out ${text(part)}`);
    if (wanted.grain === "along" && part.turned && wanted.width !== wanted.length)
      faults.push(`${wanted.name} lies across the grain`);
    if (wanted.grain === "across" && !part.turned && wanted.width !== wanted.length)
      faults.push(`${wanted.name} lies along the grain`);
    const inside =
      part.x >= job.trim - same &&
      part.y >= job.trim - same &&
      part.x + part.width <= sheet.width - job.trim + same &&
      part.y + part.length <= sheet.length - job.trim + same;
    if (!inside) faults.push(`${wanted.name} at ${text(part)} lies in the trim of a ${sheet.width} × ${sheet.length} sheet`);
  }
  pieces.forEach((a, index) => {
    for (const b of pieces.slice(index + 1)) {
      const overlap =
        a.x + a.width > b.x + same && b.x + b.width > a.x + same && a.y + a.length > b.y + same && b.y + b.length > a.y + same;
      if (overlap) faults.push(`${text(a)} overlaps ${text(b)}`);
    }
  });
  return faults;
}

/** Faults of a whole plan: every sheet replayed, counts of pieces and of sheets met. `exactly`: as many as asked for, not fewer. */
export function replayAll(
  job: SheetJob,
  sheets: readonly { readonly sheet: number; readonly times: number; readonly cuts: SheetCuts }[],
  exactly: boolean,
): string[] {
  const faults = sheets.flatMap(({ sheet, cuts }) => replay(job, sheet, cuts));
  job.pieces.forEach(({ name, count }, piece) => {
    const got = sheets.reduce(
      (sum, each) => sum + each.times * each.cuts.pieces.filter((part) => part.piece === piece).length,
      0,
    );
    if (count !== undefined && (exactly ? got !== count : got > count)) faults.push(`${got} × ${name}, asked for ${count}`);
  });
  job.sheets.forEach(({ name, count }, sheet) => {
    const used = sheets.reduce((sum, each) => sum + (each.sheet === sheet ? each.times : 0), 0);
    if (count !== undefined && used > count) faults.push(`${used} of ${name}, there are ${count}`);
  });
  return faults;
}
