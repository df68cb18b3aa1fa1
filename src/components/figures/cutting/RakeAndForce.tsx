import { loadCatalogue } from "../../../catalogue/load.ts";
import { engagedLength, parallelForce, rakedForce } from "../../../lib/cutting/shear-force.ts";
import { formatQuantity } from "../../../lib/quantity/format.ts";
import { useTexts } from "../../../texts/context.ts";
import { figuresCutting } from "../../../texts/en/figures-cutting.ts";
import { AngleSize, Paper, Path, Size, spot, Text } from "../pen.tsx";

/** The cut of the calculator on this page, on this shop's shear. */
const cut = { thickness: 1.2, length: 600 };

/** Seen from the front: parallel blades cut the whole length at once, a raked one only a short triangle. */
export default function RakeAndForce() {
  const { rakeAndForce: texts } = useTexts(figuresCutting);
  const { shop, materials } = loadCatalogue();
  const { rake } = shop.shear;
  const shearStrength = materials["steel-cr"].shearStrength.value;
  const whole = parallelForce({ ...cut, shearStrength });
  const raked = rakedForce({ thickness: cut.thickness, shearStrength, rake });
  const engaged = engagedLength({ thickness: cut.thickness, rake });
  const left = 30;
  const right = 330;
  const thick = 24;
  // The slope is drawn steeper than it is, the triangle to its share of the length drawn.
  const drawn = 96;
  const top = 206;
  const reach = 130;
  const rise = (thick / drawn) * (right - reach - drawn);
  return (
    <Paper
      height={300}
      title={texts.title(
        formatQuantity(whole, "force"),
        cut.length,
        cut.thickness,
        rake,
        formatQuantity(raked, "force"),
        engaged.toFixed(0),
      )}
    >
      <Path d={`M${left} 38H${right}V58H${left}Z`} kind="tool" />
      <Path d={`M${left} 58H${right}V${58 + thick}H${left}Z`} kind="sheet" />
      <Path d={`M${left} ${58 + thick}H${right}V${76 + thick}H${left}Z`} kind="tool" />
      <Text spot={spot(180, 124)} lines={texts.parallel(formatQuantity(whole, "force"))} anchor="middle" kind="name" />

      <Path
        d={`M${left} ${top + thick - 50}V${top + thick}H${reach}L${reach + drawn} ${top}L${right} ${top - rise}V${top - rise - 22}Z`}
        kind="tool"
      />
      <Path d={`M${reach} ${top + thick}L${reach + drawn} ${top}H${right}V${top + thick}Z`} kind="sheet" />
      <Path d={`M${reach} ${top + thick}L${reach + drawn} ${top}V${top + thick}Z`} kind="sight" />
      <Path d={`M${left} ${top + thick}H${right}V${top + thick + 18}H${left}Z`} kind="tool" />
      <Size from={spot(reach, top + thick)} to={spot(reach + drawn, top + thick)} off={-30} gap={20} text={engaged.toFixed(0)} />
      <AngleSize
        centre={spot(reach, top + thick)}
        radius={150}
        from={0}
        to={(Math.atan2(thick, drawn) * 180) / Math.PI}
        text=""
      />
      <Text spot={spot(284, top + 17)} lines={`${rake}°`} />
      <Text spot={spot(180, 288)} lines={texts.raked(formatQuantity(raked, "force"))} anchor="middle" kind="name" />
      <Text spot={spot(left + 8, top + thick + 14)} lines={texts.alreadyCut} kind="label" />
    </Paper>
  );
}
