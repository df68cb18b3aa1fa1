import { useEffect, useState } from "preact/hooks";
import { useTexts } from "../../texts/context.ts";
import { sheet } from "../../texts/en/sheet.ts";
import { deviceStore } from "../shop/shelf.ts";
import { findOffcuts, type KeptOffcut, keepOffcuts, offcutShelf } from "./offcut-shelf.ts";

export interface Offcuts {
  readonly offcuts: readonly KeptOffcut[];
  /** Why nothing can be kept; empty where it can. */
  readonly trouble: string;
  /** Changes the list as it is on the device now, which another tab may have changed. */
  change(next: (offcuts: readonly KeptOffcut[]) => readonly KeptOffcut[]): void;
}

/** The offcuts kept on this device. */
export function useOffcuts(): Offcuts {
  const texts = useTexts(sheet);
  const [offcuts, setOffcuts] = useState<readonly KeptOffcut[]>([]);
  const [trouble, setTrouble] = useState("");
  const read = () => {
    const { kept, trouble: found } = findOffcuts(deviceStore());
    const list = kept?.offcuts ?? [];
    setOffcuts(list);
    setTrouble(
      !found
        ? ""
        : found.why === "unreadable"
          ? texts.storageUnreadable(found.movedTo)
          : found.why === "newer"
            ? texts.storageNewer
            : texts.storageOff,
    );
    return found && found.why !== "unreadable" ? undefined : list;
  };
  useEffect(() => {
    const onStorage = ({ key }: StorageEvent) => {
      if (key === null || key === offcutShelf) read();
    };
    read();
    addEventListener("storage", onStorage);
    return () => removeEventListener("storage", onStorage);
  }, []);
  return {
    offcuts,
    trouble,
    change(next) {
      const now = read();
      if (!now) return;
      const list = next(now);
      if (keepOffcuts(deviceStore(), list)) setOffcuts(list);
      else setTrouble(texts.storageOff);
    },
  };
}
