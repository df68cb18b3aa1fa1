import { useEffect, useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { plan as planTexts } from "../../texts/en/plan.ts";
import { deviceStore, today } from "../shop/shelf.ts";
import { findPlans, type KeptPlan, keepPlans, planShelf, withPlan } from "./plan-shelf.ts";

interface Props {
  readonly name: string;
  /** Of the plan in the form. */
  readonly query: string;
  readonly onOpen: (query: string) => void;
}

/** The plans on this device: keep the one in the form, open or remove the others. */
export function SavedPlans({ name, query, onOpen }: Props) {
  const { saved: texts, withoutName } = useTexts(planTexts);
  const [plans, setPlans] = useState<readonly KeptPlan[]>([]);
  const [message, setMessage] = useState("");
  const [removed, setRemoved] = useState<{ readonly plan: KeptPlan; readonly at: number }>();

  useEffect(() => {
    const read = () => {
      const { kept, trouble } = findPlans(deviceStore());
      setPlans(kept?.plans ?? []);
      setMessage(trouble ? texts.troubles[trouble.why] : "");
    };
    const onStorage = ({ key }: StorageEvent) => {
      if (key === null || key === planShelf) read();
    };
    read();
    addEventListener("storage", onStorage);
    return () => removeEventListener("storage", onStorage);
  }, []);

  const write = (next: readonly KeptPlan[], done: string) => {
    const kept = keepPlans(deviceStore(), next);
    if (kept) setPlans(next);
    setMessage(kept ? done : texts.full);
  };
  const keepThis = () => {
    // Another tab may have kept plans since.
    const now = findPlans(deviceStore());
    if (now.trouble) {
      setMessage(texts.troubles[now.trouble.why]);
      return;
    }
    setRemoved(undefined);
    write(withPlan(now.kept?.plans ?? [], { name, kept: today(), query }), texts.kept(name));
  };
  const remove = (plan: KeptPlan, at: number) => {
    setRemoved({ plan, at });
    write(
      plans.filter((each) => each !== plan),
      texts.removed(plan.name),
    );
  };

  return (
    <section class="saved-plans not-on-paper" aria-label={texts.name}>
      <div class="actions">
        <button type="button" onClick={keepThis}>
          {texts.keep}
        </button>
        {removed && (
          <button
            type="button"
            onClick={() => {
              write(plans.toSpliced(removed.at, 0, removed.plan), texts.back(removed.plan.name));
              setRemoved(undefined);
            }}
          >
            {texts.undo(removed.plan.name)}
          </button>
        )}
      </div>
      <p role="status">{message}</p>
      {plans.length > 0 && (
        <ul>
          {plans.map((plan, index) => (
            <li key={plan.name}>
              <button type="button" class="open-plan" onClick={() => onOpen(plan.query)}>
                {plan.name || withoutName}
              </button>{" "}
              <time dateTime={plan.kept}>{plan.kept.replace("T", ", ")}</time>{" "}
              <button type="button" class="remove" aria-label={texts.remove(plan.name)} onClick={() => remove(plan, index)}>
                <svg viewBox="0 0 16 16" aria-hidden="true">
                  <path d="M3 3L13 13M13 3L3 13" />
                </svg>
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
