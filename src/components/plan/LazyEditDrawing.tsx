import type { ComponentType } from "preact";
import { useState } from "preact/hooks";
import type { FlatLayout } from "../../lib/part/flatten.ts";
import type { RolledSheet } from "../../lib/part/rolled/model.ts";
import { useTexts } from "../../texts/context.ts";
import { plan } from "../../texts/en/plan.ts";
import { Fold } from "../calculator/Fold.tsx";
import type { EditDrawingProps } from "./EditDrawing.tsx";

interface Props extends Omit<EditDrawingProps, "layout"> {
  /** A blank that is folded, or one that is rolled. */
  readonly layout?: FlatLayout | undefined;
  readonly sheet?: RolledSheet | undefined;
}

/** Working on the drawing: fetched when it is opened, which a phone with a short list of sizes need not do. */
export function LazyEditDrawing({ layout, sheet, ...rest }: Props) {
  const texts = useTexts(plan);
  const [Loaded, setLoaded] = useState<ComponentType<Props>>();
  const load = async () => {
    const { EditDrawing, foldedWorkpiece, rolledWorkpiece } = await import("./EditDrawing.tsx");
    setLoaded(() => ({ layout: folded, sheet: rolled, ...others }: Props) => {
      const piece = folded ? foldedWorkpiece(folded) : rolled && rolledWorkpiece(rolled);
      return piece ? <EditDrawing layout={piece} {...others} /> : null;
    });
  };
  return (
    <Fold class="plan-group" summary={texts.editOnDrawing} onOpen={() => void load()}>
      {() => Loaded && <Loaded layout={layout} sheet={sheet} {...rest} />}
    </Fold>
  );
}
