import { away, Line, Paper, Path, spot, Text } from "./pen.tsx";

const flanges = [
  { name: "open in the middle", angles: [90, 86, 90], why: "machine gives way" },
  { name: "tapered", angles: [90, 86, 82], why: "finger setback uneven" },
];

/** Two uneven bends seen along the bend line: the leg at the left end, in the middle and at the right end. */
export default function UnevenBend() {
  return (
    <Paper
      height={184}
      title="Legs of two uneven bends seen along the bend: one is open in the middle, the other changes from end to end"
    >
      {flanges.map(({ name, angles, why }, index) => {
        const corner = spot(index * 180 + 96, 128);
        const places = ["left", "middle", "right"];
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
              const words = angles.filter((each) => each === angle).length > 1 ? "ends" : places[place];
              return (
                <g key={places[place]}>
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
            <Text spot={spot(index * 180 + 90, 154)} lines={[name, why]} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
