import type { Fixed } from "../../lib/address.ts";
import type { Raw } from "../../lib/inputs.ts";
import { partInputs } from "../../lib/part/form.ts";
import { useTexts } from "../../texts/context.ts";
import { given } from "../../texts/en/given.ts";
import { LazyLinkPanel } from "../links/LazyLinkPanel.tsx";
import { owner } from "./last-plan.ts";

/** About how tall the first screen of a plan is in a frame [px]; the rest is scrolled, or asked for by its message. */
const frameHeight = 900;

interface Props {
  readonly raw: Raw;
  readonly fixed: Fixed;
  /** Keys of the inputs that matter for this kind of part. */
  readonly shown: readonly string[];
  /** Path of the page with the form: the plan, or the plan in a frame. */
  readonly path: string;
}

/** The plan as a link, a frame or a code, with values fixed for students. */
export function PlanLinks({ path, ...rest }: Props) {
  const texts = useTexts(given);
  const root = path.replace(/(?:\/embed)?\/plan\/$/, "");
  return (
    <LazyLinkPanel
      owner={owner}
      title={texts.plan}
      inputs={partInputs}
      root={root}
      embed={{ owner, inputs: partInputs, path: `${root}/embed/plan/`, height: frameHeight }}
      hash=""
      packs
      {...rest}
    />
  );
}
