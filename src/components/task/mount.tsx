import { render } from "preact";
import { hydrateTyped } from "../calculator/hydrate-typed.ts";
import { NoTask } from "./NoTask.tsx";
import { openHere } from "./open-here.ts";
import { TaskPage } from "./TaskPage.tsx";

/** Brings the page of a task to life. */
export async function mount(host: HTMLElement): Promise<void> {
  const { usable, damage } = await openHere();
  if (usable) {
    const { root = "", explained = "{}" } = host.dataset;
    document.title = document.title.replace(/^[^·]*/, `${usable.assignment.title} `);
    host.replaceChildren();
    render(<TaskPage {...usable} root={root} explained={JSON.parse(explained)} />, host);
  } else if (damage === undefined) hydrateTyped(<NoTask />, host);
  else {
    host.replaceChildren();
    render(<NoTask damage={damage} />, host);
  }
}
