import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import { assignmentQuery } from "../../lib/assign/address.ts";
import { assignOwner } from "../../lib/assign/assign-owner.ts";
import type { Assignment } from "../../lib/assign/definition.ts";
import { addressParameters, flushAddress, watchAddress, writeSoon } from "../calculator/address-bar.ts";
import { type Draft, draftOf, draftParts, emptyAssignment } from "./draft.ts";
import { heldAssignment } from "./held-assignment.ts";

/** Longer addresses are refused by some servers when the page is loaded again, so they are packed sooner than they need be. */
const longestReadable = 900;
/** Packing waits until typing pauses [ms]. */
const pause = 200;

export interface DraftState {
  readonly draft: Draft;
  /** Why the assignment in the address cannot be read. */
  readonly damage: string;
  change(next: (before: Draft) => Draft): void;
  /** Puts another assignment in its place; the back button brings this one back. */
  replace(assignment: Assignment): void;
}

/** The assignment of the page, whose state is the address: what it holds is read, and what is entered is written there. */
export function useDraft(): DraftState {
  const [draft, setDraft] = useState<Draft>(() => draftOf(emptyAssignment));
  const [damage, setDamage] = useState("");
  const edited = useRef(false);
  /** The next thing written gets an entry of its own in the history. */
  const keepsBefore = useRef(false);
  const unwritten = useRef<() => void>();
  const { assignment } = draft;

  useLayoutEffect(() => {
    let latest = 0;
    const read = async () => {
      const reading = ++latest;
      edited.current = false;
      const found = await heldAssignment(location.search);
      // What was typed meanwhile is newer than what the address held.
      if (reading !== latest || edited.current) return;
      keepsBefore.current = found.damage !== undefined;
      setDamage(found.damage ?? "");
      setDraft((before) => draftOf(found.assignment ?? emptyAssignment, Math.max(0, ...before.names)));
    };
    void read();
    return watchAddress(() => void read());
  }, []);

  useEffect(() => {
    if (!edited.current) return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const write = (parts: [string, string][]) => {
      if (keepsBefore.current) history.pushState(null, "", location.href);
      keepsBefore.current = false;
      unwritten.current = undefined;
      writeSoon(assignOwner, parts);
    };
    const parts = draftParts(assignment);
    const query = parts.length === 0 ? "" : assignmentQuery(assignment);
    if (query.length <= longestReadable) write(parts);
    else {
      // Whoever leaves before it is packed takes the long address along.
      unwritten.current = () => {
        clearTimeout(timer);
        write(parts);
      };
      timer = setTimeout(async () => {
        const { sharedQuery } = await import("../packed.ts");
        const [name = "", text = ""] = (await sharedQuery(assignOwner, query)).split("=", 2);
        // Left or changed meanwhile.
        if (timer === undefined) return;
        if (name === `${assignOwner}.packed`) write([["packed", text]]);
        else write(parts);
      }, pause);
    }
    return () => {
      clearTimeout(timer);
      timer = undefined;
    };
  }, [assignment]);

  useEffect(() => {
    const leave = () => {
      unwritten.current?.();
      flushAddress();
    };
    addEventListener("pagehide", leave);
    document.addEventListener("visibilitychange", leave);
    return () => {
      removeEventListener("pagehide", leave);
      document.removeEventListener("visibilitychange", leave);
    };
  }, []);

  const change = (next: (before: Draft) => Draft) => {
    edited.current = true;
    setDamage("");
    setDraft(next);
  };
  return {
    draft,
    damage,
    change,
    replace(other) {
      unwritten.current?.();
      addressParameters();
      keepsBefore.current = true;
      change((before) => draftOf(other, Math.max(0, ...before.names)));
    },
  };
}
