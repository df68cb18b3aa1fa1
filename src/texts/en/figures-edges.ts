/** Words in the figures of the pages about folded edges and the order of bends, by figure. */
export const figuresEdges = {
  boxBends: {
    title:
      "The blank of a box from above with a relief hole in each corner; the long sides are bent first, the short sides afterwards",
    bottom: "bottom",
    order: "numbers: the order of the bends",
  },
  edgeKinds: {
    title: "Four folded edges in section: closed, open with a gap, teardrop with a round loop, and double, folded twice",
    closed: { name: "closed", purpose: "stiff, flat, safe" },
    open: { name: "open", purpose: "slides over an edge" },
    teardrop: { name: "teardrop", purpose: "for metal that cracks" },
    double: { name: "double", purpose: "stiffest" },
  },
  edgeSteps: {
    title: (largestSwing: number) =>
      `Closed edge in two steps: swing to the machine's largest angle, ${largestSwing} degrees, then press the flap flat under the clamp`,
    swing: (largestSwing: number) => ["1  swing to the", `machine's end, ${largestSwing}°`],
    press: ["2  press flat under", "the clamp"],
  },
};
