import { addressParts, queryText } from "../../lib/address.ts";
import type { Raw } from "../../lib/inputs.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { calculator } from "../../texts/en/calculator.ts";
import { commandLine } from "./command-line.ts";
import { CopyButton } from "./Elsewhere.tsx";

export interface WaysProps {
  readonly sheet: Worksheet;
  readonly raw: Raw;
  /** Address of the embed page. */
  readonly embedPage: string;
}

/** The same calculator with the same values alone, in a course page and on the command line. */
export function Ways({ sheet, raw, embedPage }: WaysProps) {
  const language = useLanguage();
  const texts = useTexts(calculator);
  const parts = addressParts(sheet.inputs, raw);
  const query = queryText(parts.map(([key, text]): [string, string] => [`${sheet.id}.${key}`, text]));
  const link = `${embedPage}${query === "" ? "" : `?${query}`}`;
  const frame = `<iframe src="${link.replaceAll("&", "&amp;").replaceAll('"', "&quot;")}" title="${language.say(sheet.title)}" width="100%" height="760"></iframe>`;
  const ways = [
    { name: texts.aloneLink, text: link },
    { name: texts.frame, text: frame },
    { name: texts.commandLine, text: commandLine(sheet.id, sheet.inputs, parts, raw) },
  ];
  return (
    <dl>
      {ways.map(({ name, text }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            <code>{text}</code>
          </dd>
          <dd>
            <CopyButton text={() => text}>{texts.copy}</CopyButton>
          </dd>
        </div>
      ))}
    </dl>
  );
}
