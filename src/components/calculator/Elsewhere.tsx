import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { Fold } from "./Fold.tsx";
import type { WaysProps } from "./Ways.tsx";

async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** A button that copies; where the browser does not let it, the text is there to be copied by hand. */
export function CopyButton({ text, children }: { text: () => string | Promise<string>; children: string }) {
  const texts = useTexts(calculator);
  const [copied, setCopied] = useState<string>();
  const onClick = async () => {
    const wanted = await text();
    setCopied((await copy(wanted)) ? texts.copied : wanted);
  };
  return (
    <>
      <button type="button" onClick={onClick}>
        {children}
      </button>
      <span class="copied" role="status">
        {copied}
      </span>
    </>
  );
}

/** Other ways to use a calculator; few people want them, so they are loaded when they are opened. */
export function Elsewhere(props: WaysProps) {
  const texts = useTexts(calculator);
  const [Ways, setWays] = useState<ComponentType<WaysProps>>();
  const load = async () => {
    const loaded = await import("./Ways.tsx");
    setWays(() => loaded.Ways);
  };
  return (
    <Fold class="elsewhere" summary={texts.otherWays} onOpen={load}>
      {() => Ways && <Ways {...props} />}
    </Fold>
  );
}
