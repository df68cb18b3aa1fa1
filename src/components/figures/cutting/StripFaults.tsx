import { Paper, Path, spot, Text } from "../pen.tsx";

/** What a narrow strip may look like when it falls from the shear. */
export default function StripFaults() {
  return (
    <Paper
      height={146}
      title="Three faults of a sheared strip: bow, curved up along its length; camber, curved sideways in its own plane; twist, turned about its length"
    >
      <Path d="M12 66Q60 22 108 66L108 71Q60 27 12 71Z" kind="sheet" />
      <Path d="M12 71H108" kind="hidden" />
      <Path d="M134 36Q180 68 226 36L226 58Q180 90 134 58Z" kind="sheet" />
      <Path d="M134 36H226" kind="hidden" />
      <Path d="M254 32L346 68L340 74C312 74 284 62 250 66Z" kind="sheet" />
      <Path d="M254 32L250 66M346 68L340 74" kind="outline" />
      {(
        [
          [60, "bow", "from the side"],
          [180, "camber", "from above"],
          [300, "twist", "slanting"],
        ] as const
      ).map(([x, name, seen]) => (
        <g key={name}>
          <Text spot={spot(x, 112)} lines={name} anchor="middle" kind="big" />
          <Text spot={spot(x, 130)} lines={seen} anchor="middle" />
        </g>
      ))}
    </Paper>
  );
}
