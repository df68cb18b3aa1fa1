import type { MachineId } from "../../lib/shop/machine-cautions.ts";

/** Each place as a few scribed lines, 100 by 100: what the sheet does there. Drawn for these pages. */
const lines: Readonly<Record<MachineId | "mark", readonly [bright: string, thin: string]>> = {
  mark: ["M12 72h36a18 18 0 0 0 18-18V14", "M56 72h34M84 60A34 34 0 0 0 72 38"],
  marking: ["M10 84h80M22 84V64h56v20", "M50 64V12M44 24l6-12 6 12M30 74v10M40 78v6M60 78v6M70 74v10"],
  shear: ["M8 58h44M52 58l10 4M8 64h44M60 70h32M60 76h32", "M56 8v44l14-8V8zM46 70v22h14V84"],
  cornerCutter: ["M12 24h76v64H44V56H12z", "M12 88V56M12 88h32M18 82l20-20"],
  bandSaw: ["M8 62h38M54 62h38M8 68h38M54 68h38", "M46 8v84M54 8v84M54 14l-8 6M54 30l-8 6M54 46l-8 6M54 78l-8 6"],
  punch: ["M8 58h30M62 58h30M8 64h30M62 64h30", "M40 8v46h20V8M34 70v22H12V70zM66 70v22h22V70zM42 78h16v6H42z"],
  brake: ["M8 60h46L78 22M8 66h48l27-41", "M20 54l22-40h18L40 54zM58 74l34-52M12 72h40v20H12z"],
  rolls: [
    "M6 58h34c24 0 40-12 46-36",
    "M30 42m-15 0a15 15 0 1 0 30 0a15 15 0 1 0-30 0M30 76m-15 0a15 15 0 1 0 30 0a15 15 0 1 0-30 0M76 70m-15 0a15 15 0 1 0 30 0a15 15 0 1 0-30 0",
  ],
  welder: ["M8 47h84M8 54h84", "M42 8v24l4 12h8l4-12V8M42 93V69l4-12h8l4 12v24M36 44l-8-6M64 44l8-6M36 58l-8 6M64 58l8 6"],
  furnace: ["M32 78h36", "M12 10h76v80H12zM26 26h48v58H26zM38 70c-4-8 4-10 0-18M50 70c-4-8 4-10 0-18M62 70c-4-8 4-10 0-18"],
};

export function Picture({ id }: { readonly id: MachineId | "mark" }) {
  const [bright, thin] = lines[id];
  return (
    <svg viewBox="0 0 100 100" class="picture" aria-hidden="true">
      <path class="thin" d={thin} />
      <path class="bright" d={bright} />
    </svg>
  );
}
