import { defineConfig } from "vitest/config";
import { catalogueModule } from "../../src/catalogue/vite-plugin.ts";
import { pieces, pieceVariable } from "./pieces.ts";

const piece = pieces[process.env[pieceVariable] as keyof typeof pieces];
if (!piece) throw new Error(`${pieceVariable} must be one of ${Object.keys(pieces).join(", ")}`);

/**
 * Only the tests that a mutant of the piece has to get past. Files share one worker: a mutant is switched on by a variable, so
 * nothing has to be loaded anew for it.
 */
export default defineConfig({
  plugins: [catalogueModule()],
  test: { include: [...piece.tests], isolate: false },
});
