import { useState } from "preact/hooks";
import { addressParts, queryText } from "../../lib/address.ts";
import type { Raw } from "../../lib/inputs.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { Fold } from "./Fold.tsx";
import { commandLine } from "./texts.ts";

async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** A button that copies; where the browser does not let it, the text is there to be copied by hand. */
export function CopyButton({ text, children }: { text: () => string; children: string }) {
  const [copied, setCopied] = useState<string>();
  return (
    <>
      <button type="button" onClick={async () => setCopied((await copy(text())) ? "Copied." : text())}>
        {children}
      </button>
      <span class="copied" role="status">
        {copied}
      </span>
    </>
  );
}

interface Props {
  readonly sheet: Worksheet;
  readonly raw: Raw;
  /** Address of the embed page. */
  readonly embedPage: string;
}

/** The same calculator with the same values in a course page and on the command line. */
export function Elsewhere({ sheet, raw, embedPage }: Props) {
  const parts = addressParts(sheet.inputs, raw);
  const query = queryText(parts.map(([key, text]): [string, string] => [`${sheet.id}.${key}`, text]));
  const link = `${embedPage}${query === "" ? "" : `?${query}`}`;
  const frame = `<iframe src="${link.replaceAll("&", "&amp;").replaceAll('"', "&quot;")}" title="${sheet.title}" width="100%" height="760"></iframe>`;
  const texts = [
    { name: "Link to this calculator alone", text: link },
    { name: "Frame for a course page", text: frame },
    { name: "Command line", text: commandLine(sheet.id, sheet.inputs, parts, raw) },
  ];
  return (
    <Fold class="elsewhere" summary="Other ways to use this">
      {() => (
        <dl>
          {texts.map(({ name, text }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>
                <code>{text}</code>
              </dd>
              <dd>
                <CopyButton text={() => text}>Copy</CopyButton>
              </dd>
            </div>
          ))}
        </dl>
      )}
    </Fold>
  );
}
