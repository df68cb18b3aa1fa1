import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { Line, Paper, Path, spot, Text } from "../pen.tsx";

/** The finished blank within the rough piece, in units of the drawing: from the left, from above. */
const rough = { width: 124, height: 70 };
const blank = { left: 12, right: 112, top: 12, bottom: 60 };

/** Four cuts that make a square blank, each resting on an edge that is already good. */
export default function SquareCuts() {
  const { squareCuts: texts } = useTexts(figuresCutting);
  const good = ["bottom", "left", "top", "right"] as const;
  const edge = {
    bottom: [blank.left, blank.bottom, blank.right, blank.bottom],
    left: [blank.left, blank.top, blank.left, blank.bottom],
    top: [blank.left, blank.top, blank.right, blank.top],
    right: [blank.right, blank.top, blank.right, blank.bottom],
  } as const;
  return (
    <Paper height={276} title={texts.title}>
      {texts.steps.map((name, step) => {
        const x0 = (step % 2) * 180 + 28;
        const y0 = step < 2 ? 14 : 148;
        const cut = (side: (typeof good)[number]) => good.indexOf(side) <= step;
        const [left, right] = [cut("left") ? blank.left : 0, cut("right") ? blank.right : rough.width];
        const [top, bottom] = [cut("top") ? blank.top : 0, cut("bottom") ? blank.bottom : rough.height];
        return (
          <g key={name[0]}>
            <Path
              d={`M${x0 + 3} ${y0}L${x0 + rough.width} ${y0 + 5}L${x0 + rough.width - 4} ${y0 + rough.height}L${x0} ${y0 + rough.height - 5}Z`}
              kind="sheet-ghost"
            />
            <Path d={`M${x0 + left} ${y0 + top}H${x0 + right}V${y0 + bottom}H${x0 + left}Z`} kind="sheet" />
            {good.slice(0, step + 1).map((side, index) => {
              const [x1, y1, x2, y2] = edge[side];
              return (
                <Line
                  key={side}
                  from={spot(
                    x0 + (side === "bottom" || side === "top" ? left : x1),
                    y0 + (side === "left" || side === "right" ? top : y1),
                  )}
                  to={spot(
                    x0 + (side === "bottom" || side === "top" ? right : x2),
                    y0 + (side === "left" || side === "right" ? bottom : y2),
                  )}
                  kind={index === step ? "sight" : "outline"}
                />
              );
            })}
            {step === 1 && (
              <Path
                d={`M${x0 - 16} ${y0 + blank.bottom}H${x0 + rough.width + 8}V${y0 + blank.bottom + 9}H${x0 - 16}Z`}
                kind="tool"
              />
            )}
            {step === 2 && (
              <Path d={`M${x0 + 10} ${y0 + blank.bottom}H${x0 + 114}V${y0 + blank.bottom + 9}H${x0 + 10}Z`} kind="tool" />
            )}
            {step === 3 && (
              <Path d={`M${x0 + blank.left} ${y0 + 10}V${y0 + 62}H${x0 + blank.left - 9}V${y0 + 10}Z`} kind="tool" />
            )}
            <Text spot={spot(x0 + rough.width / 2, y0 + 92)} lines={name} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
