import { Paper, Path, spot, Text } from "../pen.tsx";

/** What a narrow strip may look like when it falls from the shear. */
export default function StripFaults() {
  return (
    <Paper
      height={176}
      title="Three faults of a sheared strip: bow, curved up along its length; camber, curved sideways in its own plane; twist, turned about its length"
    >
      <Path d="M12 96Q60 52 108 96L108 101Q60 57 12 101Z" kind="sheet" />
      <Path d="M12 101H108" kind="hidden" />
      <Path d="M134 66Q180 98 226 66L226 88Q180 120 134 88Z" kind="sheet" />
      <Path d="M134 66H226" kind="hidden" />
      <Path d="M254 62L346 98L340 104C312 104 284 92 250 96Z" kind="sheet" />
      <Path d="M254 62L250 96M346 98L340 104" kind="outline" />
      {(
        [
          [60, "bow", "from the side"],
          [180, "camber", "from above"],
          [300, "twist", "slanting"],
        ] as const
      ).map(([x, name, seen]) => (
        <g key={name}>
          <Text spot={spot(x, 142)} lines={name} anchor="middle" kind="big" />
          <Text spot={spot(x, 160)} lines={seen} anchor="middle" />
        </g>
      ))}
    </Paper>
  );
}
