import { useEffect, useRef, useState } from "preact/hooks";
import { InputError } from "../../lib/input-error.ts";
import type { CutPlan } from "../../lib/sheet/cut-plan.ts";
import { formField, type SheetRequest } from "../../lib/sheet/form.ts";
import { trustOwnScripts } from "../../site/trusted-scripts.ts";
import type { CutReport } from "./cut-worker.ts";

/** How long nothing may be typed before the planning begins [ms]. */
const pause = 250;

/** A plan with the job it is of. */
export interface Planned {
  readonly key: string;
  readonly plan: CutPlan;
  readonly request: SheetRequest;
}

export interface Planning {
  /** The best plan so far of what is in the form, or the last one of what stood there before. */
  readonly planned?: Planned;
  /** It is a plan of what is in the form. */
  readonly fresh: boolean;
  readonly state: "working" | "stopped" | "done";
  /** What is being tried. */
  readonly doing: string;
  readonly problem?: InputError;
  stop(): void;
  again(): void;
}

/** What a plan depends on; name, metal and thickness do not change it. */
export const keyOf = ({ job, values }: SheetRequest): string => JSON.stringify([job, values.goal]);

interface Search {
  readonly key: string;
  readonly state: Planning["state"];
  readonly doing: string;
  readonly problem?: InputError;
}

/**
 * Plans what is in the form in a worker that is ended, and begun anew, when something else is typed.
 *
 * @param known - plan of the example, made when the page was built
 */
export function useCutPlan(request: SheetRequest | undefined, known?: Planned): Planning {
  const key = request ? keyOf(request) : "";
  const example = useRef(known);
  const [planned, setPlanned] = useState(known);
  const [search, setSearch] = useState<Search>({ key: known?.key ?? "", state: "done", doing: "" });
  const [round, setRound] = useState(0);
  const worker = useRef<Worker>();
  /** The last search that came to an end: what was typed since may have been taken back. */
  const ended = useRef<Search & { readonly round: number }>();
  const end = () => {
    worker.current?.terminate();
    worker.current = undefined;
  };

  useEffect(() => {
    if (!request) return;
    if (round === 0 && example.current?.key === key) {
      setPlanned(example.current);
      setSearch({ key, state: "done", doing: "" });
      return;
    }
    if (ended.current?.key === key && ended.current.round === round && (planned?.key === key || ended.current.problem)) {
      setSearch(ended.current);
      return;
    }
    setSearch({ key, state: "working", doing: "" });
    const start = setTimeout(() => {
      trustOwnScripts();
      const own = new Worker(new URL("./cut-worker.ts", import.meta.url), { type: "module" });
      worker.current = own;
      own.onmessage = ({ data }: MessageEvent<CutReport>) => {
        if (worker.current !== own) return;
        if (data.kind !== "problem" && data.plan) setPlanned({ key, plan: data.plan, request });
        if (data.kind === "progress") {
          setSearch({ key, state: "working", doing: data.doing });
          return;
        }
        const problem = data.kind === "problem" ? new InputError(formField(data.field), data.value, data.phrase) : undefined;
        const over: Search = { key, state: "done", doing: "", ...(problem ? { problem } : {}) };
        ended.current = { ...over, round };
        setSearch(over);
        end();
      };
      own.postMessage({ job: request.job, goal: request.values.goal });
    }, pause);
    return () => {
      clearTimeout(start);
      end();
    };
  }, [key, round]);

  const current = search.key === key ? search : { key, state: "working" as const, doing: "" };
  return {
    ...(planned ? { planned } : {}),
    fresh: planned !== undefined && planned.key === key,
    state: current.state,
    doing: current.doing,
    ...("problem" in current && current.problem ? { problem: current.problem } : {}),
    stop() {
      end();
      const over: Search = { key, state: "stopped", doing: "" };
      ended.current = { ...over, round };
      setSearch(over);
    },
    again() {
      setRound((before) => before + 1);
    },
  };
}
