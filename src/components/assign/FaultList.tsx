import type { LengthView } from "../../lib/quantity/format.ts";
import { formatNumber } from "../../lib/quantity/format.ts";
import { useTexts } from "../../texts/context.ts";
import { assign } from "../../texts/en/assign.ts";
import { fieldId } from "../calculator/Fields.tsx";
import type { Found } from "./faults.ts";

interface Props {
  readonly found: Found;
  readonly view: LengthView;
  /** Names the questions in the page. */
  instanceOf(question: number): string;
  /** Key of the output asked for at a place of a question. */
  askedAt(question: number, place: number): string | undefined;
}

/** Id of the nearest thing in the page that a fault is about. */
function anchorOf({ question, place }: Found["faults"][number], { instanceOf, askedAt }: Props): string {
  if (question === undefined) return place === "questions" ? "assign-pick" : `assign-${place}`;
  const instance = instanceOf(question);
  const [, asked] = /^asked\.(\d+)/.exec(place) ?? [];
  const output = asked === undefined ? undefined : askedAt(question, Number(asked));
  if (output !== undefined && place.endsWith(".tolerance")) return fieldId(instance, `asked.${output}`);
  if (place.startsWith("asked")) return fieldId(instance, "asked");
  const [, end] = /^(varied\..+\.(?:from|to|step|choices))(?:\.\d+)?$/.exec(place) ?? [];
  if (end !== undefined) return fieldId(instance, end);
  if (place === "intro") return fieldId(instance, "intro");
  const [, key] = /^fixed\.(.+)$/.exec(place) ?? [];
  return key === undefined ? `${instance}-head` : fieldId(instance, key);
}

/** Everything that has to be changed before the assignment can be handed out, or that nothing has to be. */
export function FaultList(props: Props) {
  const texts = useTexts(assign);
  const { found, view } = props;
  const go = (id: string) => {
    const target = document.getElementById(id);
    target?.scrollIntoView({ block: "center" });
    target?.focus({ preventScroll: true });
  };
  return (
    <div class="faults" role="status">
      {found.faults.length === 0 ? (
        <>
          <p class="verdict">{texts.faultsNone}</p>
          <ul class="quiet small">
            {found.tried.map(({ tried, combinations }, index) => (
              <li key={index}>{texts.tried(index + 1, tried, formatNumber(combinations, 0))}</li>
            ))}
          </ul>
        </>
      ) : (
        <>
          <h3>{texts.faultsHead}</h3>
          <ul>
            {found.faults.map((fault) => {
              const anchor = anchorOf(fault, props);
              return (
                <li class="fault" key={`${fault.problem.field} ${fault.problem.message}`}>
                  {fault.problem.text(view)}{" "}
                  <a
                    href={`#${anchor}`}
                    onClick={(event) => {
                      event.preventDefault();
                      go(anchor);
                    }}
                  >
                    {texts.show}
                    <span class="for-ears"> {fault.problem.field}</span>
                  </a>
                </li>
              );
            })}
          </ul>
        </>
      )}
    </div>
  );
}
