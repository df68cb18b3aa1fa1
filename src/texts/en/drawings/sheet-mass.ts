/** Words in the drawing of the calculator `sheet-mass`. */
export const sheetMass = {
  title: "The sheet beside a door",
  text: (wide: string, high: string, thickness: string, mass: string, width: string, height: string, units: string) =>
    `A sheet of ${wide} by ${high} and ${thickness} thick, ${mass}, drawn to one scale with a door opening of ${width} by ${height}; ${units}.`,
  door: (units: string, width: string, height: string) => `${units}; the door is ${width} × ${height}`,
};
