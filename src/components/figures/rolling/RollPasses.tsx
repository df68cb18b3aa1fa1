import { loadCatalogue } from "../../../catalogue/load.ts";
import { runWorksheet } from "../../../lib/worksheet.ts";
import rollSetting from "../../../lib/worksheets/roll-setting.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { Paper, spot, Text } from "../pen.tsx";
import { sheetPath, shopRolls } from "./rolls.ts";

/** The passes of the example on the page: first, one in the middle, last; rolls to scale. */
export default function RollPasses() {
  const { rollPasses: texts } = useTexts(figuresRolling);
  const catalogue = loadCatalogue();
  const { answer, values } = runWorksheet(rollSetting, {}, catalogue);
  if (!answer || !values) throw new Error("The example of the rolling page has no setting");
  const { passes } = answer.outputs;
  const steel = catalogue.materials[values.material];
  const strip = { thickness: values.thickness, yield: steel.yield.value, elasticModulus: steel.elasticModulus.value };
  const last = passes.length - 1;
  const shown = [0, Math.floor(last / 2), last].flatMap((index) => passes[index] ?? []);
  const { front, rear, spacing } = shopRolls();
  return (
    <Paper height={222} title={texts.title}>
      {shown.map((pass, index) => {
        const view = { pinch: spot(38 + index * 120, 126), scale: 0.56 };
        const r = view.scale * front;
        return (
          <g key={pass.pass}>
            <circle class="tool" cx={view.pinch.x} cy={view.pinch.y - view.scale * strip.thickness - r} r={r} />
            <circle class="tool" cx={view.pinch.x} cy={view.pinch.y + r} r={r} />
            <circle
              class="tool"
              cx={view.pinch.x + view.scale * spacing}
              cy={view.pinch.y + view.scale * (rear - (pass.rise ?? 0))}
              r={view.scale * rear}
            />
            <path
              class="outline"
              d={sheetPath(view, { rise: pass.rise ?? 0, strip, before: 52, after: index === 2 ? 190 : 90 })}
            />
            <Text
              spot={spot(60 + index * 120, 190)}
              lines={texts.pass(pass.pass, Math.round(pass.radius ?? 0))}
              anchor="middle"
              kind="name"
            />
          </g>
        );
      })}
    </Paper>
  );
}
