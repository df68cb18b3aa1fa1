/** Words in the figures of the furnace page, by figure. */
export const figuresFurnace = {
  heatAndCool: {
    title:
      "Temperature over hours: copper to 500 degrees and quenched, 3003 aluminium to 415 degrees and out into the air, 6061 held at 413 degrees for two hours and cooled over more than five hours",
    hours: "hours; the heating up is only a sketch",
    copper: "copper: water or air",
    quickly: ["3003: out when", "hot, air"],
    slowly: "6061: held, cooled slowly",
  },
  heatColours: {
    title: "Two scales of heat colours side by side from 400 to 1100 degrees: the same words stand up to 100 degrees apart",
    oneWriter: "one writer",
    another: "another",
    steelIsAnnealed: "steel is annealed",
  },
};
