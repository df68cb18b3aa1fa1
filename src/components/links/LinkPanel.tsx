import { useEffect, useState } from "preact/hooks";
import { addressParts, type Fixed, formQuery, queryText } from "../../lib/address.ts";
import type { Input, Inputs, Raw } from "../../lib/inputs.ts";
import type { LengthView } from "../../lib/quantity/format.ts";
import type { Worksheet } from "../../lib/worksheet.ts";
import { useLanguage, useTexts } from "../../texts/context.ts";
import { links } from "../../texts/en/links.ts";
import { addressParameters } from "../calculator/address-bar.ts";
import { CopyButton } from "../calculator/CopyButton.tsx";
import { commandLine } from "../calculator/command-line.ts";
import { CodePicture } from "../scan-code/CodePicture.tsx";
import { useCode } from "../scan-code/use-code.ts";
import { askedUnits, unitsKey, unitsPart } from "./asked-units.ts";
import { frameHtml, heightScript } from "./frame-html.ts";
import styles from "./link-panel.css?url";
import { wholeAddress } from "./page-link.ts";

export interface LinkPanelProps {
  /** Names the form in addresses of this page. */
  readonly owner: string;
  readonly title: string;
  /** Inputs with the start values of this page as their defaults. */
  readonly inputs: Inputs;
  /** Keys of the inputs that matter with the values at hand. */
  readonly shown: readonly string[];
  readonly raw: Raw;
  readonly fixed: Fixed;
  /** Path the site is published under, without a slash at its end. */
  readonly root: string;
  /** The page of this form alone. */
  readonly embed: {
    readonly owner: string;
    readonly inputs: Inputs;
    readonly path: string;
    /** About how tall it is in a column of a course page [px]. */
    readonly height: number;
  };
  /** Place of the form on its page, `#bend-length`. */
  readonly hash: string;
  /** Long addresses of this form may be packed. */
  readonly packs?: boolean;
  /** For the command line. */
  readonly sheet?: Worksheet;
}

interface Made {
  readonly link: string;
  readonly frame: string;
}

async function ownQuery(owner: string, inputs: Inputs, raw: Raw, fixed: Fixed, packs: boolean): Promise<string> {
  const query = formQuery(owner, inputs, raw, fixed);
  if (!packs) return query;
  const { sharedQuery } = await import("../packed.ts");
  return sharedQuery(owner, query);
}

/** The link of the form and its frame, with what was chosen to be fixed. */
async function make(props: LinkPanelProps, fixed: Fixed, units: LengthView | ""): Promise<Made> {
  const { owner, inputs, raw, embed, packs = false, hash, title } = props;
  const others = addressParameters().filter(([name]) => !name.startsWith(`${owner}.`) && name !== unitsKey);
  const own = await ownQuery(owner, inputs, raw, fixed, packs);
  const alone = await ownQuery(embed.owner, embed.inputs, raw, fixed, packs);
  return {
    link: wholeAddress(location.pathname, [queryText(others), own, unitsPart(units)]) + hash,
    frame: frameHtml(wholeAddress(embed.path, [alone, unitsPart(units)]), title, embed.height),
  };
}

/** Units of the switch of this page, with their names in its language. */
function unitChoices(): (readonly [view: string, name: string])[] {
  const radios = document.querySelectorAll<HTMLInputElement>("[data-units-switch] input");
  return [...radios].map(({ value, ariaLabel }) => [value, ariaLabel ?? value] as const);
}

/** What an input holds, in few words. */
function valueText(input: Input, raw: Raw, key: string): string {
  const given = raw[key] ?? input.default;
  if (typeof given !== "string") return "";
  return input.kind === "choice" ? (input.choices[given] ?? given) : given;
}

/** Copies the form as a link, a frame or a code, with values fixed and units set by the one who copies. */
export function LinkPanel(props: LinkPanelProps) {
  const { inputs, shown, raw, root, sheet } = props;
  const language = useLanguage();
  const texts = useTexts(links);
  const [keys, setKeys] = useState<readonly string[]>(props.fixed.keys);
  const [units, setUnits] = useState<LengthView | "">(() => askedUnits() ?? "");
  const [made, setMade] = useState<Made>();
  const [showCode, setShowCode] = useState(false);

  const fixed: Fixed = { keys: Object.keys(inputs).filter((key) => keys.includes(key)), unknown: [] };
  const state = JSON.stringify([fixed.keys, units, raw]);
  useEffect(() => {
    let wanted = true;
    void make(props, fixed, units).then((next) => wanted && setMade(next));
    return () => {
      wanted = false;
    };
  }, [state]);

  const offered = Object.keys(inputs).filter((key) => shown.includes(key) || keys.includes(key));
  const toggle = (key: string, chosen: boolean) => setKeys(chosen ? [...keys, key] : keys.filter((each) => each !== key));
  return (
    <div class="link-panel">
      <link rel="stylesheet" href={styles} />
      <p>
        {texts.lead} <a href={`${root}/links/`}>{texts.more}</a>
      </p>
      <fieldset>
        <legend>{texts.fixed}</legend>
        <ul>
          {offered.map((key) => (
            <li key={key}>
              <label>
                <input
                  type="checkbox"
                  autocomplete="off"
                  checked={keys.includes(key)}
                  onChange={(event) => toggle(key, event.currentTarget.checked)}
                />
                <span>
                  {language.say(inputs[key]?.label ?? key)}{" "}
                  <span class="quiet">{language.say(valueText(inputs[key] as Input, raw, key))}</span>
                </span>
              </label>
            </li>
          ))}
        </ul>
        <div class="actions">
          <button type="button" onClick={() => setKeys(offered)}>
            {texts.all}
          </button>
          <button type="button" onClick={() => setKeys([])}>
            {texts.none}
          </button>
        </div>
      </fieldset>
      <label class="link-units">
        {texts.units}
        <select value={units} autocomplete="off" onChange={(event) => setUnits(event.currentTarget.value as LengthView | "")}>
          <option value="">{texts.unitsOwn}</option>
          {unitChoices().map(([view, long]) => (
            <option key={view} value={view}>
              {long}
            </option>
          ))}
        </select>
      </label>
      {made ? (
        <dl>
          <Copied name={texts.link} text={made.link} button={texts.copyLink} />
          <Copied name={texts.frame} text={made.frame} button={texts.copyFrame} />
          <Copied name={texts.script} text={heightScript} button={texts.copyScript} />
          <div>
            <dt>{texts.code}</dt>
            <dd class="link-code">
              {showCode ? (
                <LinkCode text={made.link} />
              ) : (
                <button type="button" onClick={() => setShowCode(true)}>
                  {texts.showCode}
                </button>
              )}
            </dd>
          </div>
          {sheet && (
            <Copied
              name={texts.commandLine}
              text={commandLine(sheet.id, sheet.inputs, addressParts(sheet.inputs, raw), raw)}
              button={texts.copyCommandLine}
            />
          )}
        </dl>
      ) : (
        <p>{texts.packing}</p>
      )}
    </div>
  );
}

function Copied({ name, text, button }: { readonly name: string; readonly text: string; readonly button: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <code>{text}</code>
      </dd>
      <dd>
        <CopyButton text={() => text}>{button}</CopyButton>
      </dd>
    </div>
  );
}

function LinkCode({ text }: { readonly text: string }) {
  const texts = useTexts(links);
  const code = useCode(text);
  if (code === undefined) return <p>{texts.packing}</p>;
  if (code === "none") return <p>{texts.codeTooLong}</p>;
  return <CodePicture code={code} label={texts.codeName} />;
}
