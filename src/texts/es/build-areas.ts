import { prose as englishProse } from "../en/prose.ts";
import { shell as englishShell } from "../en/shell.ts";
import { prose } from "./prose.ts";
import { shell } from "./shell.ts";
import { type Area, area } from "./spanish.ts";

/** Areas of the interface that are said only when the site is built. */
export const atBuild: readonly Area[] = [area(englishShell, shell), area(englishProse, prose)];
