import { useEffect, useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import type { Code } from "../plan/qr.ts";
import { isOnlyHere } from "./phone.ts";

interface Props {
  readonly address: string;
  close(): void;
}

/** The numbers as a code to scan, in place of the calculator. */
export function Phone({ address, close }: Props) {
  const texts = useTexts(display);
  const [code, setCode] = useState<Code | "none">();
  useEffect(() => {
    let wanted = true;
    import("../plan/qr.ts").then(
      ({ codeOf }) => wanted && setCode(codeOf(address) ?? "none"),
      () => wanted && setCode("none"),
    );
    return () => {
      wanted = false;
    };
  }, [address]);
  return (
    <section class="phone" aria-label={texts.phoneTitle} data-address={address}>
      <div class="code">
        {code === "none" && <p class="note">{texts.phoneTooLong}</p>}
        {code !== undefined && code !== "none" && (
          <svg viewBox={`0 0 ${code.size} ${code.size}`} role="img" aria-label={texts.phoneCode} shape-rendering="crispEdges">
            <path class="code-ground" d={`M0 0h${code.size}v${code.size}H0z`} />
            <path class="code-ink" d={code.path} />
          </svg>
        )}
      </div>
      <div class="phone-words">
        <h2>{texts.phoneTitle}</h2>
        <p class="phone-how">{texts.phoneHow}</p>
        {isOnlyHere(address) && <p class="note wrong">{texts.phoneLocal}</p>}
        <p class="note phone-address">{address.split("?")[0]} …</p>
        <button type="button" class="key words" onClick={close}>
          {texts.close}
        </button>
      </div>
    </section>
  );
}
