import { assignmentQuery } from "../../lib/assign/address.ts";
import { assignOwner } from "../../lib/assign/assign-owner.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { readAssignment } from "../../lib/assign/file.ts";
import { InputError } from "../../lib/input-error.ts";
import type { task } from "../../texts/en/task.ts";
import { heldAssignment } from "../assign/held-assignment.ts";

/** Where an assignment may come from beside the address of the page: a pasted link, a file. Browser only. */

/** An assignment, or a sentence that says what is wrong. */
export type Opened = { readonly assignment: Assignment } | { readonly problem: string };

/** What a pasted text or a file holds: a link, its query alone, or an assignment file. */
export async function openText(text: string, texts: typeof task, name?: string): Promise<Opened> {
  const written = text.trim();
  const named = (problem: string) => ({ problem: name === undefined ? problem : texts.openProblem(name, problem) });
  if (written.startsWith("{") || name !== undefined) {
    let json: unknown;
    try {
      json = JSON.parse(written);
    } catch {
      return { problem: texts.openNoJson(name ?? texts.openText) };
    }
    try {
      return { assignment: readAssignment(json) };
    } catch (error) {
      if (error instanceof InputError) return named(error.message);
      throw error;
    }
  }
  // A mail program may have broken the link into lines.
  const joined = written.replace(/\s+/g, "").replaceAll("&amp;", "&");
  const query = /(?:[?&]|^)(assign\..*?)(?:#.*)?$/.exec(joined)?.[1];
  const { assignment, damage } = query === undefined ? {} : await heldAssignment(query);
  return assignment ? { assignment } : { problem: damage ?? texts.openNothing };
}

/** The address of an assignment on a page of this site. */
export async function addressOn(path: string, assignment: Assignment): Promise<string> {
  const { sharedQuery } = await import("../packed.ts");
  return `${path}?${await sharedQuery(assignOwner, assignmentQuery(assignment))}`;
}
