/** Words in the drawing of the calculator `seam-allowance`. */
export const seamAllowance = {
  title: "What the seam adds to the flat",
  text: (kind: string, sideA: string, sideB: string, units: string) =>
    `The flat from above for a ${kind} seam: side A gets ${sideA}, side B ${sideB}; ${units}.`,
  flatFromAbove: (units: string) => `the flat from above, ${units}`,
  body: "body",
  dashed: "dashed: where the body would end without a seam",
};
