import { useTexts } from "../../texts/context.ts";
import { figuresSpringback } from "../../texts/en/figures-springback.ts";
import { at, Line, Note, Paper, Path, Size, spot, Text } from "./pen.tsx";

/** A pull test in outline: the metal first stretches and would go back, then gives way; let go, it keeps only part of the stretch. */
export default function StressStrain() {
  const { stressStrain: texts } = useTexts(figuresSpringback);
  const origin = spot(52, 188);
  const yieldAt = spot(104, 84);
  const loaded = spot(262, 70);
  // Unloading runs parallel to loading, whatever the point it starts from.
  const slope = (origin.y - yieldAt.y) / (yieldAt.x - origin.x);
  const kept = spot(loaded.x - (origin.y - loaded.y) / slope, origin.y);
  return (
    <Paper height={252} title={texts.title}>
      <Line from={origin} to={spot(336, origin.y)} />
      <Line from={origin} to={spot(origin.x, 36)} />
      <Path d={`M${at(origin)}L${at(yieldAt)}Q${at(spot(120, 76))} ${at(loaded)}`} kind="outline" />
      <Line from={loaded} to={kept} kind="motion" />
      <Line from={loaded} to={spot(loaded.x, origin.y)} kind="hidden" />
      <Size from={origin} to={kept} off={-26} text={texts.stays} gap={2} />
      <Size from={kept} to={spot(loaded.x, origin.y)} off={-26} text={texts.springs} gap={2} />
      <Note to={yieldAt} from={spot(116, 52)} lines={texts.yieldStrength} />
      <Note to={spot((origin.x + yieldAt.x) / 2, (origin.y + yieldAt.y) / 2)} from={spot(104, 150)} lines={texts.slope} />
      <Note to={spot((loaded.x + kept.x) / 2, (loaded.y + kept.y) / 2)} from={spot(272, 132)} lines={texts.letGo} />
      <Text spot={spot(40, 26)} lines={texts.stress} kind="label" />
      <Text spot={spot(336, 244)} lines={texts.stretchOfFibre} anchor="end" kind="label" />
    </Paper>
  );
}
