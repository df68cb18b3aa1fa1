/** Words in the drawing of the calculator `square-check`. */
export const squareCheck = {
  title: "The blank and its diagonals",
  left: "left",
  right: "right",
  text: (width: string, height: string, diagonalA: string, diagonalB: string, offset: string, side: string, units: string) =>
    `A blank ${width} wide and ${height} high with diagonals of ${diagonalA} and ${diagonalB}: its upper edge is shifted by ${offset} to the ${side}; ${units}.`,
  leanLarger: (units: string) => `${units}; the lean is drawn larger than it is`,
};
