import type { MaterialId } from "../../../lib/catalogue.ts";
import { annealing, canAnneal } from "../../../lib/furnace/annealing.ts";
import { at, Line, Paper, Path, spot, Text } from "../pen.tsx";

/** What is drawn: quickly out, or slowly down. The way up is a sketch. */
const shown: readonly {
  readonly id: MaterialId;
  readonly name: readonly string[];
  readonly kind: "outline" | "sight" | "neutral";
}[] = [
  { id: "copper-soft", name: ["copper:", "water or air"], kind: "neutral" },
  { id: "al-3003-h14", name: ["3003: out when", "hot, air"], kind: "outline" },
  { id: "al-6061-t6", name: ["6061: held,", "cooled slowly"], kind: "sight" },
];
const hour = 3600;

/** Furnace temperature over time: metals that work alone has hardened are only made hot; heat-treated ones are held and cooled slowly. */
export default function HeatAndCool() {
  const left = 52;
  const base = 232;
  const x = (hours: number) => left + 30 * hours;
  const y = (celsius: number) => base - 0.36 * celsius;
  const up = 0.8;
  const lines = shown.map(({ id, ...look }) => {
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
    return { ...look, id, path };
  });
  return (
    <Paper
      height={290}
      title="Temperature over hours: copper to 500 degrees and quenched, 3003 aluminium to 415 degrees and out into the air, 6061 held at 413 degrees for two hours and cooled over more than five hours"
    >
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
      <Text spot={spot(346, base + 36)} lines="hours; the heating up is only a sketch" anchor="end" kind="label" />
      {lines.map(({ id, path, kind }) => (
        <Path key={id} d={`M${path.map(at).join("L")}`} kind={kind} />
      ))}
      <Text spot={spot(96, 46)} lines={shown[0]?.name.join(" ") ?? ""} kind="size" />
      <Text spot={spot(112, 178)} lines={shown[1]?.name ?? ""} kind="size" />
      <Text spot={spot(186, 83)} lines={shown[2]?.name.join(" ") ?? ""} kind="size" />
    </Paper>
  );
}
