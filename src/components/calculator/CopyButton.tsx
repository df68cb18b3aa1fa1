import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";

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
