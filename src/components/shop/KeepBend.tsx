import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { keepBend } from "../../texts/en/keep-bend.ts";
import type { AfterProps } from "../calculator/after.ts";
import { Fold } from "../calculator/Fold.tsx";

/** Keeps the result of practice pieces on this device. What asks for metal and lot is loaded when it is opened. */
export default function KeepBend(props: AfterProps) {
  const texts = useTexts(keepBend);
  const [KeepForm, setKeepForm] = useState<ComponentType<AfterProps>>();
  const load = async () => {
    const loaded = await import("./KeepForm.tsx");
    setKeepForm(() => loaded.KeepForm);
  };
  return (
    <Fold class="elsewhere" summary={texts.summary} onOpen={load}>
      {() => KeepForm && <KeepForm {...props} />}
    </Fold>
  );
}
