import { useTexts } from "../../../texts/context.ts";
import { figuresMarking } from "../../../texts/en/figures-marking.ts";
import { arcPath, at, away, Line, Paper, Path, spot, Text } from "../pen.tsx";

/** The radius steps round a circle six times; halving the arcs gives twelve. */
export default function SixAndTwelve() {
  const { sixAndTwelve: texts } = useTexts(figuresMarking);
  const radius = 66;
  return (
    <Paper height={214} title={texts.title}>
      {[0, 1].map((cell) => {
        const middle = spot(84 + 172 * cell, 104);
        const places = Array.from({ length: 6 }, (_, index) => away(middle, 60 * index, radius));
        return (
          <g key={cell}>
            <circle class="centre" cx={middle.x} cy={middle.y} r={radius} />
            <Path d={`M${places.map(at).join("L")}Z`} kind="thin" />
            {places.map((place) => (
              <circle key={at(place)} class="dot" cx={place.x.toFixed(1)} cy={place.y.toFixed(1)} r={2.8} />
            ))}
            {cell === 0 ? (
              <Line from={middle} to={places[1] ?? middle} kind="sight" />
            ) : (
              <>
                <Path d={arcPath(places[0] ?? middle, 54, 66, 104)} kind="thin" />
                <Path d={arcPath(places[1] ?? middle, 54, -44, -6)} kind="thin" />
                <Line from={middle} to={away(middle, 30, 104)} kind="sight" />
              </>
            )}
            {cell === 0 && <Text spot={away(middle, 42, 36)} lines="r" anchor="middle" kind="size" />}
            {cell === 0 && <Text spot={spot(middle.x, middle.y - radius * 0.866 + 15)} lines="r" anchor="middle" kind="size" />}
            <Text spot={spot(middle.x, 202)} lines={cell === 0 ? texts.six : texts.twelve} anchor="middle" kind="name" />
          </g>
        );
      })}
    </Paper>
  );
}
