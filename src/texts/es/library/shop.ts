/** Names that the shop's file and the list of marking tools give, as the shop's screen shows them. */
export const shopNames: Readonly<Record<string, string>> = {
  "Foot shear at the sheet rack": "Cizalla de pedal junto al estante de chapa",
  "Corner cutter on the bench": "Escantonadora del banco",
  "Vertical band saw": "Sierra de cinta vertical",
  "Deep-throat hand punch": "Punzonadora manual de garganta profunda",
  "Slip rolls at the back wall": "Cilindradora de la pared del fondo",
  "Pedestal spot welder beside the rolls": "Punteadora de pedestal junto a la cilindradora",
  "Bench furnace": "Horno de banco",

  "Steel rule and scriber": "Regla de acero y punta",
  "Combination square set with its rule": "Escuadra combinada con regla",
  "Caliper scribed from the edge": "Calibrador, desde el borde",
  "Height gauge on a surface plate": "Gramil sobre mesa de planitud",
};
