import { useTexts } from "../../../texts/context.ts";
import { figuresRolling } from "../../../texts/en/figures-rolling.ts";
import { AngleSize, Arrowhead, arcPath, at, away, Line, Note, Paper, Path, spot } from "../pen.tsx";

/** A cone's blank between the rolls, from above: the rear roll stands aslant, and the narrow end has to lag. */
export default function ConeInRolls() {
  const { coneInRolls: texts } = useTexts(figuresRolling);
  const apex = spot(330, 226);
  const [outer, inner] = [250, 96];
  const [from, to] = [140, 196];
  return (
    <Paper height={300} title={texts.title}>
      <Path
        d={`${arcPath(apex, outer, from, to)}L${at(away(apex, to, inner))}${arcPath(apex, inner, to, from, "L")}Z`}
        kind="sheet"
      />
      <Path d="M40 158H330V176H40Z" kind="tool" />
      <g transform="rotate(7 330 120)">
        <Path d="M40 108H330V126H40Z" kind="tool" />
      </g>
      <AngleSize centre={apex} radius={206} from={192} to={172} text="" kind="motion" />
      <Note to={spot(60, 168)} from={spot(44, 212)} lines={texts.frontRolls} anchor="middle" />
      <Note to={spot(80, 86)} from={spot(90, 40)} lines={texts.rearRoll} />
      <Line from={spot(306, 208)} to={spot(276, 196)} />
      <Arrowhead tip={spot(268, 193)} direction={158} />
      <Note to={spot(264, 190)} from={spot(262, 262)} lines={texts.narrowEnd} anchor="middle" />
    </Paper>
  );
}
