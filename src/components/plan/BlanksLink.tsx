import { formQuery } from "../../lib/address.ts";
import { jobOfPart } from "../../lib/part/blanks-job.ts";
import type { CutList } from "../../lib/part/cut-list.ts";
import { sheetInputs } from "../../lib/sheet/form.ts";
import { url } from "../../site/url.ts";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";
import { owner } from "../sheet/last-list.ts";

interface Props {
  readonly part: Parameters<typeof jobOfPart>[0];
  readonly cuts: CutList;
}

/** Takes the blanks and practice strips of a plan to the page that cuts many blanks out of sheets. */
export function BlanksLink({ part, cuts }: Props) {
  const texts = useTexts(sheet);
  const query = formQuery(owner, sheetInputs, jobOfPart(part, cuts));
  return (
    <p class="not-on-paper">
      <a href={`${url("/sheet/")}?${query}`}>{texts.fromPlan}</a>
    </p>
  );
}
