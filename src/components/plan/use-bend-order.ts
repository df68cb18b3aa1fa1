import { useEffect, useRef, useState } from "preact/hooks";
import type { Catalogue } from "../../lib/catalogue.ts";
import type { BendOrder } from "../../lib/part/order/order.ts";
import type { Plan } from "../../lib/part/plan.ts";
import { orderedPlan, orderJob } from "../../lib/part/plan-order.ts";
import { trustOwnScripts } from "../../site/trusted-scripts.ts";

/** How long nothing may be typed before the search begins [ms]. */
const pause = 250;

interface Found {
  readonly key: string;
  readonly order: BendOrder;
}

/**
 * The plan with the order of its bends, once that is found; before, and while something is typed, the plan without one.
 * @param known - order of the example, worked out when the page was built
 */
export function useBendOrder(plan: Plan | undefined, catalogue: Catalogue, known?: BendOrder): Plan | undefined {
  const { brake } = catalogue.shop;
  const job = plan && orderJob(plan);
  const key = job ? JSON.stringify([job, brake]) : "";
  const example = useRef(known && { key, order: known });
  const [found, setFound] = useState<Found | undefined>(example.current);

  useEffect(() => {
    if (!job || found?.key === key) return;
    if (example.current?.key === key) {
      setFound(example.current);
      return;
    }
    let worker: Worker | undefined;
    const start = setTimeout(() => {
      trustOwnScripts();
      worker = new Worker(new URL("./order-worker.ts", import.meta.url), { type: "module" });
      worker.onmessage = ({ data }: MessageEvent<BendOrder>) => {
        setFound({ key, order: data });
        worker?.terminate();
      };
      worker.postMessage({ job, brake });
    }, pause);
    return () => {
      clearTimeout(start);
      worker?.terminate();
    };
  }, [key]);

  return plan && found && found.key === key ? orderedPlan(plan, found.order) : plan;
}
