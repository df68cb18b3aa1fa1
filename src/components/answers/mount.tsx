import { render } from "preact";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { addressOn } from "../task/open-assignment.ts";
import { openHere } from "../task/open-here.ts";
import { AnswersPage } from "./AnswersPage.tsx";
import { NoAnswers } from "./NoAnswers.tsx";

/** Brings the page of the answers to life. */
export async function mount(host: HTMLElement): Promise<void> {
  const { usable, damage } = await openHere();
  if (usable) {
    const taskAddress = await addressOn(host.dataset.task ?? "", usable.assignment);
    host.replaceChildren();
    render(<AnswersPage {...usable} taskAddress={taskAddress} />, host);
  } else if (damage === undefined) hydrateTyped(<NoAnswers />, host);
  else {
    host.replaceChildren();
    render(<NoAnswers damage={damage} />, host);
  }
}
