import type { OrderStep } from "../../lib/part/order/order.ts";
import type { Plan } from "../../lib/part/plan.ts";
import { formatQuantity, type LengthView, showQuantity } from "../../lib/quantity/format.ts";
import { phraseText } from "../../lib/quantity/phrase.ts";
import { box } from "./SheetTable.tsx";
import { StepDrawing } from "./StepDrawing.tsx";

const turnWords = { no: "", "end for end": "turn it end for end; ", quarter: "turn it a quarter; " } as const;

/** What to do with the piece before the bend, and how it lies then; the face that is up is said when it changes. */
function lieWords({ turnedOver, turned, faceUp, onLeaf }: OrderStep, first: boolean): string {
  const move = first ? "" : `${turnedOver ? "turn it over; " : ""}${turnWords[turned]}`;
  return `${move}${first || turnedOver ? `${faceUp} face up, ` : ""}${onLeaf} end on the leaf`;
}

/** Where the set of fingers stands to the sides that are already up. */
const placeWords = {
  row: "",
  set: "",
  beside: ", beside the side that stands",
  between: ", between the sides that stand",
} as const;

/** How the piece is put in and taken out where that is not simply from the front. */
function handlingWords({ goesIn, comesOut }: OrderStep): string {
  const inWords = {
    front: "",
    sideways: " Slide it in from the end.",
    "with fingers": " Put the fingers into the piece, then both into the beam.",
  };
  const outWords = {
    front: "",
    sideways: " Slide it out at the end.",
    "with fingers": " Take the fingers out together with the piece.",
  };
  return `${inWords[goesIn]}${outWords[comesOut]}`;
}

/** The bends in the order in which the brake can make them, or what stops every order. */
export function OrderList({ plan, view }: { readonly plan: Plan; readonly view: LengthView }) {
  const { order } = plan;
  if (!order || "stopped" in order) return null;
  if ("trapped" in order) {
    const { why, remedies } = order.trapped;
    return (
      <section class="plan-order">
        <h3>Order of the bends</h3>
        <p class="plan-verdict is-broken">No order of the bends works on this brake. {phraseText(why, view)}</p>
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
      <h3>Order of the bends</h3>
      {order.tabsByHand.length > 0 && (
        <p>
          {box} Before the first, bend the tabs by hand, over the edge of a block or with folding pliers:{" "}
          {order.tabsByHand.join(", ")}.
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
                {box} <strong>{step.bend}</strong>: {lieWords(step, index === 0)}.
                {bend && ` Nose to the sight line ${exact(bend.sightLine)} from ${bend.from}.`}
                {bend?.swing != null && ` Swing to ${formatQuantity(bend.swing, "angle")}.`}{" "}
                {step.fingers.place === "row" ? (
                  <span class="not-on-paper">The row of fingers may stay.</span>
                ) : step.changeFingers || index === 0 ? (
                  `Set the fingers ${step.fingers.chosen.map(number).join(" + ")}${placeWords[step.fingers.place]}.`
                ) : (
                  "The same fingers stay."
                )}
                {handlingWords(step)} <span class="order-why">{phraseText(step.why, view)}</span>
              </p>
              {chain && <StepDrawing chain={chain} made={made} bend={step.bend} />}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
