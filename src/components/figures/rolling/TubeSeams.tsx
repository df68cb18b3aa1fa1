import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { arcPath, at, away, Paper, spot, Text } from "../pen.tsx";

/** Three seams of a tube in section: edges that meet, a lap, and a folded seam. */
export default function TubeSeams() {
  const { tubeSeams: texts } = useTexts(figuresRolling);
  const r = 40;
  return (
    <Paper height={168} title={texts.title}>
      {[60, 180, 300].map((x, index) => {
        const centre = spot(x, 76);
        const top = away(centre, 90, r);
        return (
          <g key={x}>
            {index === 0 && <path class="outline" d={arcPath(centre, r, 92, 448 - 0.5)} />}
            {index === 1 && (
              <path
                class="outline"
                d={`${arcPath(centre, r, 104, 104 + 200)}${arcPath(centre, r, 304, 424, "L")}A${r + 20} ${r + 20} 0 0 0 ${at(away(centre, 118, r + 5))}`}
              />
            )}
            {index === 2 && (
              <path
                class="outline"
                d={`${arcPath(centre, r, 104, 304)}${arcPath(centre, r, 304, 422, "L")}L${at(spot(top.x + 15, top.y - 10))}H${top.x - 14}V${top.y - 3}H${top.x + 8}M${at(away(centre, 104, r))}H${top.x + 13}V${top.y - 6.5}H${top.x - 9}`}
              />
            )}
            <Text
              spot={spot(x, 140)}
              lines={
                [
                  ["butted", "adds nothing"],
                  ["lap", "adds its width"],
                  ["folded seam", "hooks first"],
                ][index] ?? ""
              }
              anchor="middle"
              kind="name"
            />
          </g>
        );
      })}
    </Paper>
  );
}
