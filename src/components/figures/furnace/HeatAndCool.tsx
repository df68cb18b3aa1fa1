import { annealing, canAnneal } from "../../../lib/furnace/annealing.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresFurnace } from "../../../texts/en/figures-furnace.ts";
import { at, Line, Paper, Path, spot, Text } from "../pen.tsx";

/** What is drawn: quickly out, or slowly down. The way up is a sketch. */
const shown = [
  { id: "copper-soft", kind: "neutral" },
  { id: "al-3003-h14", kind: "outline" },
  { id: "al-6061-t6", kind: "sight" },
] as const;
const hour = 3600;

/** Furnace temperature over time: metals that work alone has hardened are only made hot; heat-treated ones are held and cooled slowly. */
export default function HeatAndCool() {
  const { heatAndCool: texts } = useTexts(figuresFurnace);
  const left = 52;
  const base = 232;
  const x = (hours: number) => left + 30 * hours;
  const y = (celsius: number) => base - 0.36 * celsius;
  const up = 0.8;
  const lines = shown.map(({ id, kind }) => {
    const how = annealing[id];
    if (!canAnneal(how)) throw new Error(`${id} is not annealed here and cannot be drawn`);
    const { temperature, hold, slow } = how;
    const held = up + Math.max(hold / hour, 0.12);
    const slowly = slow ? held + (temperature - slow.to) / slow.rate : held;
    const cool = id.startsWith("copper") ? 0.08 : 1.1;
    const last = slow?.to ?? temperature;
    const path = [
      spot(x(0), y(20)),
      spot(x(up), y(temperature)),
      spot(x(held), y(temperature)),
      spot(x(slowly), y(last)),
      spot(x(slowly + cool), y(20)),
    ];
    return { id, kind, path };
  });
  return (
    <Paper height={290} title={texts.title}>
      {[0, 100, 200, 300, 400, 500].map((celsius) => (
        <g key={celsius}>
          <Line from={spot(left, y(celsius))} to={spot(346, y(celsius))} />
          <Text spot={spot(left - 6, y(celsius) + 4)} lines={`${celsius}`} anchor="end" kind="size" />
        </g>
      ))}
      {[0, 2, 4, 6, 8].map((hours) => (
        <Text key={hours} spot={spot(x(hours), base + 18)} lines={`${hours}`} anchor="middle" kind="size" />
      ))}
      <Text spot={spot(12, 26)} lines="°C" kind="label" />
      <Text spot={spot(346, base + 36)} lines={texts.hours} anchor="end" kind="label" />
      {lines.map(({ id, path, kind }) => (
        <Path key={id} d={`M${path.map(at).join("L")}`} kind={kind} />
      ))}
      <Text spot={spot(96, 46)} lines={texts.copper} kind="size" />
      <Text spot={spot(112, 178)} lines={texts.quickly} kind="size" />
      <Text spot={spot(186, 83)} lines={texts.slowly} kind="size" />
    </Paper>
  );
}
