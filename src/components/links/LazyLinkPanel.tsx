import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { given } from "../../texts/en/given.ts";
import { Fold } from "../calculator/Fold.tsx";
import type { LinkPanelProps } from "./LinkPanel.tsx";

/** What few people want of a form, so it is fetched when it is opened: its link and frame with values fixed, its code. */
export function LazyLinkPanel(props: LinkPanelProps) {
  const { links } = useTexts(given);
  const [Panel, setPanel] = useState<ComponentType<LinkPanelProps>>();
  const load = async () => {
    const loaded = await import("./LinkPanel.tsx");
    setPanel(() => loaded.LinkPanel);
  };
  return (
    <Fold class="elsewhere" summary={links} onOpen={load}>
      {() => Panel && <Panel {...props} />}
    </Fold>
  );
}
