/** Words in the drawing of the calculator `anneal`. */
export const anneal = {
  title: "Heat, hold and cool",
  heldFor: (time: string) => `the piece is held there for ${time}`,
  outAtOnce: "the piece is taken out as soon as all of it is hot",
  text: (degrees: string, held: string, cooling: string) =>
    `The furnace rises to ${degrees}; ${held}; then it is cooled ${cooling}. Temperatures are to scale, times are not.`,
  coolIt: (cooling: string) => `Cool it ${cooling}.`,
  toScale: "°C to scale, time not",
  thenOut: (degrees: string) => `${degrees}, then out`,
  heat: "heat",
  hold: "hold",
  cool: "cool",
};
