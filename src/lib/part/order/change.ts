import type { FormingChain, FormingJob } from "./job.ts";

/** Where a panel is in a job. */
export interface PanelAt {
  readonly chain: number;
  readonly index: number;
}

/** Where panels with these ids are. */
export function panelsOf(job: FormingJob, ids: readonly string[]): PanelAt[] {
  return job.chains.flatMap(({ panels }, chain) =>
    panels.flatMap(({ id }, index) => (ids.includes(id) ? [{ chain, index }] : [])),
  );
}

/** The job with one panel longer, or shorter for a negative length [mm]: everything beyond it on the blank moves along. */
export function lengthened(job: FormingJob, { chain, index }: PanelAt, by: number): FormingJob {
  const panel = job.chains[chain]?.panels[index];
  if (!panel) return job;
  const middle = (panel.from + panel.to) / 2;
  const moved = (at: number) => (at > middle ? at + by : at);
  return {
    ...job,
    chains: job.chains.map((each, which): FormingChain => {
      const tabs = each.tabs?.map((tab) => (which === chain ? { ...tab, from: moved(tab.from), to: moved(tab.to) } : tab));
      const panels = each.panels.map((other) =>
        which === chain
          ? { ...other, from: moved(other.from), to: moved(other.to) }
          : { ...other, span: [moved(other.span[0]), moved(other.span[1])] as const },
      );
      return { ...each, panels, ...(tabs && { tabs }) };
    }),
  };
}

/** The job with one fold done differently. */
export function refolded(job: FormingJob, id: string, change: { readonly turn?: true; readonly angle?: number }): FormingJob {
  const turned = (way: "up" | "down") => (change.turn ? (way === "up" ? "down" : "up") : way);
  const edge = (given: FormingChain["startEdge"]) => (given?.id === id ? { ...given, way: turned(given.way) } : given);
  return {
    ...job,
    chains: job.chains.map((chain) => {
      const [startEdge, endEdge] = [edge(chain.startEdge), edge(chain.endEdge)];
      return {
        ...chain,
        bends: chain.bends.map((bend) => {
          if (bend.id !== id) return bend;
          const { angle = bend.angle } = change;
          return { ...bend, angle, swing: bend.swing + angle - bend.angle, way: turned(bend.way) };
        }),
        ...(startEdge && { startEdge }),
        ...(endEdge && { endEdge }),
      };
    }),
  };
}

/** The job without a fold and without everything beyond it, which becomes a piece of its own. */
export function without(job: FormingJob, id: string): FormingJob {
  return {
    ...job,
    chains: job.chains.map((chain): FormingChain => {
      const { startEdge, endEdge, ...rest } = chain;
      const edges = {
        ...(startEdge && startEdge.id !== id && { startEdge }),
        ...(endEdge && endEdge.id !== id && { endEdge }),
      };
      const at = chain.bends.findIndex((bend) => bend.id === id);
      if (at < 0) return { ...rest, ...edges };
      const atEnd = at >= chain.baseIndex;
      const panels = atEnd ? chain.panels.slice(0, at + 1) : chain.panels.slice(at + 1);
      const kept = new Set(panels.map((panel) => panel.id));
      const tabs = chain.tabs?.filter(({ panel }) => kept.has(panel));
      return {
        ...rest,
        panels,
        bends: atEnd ? chain.bends.slice(0, at) : chain.bends.slice(at + 1),
        baseIndex: atEnd ? chain.baseIndex : chain.baseIndex - at - 1,
        ...(atEnd ? edges.startEdge && { startEdge: edges.startEdge } : edges.endEdge && { endEdge: edges.endEdge }),
        ...(tabs && { tabs }),
      };
    }),
  };
}

/** The job with the legs of both chains shorter along their bends, at both ends [mm]: a larger corner gap. */
export function openedCorners(job: FormingJob, by: number): FormingJob {
  return {
    ...job,
    chains: job.chains.map((chain) => ({
      ...chain,
      panels: chain.panels.map((panel, index) =>
        index === chain.baseIndex || panel.span[1] - panel.span[0] <= 2 * by
          ? panel
          : { ...panel, span: [panel.span[0] + by, panel.span[1] - by] as const },
      ),
    })),
  };
}
