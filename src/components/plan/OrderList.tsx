import type { OrderStep } from "../../lib/part/order/order.ts";
import type { Plan } from "../../lib/part/plan.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { phraseText } from "../../lib/quantity/phrase.ts";
import { useTexts } from "../../texts/context.ts";
import { planSheet } from "../../texts/en/plan-sheet.ts";
import { box } from "./SheetTable.tsx";
import { StepDrawing } from "./StepDrawing.tsx";

/** What to do with the piece before the bend, and how it lies then; the face that is up is said when it changes. */
function lieWords({ order }: typeof planSheet, { turnedOver, turned, faceUp, onLeaf }: OrderStep, first: boolean): string {
  const move = first ? "" : `${turnedOver ? order.turnOver : ""}${order.turned[turned]}`;
  return `${move}${first || turnedOver ? order.faceUp(faceUp) : ""}${order.onLeaf(onLeaf)}`;
}

/** The bends in the order in which the brake can make them, or what stops every order. */
export function OrderList({ plan, view }: { readonly plan: Plan; readonly view: LengthView }) {
  const texts = useTexts(planSheet);
  const words = texts.order;
  const { order } = plan;
  if (!order || "stopped" in order) return null;
  if ("trapped" in order) {
    const { why, remedies } = order.trapped;
    return (
      <section class="plan-order">
        <h3>{words.title}</h3>
        <p class="plan-verdict is-broken">
          {words.none} {phraseText(why, view)}
        </p>
        {remedies.length > 0 && (
          <ul>
            {remedies.map(({ phrase }) => (
              <li key={phraseText(phrase)}>{phraseText(phrase, view)}</li>
            ))}
          </ul>
        )}
      </section>
    );
  }
  const exact = (value: number) => showQuantity(value, "length", view, "setting").number;
  const number = (value: number) => showQuantity(value, "length", view).number;
  return (
    <section class="plan-order">
      <h3>{words.title}</h3>
      {order.tabsByHand.length > 0 && (
        <p>
          {box} {words.tabsByHand(order.tabsByHand)}
        </p>
      )}
      <ol class="order-steps">
        {order.steps.map((step, index) => {
          const made = new Set(order.steps.slice(0, index).map(({ bend }) => bend));
          const chain = plan.layout.chains.find(({ bends }) => bends.some(({ id }) => id === step.bend));
          const bend = plan.bends.find(({ id }) => id === step.bend);
          return (
            <li key={step.bend}>
              <p>
                {box} <strong>{step.bend}</strong>: {lieWords(texts, step, index === 0)}.
                {bend && words.nose(exact(bend.sightLine), bend.from)}
                {bend?.swing != null && words.swing(formatQuantity(bend.swing, "angle"))}{" "}
                {step.fingers.place === "row" ? (
                  <span class="not-on-paper">{words.rowStays}</span>
                ) : step.changeFingers || index === 0 ? (
                  words.setFingers(step.fingers.chosen.map(number).join(" + "), words.places[step.fingers.place])
                ) : (
                  words.sameFingers
                )}
                {words.goesIn[step.goesIn]}
                {words.comesOut[step.comesOut]} <span class="order-why">{phraseText(step.why, view)}</span>
              </p>
              {chain && <StepDrawing chain={chain} made={made} bend={step.bend} />}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
