import { useTexts } from "../../texts/context.ts";
import { figuresBending } from "../../texts/en/figures-bending.ts";
import { away, Line, Paper, Path, spot, Text } from "./pen.tsx";

const flanges = [
  { name: "open", angles: [90, 86, 90] },
  { name: "tapered", angles: [90, 86, 82] },
] as const;

/** Two uneven bends seen along the bend line: the leg at the left end, in the middle and at the right end. */
export default function UnevenBend() {
  const { unevenBend: texts } = useTexts(figuresBending);
  return (
    <Paper height={184} title={texts.title}>
      {flanges.map(({ name, angles }, index) => {
        const corner = spot(index * 180 + 96, 128);
        // Twice as far from 90° as the numbers say, so that it can be seen.
        const drawn = (angle: number) => 90 - 2.6 * (90 - angle);
        const seen = new Set<number>();
        return (
          <g key={name}>
            <Path d={`M${corner.x - 76} ${corner.y}H${corner.x}`} kind="outline" />
            {angles.map((angle, place) => {
              const end = away(corner, drawn(angle), 88);
              const first = !seen.has(angle);
              seen.add(angle);
              const words = angles.filter((each) => each === angle).length > 1 ? texts.ends : texts.places[place];
              return (
                <g key={place}>
                  {first && <Line from={corner} to={end} kind={angle === 90 ? "outline" : "sight"} />}
                  {first && (
                    <Text
                      spot={spot(end.x + (angle === 90 ? -4 : 4), end.y - 4 + (place === 2 ? 22 : 0))}
                      lines={words ?? ""}
                      anchor={angle === 90 ? "end" : "start"}
                      kind="label"
                    />
                  )}
                </g>
              );
            })}
            <Text spot={spot(index * 180 + 90, 154)} lines={texts[name]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
