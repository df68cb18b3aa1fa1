import type { FormingBrake, FormingJob } from "../../lib/part/order/job.ts";
import { bendOrder } from "../../lib/part/order/order.ts";

/** Searches the order of bends away from the page, so that typing never waits for it. A newer job ends the worker, and another begins. */

export interface OrderTask {
  readonly job: FormingJob;
  readonly brake: FormingBrake;
}

addEventListener("message", ({ data }: MessageEvent<OrderTask>) => {
  postMessage(bendOrder(data.job, data.brake));
});
