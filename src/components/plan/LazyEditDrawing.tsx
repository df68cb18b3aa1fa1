import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import { Fold } from "../calculator/Fold.tsx";
import type { EditDrawing as Drawing, EditDrawingProps } from "./EditDrawing.tsx";

/** Working on the drawing: fetched when it is opened, which a phone with a short list of sizes need not do. */
export function LazyEditDrawing(props: EditDrawingProps) {
  const [Loaded, setLoaded] = useState<ComponentType<EditDrawingProps>>();
  const load = async () => {
    const { EditDrawing } = await import("./EditDrawing.tsx");
    setLoaded(() => EditDrawing as typeof Drawing);
  };
  return (
    <Fold class="plan-group" summary="Edit on the drawing" onOpen={() => void load()}>
      {() => Loaded && <Loaded {...props} />}
    </Fold>
  );
}
