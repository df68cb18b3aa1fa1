import { useEffect, useState } from "preact/hooks";
import type { Code } from "./qr.ts";

/**
 * The code of a text; what makes it is fetched when the first one is wanted.
 * @param text - empty while it is not known yet
 * @returns undefined until it is made, "none" where the text is too long for any code or its maker could not be fetched
 */
export function useCode(text: string): Code | "none" | undefined {
  const [code, setCode] = useState<Code | "none">();
  useEffect(() => {
    if (text === "") return;
    let wanted = true;
    import("./qr.ts").then(
      ({ codeOf }) => wanted && setCode(codeOf(text) ?? "none"),
      () => wanted && setCode("none"),
    );
    return () => {
      wanted = false;
    };
  }, [text]);
  return code;
}
