/** A small shop file with one entry of everything. */
export const testShop = `name: Test shop
brake:
  name: Brake A
  rating: { material: steel-cr, thickness: 1.6 mm, length: 1250 mm }
  fingers: [25 mm, 2 in]
  fingerHeight: 110 mm
  noseRadius: 1 mm
  shortestLeg: 8 mm
  longestLeg: 600 mm
  largestSwing: 135 deg
stock:
  - { material: steel-cr, thickness: 0.8 mm, width: 1000 mm, length: 2000 mm }
  - { material: al-3003-h14, thickness: 16 ga, width: 48 in, length: 96 in }
bends:
  - { material: steel-cr, thickness: 1.2 mm, radius: 1.2 mm, angle: 90 deg, deduction: 2.17 mm, uncertainty: 0.08 mm, pieces: 6, date: 2026-09-14 }
`;
