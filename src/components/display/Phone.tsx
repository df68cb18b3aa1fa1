import { useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { CodePicture } from "../scan-code/CodePicture.tsx";
import { useCode } from "../scan-code/use-code.ts";
import { isOnlyHere } from "./phone.ts";

interface Props {
  readonly address: string;
  close(): void;
}

/** The numbers as a code to scan, in place of the calculator. */
export function Phone({ address, close }: Props) {
  const texts = useTexts(display);
  const code = useCode(address);
  return (
    <section class="phone" aria-label={texts.phoneTitle} data-address={address}>
      <div class="code">
        {code === "none" && <p class="note">{texts.phoneTooLong}</p>}
        {code && code !== "none" && <CodePicture code={code} label={texts.phoneCode} />}
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
