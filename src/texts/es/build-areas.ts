import { answers as englishAnswers } from "../en/answers.ts";
import { assign as englishAssign } from "../en/assign.ts";
import { display as englishDisplay } from "../en/display.ts";
import { embed as englishEmbed } from "../en/embed.ts";
import { figuresBending as englishFigures } from "../en/figures-bending.ts";
import { keptAssignments as englishKeptAssignments } from "../en/kept-assignments.ts";
import { lengths as englishLengths } from "../en/lengths.ts";
import { missingPage as englishMissing } from "../en/missing-page.ts";
import { offline as englishOffline } from "../en/offline.ts";
import { plan as englishPlan } from "../en/plan.ts";
import { planEdit as englishPlanEdit } from "../en/plan-edit.ts";
import { planSheet as englishPlanSheet } from "../en/plan-sheet.ts";
import { planTemplate as englishPlanTemplate } from "../en/plan-template.ts";
import { prose as englishProse } from "../en/prose.ts";
import { safety as englishSafety } from "../en/safety.ts";
import { sheet as englishSheet } from "../en/sheet.ts";
import { shell as englishShell } from "../en/shell.ts";
import { shop as englishShop } from "../en/shop.ts";
import { signOff as englishSignOff } from "../en/sign-off.ts";
import { task as englishTask } from "../en/task.ts";
import { type Area, area } from "../translation.ts";
import { answers } from "./answers.ts";
import { assign } from "./assign.ts";
import { display } from "./display.ts";
import { embed } from "./embed.ts";
import { figuresBending } from "./figures-bending.ts";
import { keptAssignments } from "./kept-assignments.ts";
import { lengths } from "./lengths.ts";
import { missingPage } from "./missing-page.ts";
import { offline } from "./offline.ts";
import { plan } from "./plan.ts";
import { planEdit } from "./plan-edit.ts";
import { planSheet } from "./plan-sheet.ts";
import { planTemplate } from "./plan-template.ts";
import { prose } from "./prose.ts";
import { safety } from "./safety.ts";
import { sheet } from "./sheet.ts";
import { shell } from "./shell.ts";
import { shop } from "./shop.ts";
import { signOff } from "./sign-off.ts";
import { task } from "./task.ts";

/** Areas of the interface that are said only when the site is built, and those whose pages are not there in Spanish yet. */
export const atBuild: readonly Area[] = [
  area(englishShell, shell),
  area(englishLengths, lengths),
  area(englishDisplay, display),
  area(englishEmbed, embed),
  area(englishProse, prose),
  area(englishFigures, figuresBending),
  area(englishMissing, missingPage),
  area(englishOffline, offline),
  area(englishSafety, safety),
  area(englishPlan, plan),
  area(englishSheet, sheet),
  area(englishSignOff, signOff),
  area(englishTask, task),
  area(englishPlanEdit, planEdit),
  area(englishPlanSheet, planSheet),
  area(englishPlanTemplate, planTemplate),
  area(englishAnswers, answers),
  area(englishAssign, assign),
  area(englishKeptAssignments, keptAssignments),
  area(englishShop, shop),
];
