/** Names of the metals, where their numbers come from, gauge lists and this shop's machines, as the data files have them. */
export const metals: Readonly<Record<string, string>> = {
  "Cold-rolled low-carbon steel (DC01, close to A1008 CS)": "Acero laminado en frío (bajo carbono, DC01, parecido a A1008 CS)",
  "Deep-drawing steel (DC04)": "Acero para embutir (embutición profunda, DC04)",
  "Structural steel (S235)": "Acero estructural (S235)",
  "Galvanised steel (DX51D, close to A653 CS)": "Acero galvanizado (DX51D, parecido a A653 CS)",
  "Stainless steel 304 (1.4301)": "Acero inoxidable 304 (1.4301)",
  "Stainless steel 316 (1.4401)": "Acero inoxidable 316 (1.4401)",
  "Stainless steel 430 (1.4016)": "Acero inoxidable 430 (1.4016)",
  "Aluminium 1100-O (annealed)": "Aluminio 1100-O (recocido)",
  "Aluminium 1100-H14 (half hard)": "Aluminio 1100-H14 (semiduro)",
  "Aluminium 3003-H14 (half hard)": "Aluminio 3003-H14 (semiduro)",
  "Aluminium 5052-H32 (quarter hard)": "Aluminio 5052-H32 (un cuarto de dureza)",
  "Aluminium 6061-O (annealed)": "Aluminio 6061-O (recocido)",
  "Aluminium 6061-T4 (naturally aged)": "Aluminio 6061-T4 (envejecido natural)",
  "Aluminium 6061-T6 (aged hard)": "Aluminio 6061-T6 (envejecido artificial)",
  "Aluminium 2024-O (annealed)": "Aluminio 2024-O (recocido)",
  "Aluminium 2024-T3 (aged hard, cold worked)": "Aluminio 2024-T3 (envejecido y trabajado en frío)",
  "Copper, soft (C11000 annealed)": "Cobre blando (C11000 recocido)",
  "Copper, half hard (C11000 H02)": "Cobre semiduro (C11000 H02)",
  "Brass, half hard (C26000 H02)": "Latón semiduro (C26000 H02)",
  "Titanium grade 2 (annealed)": "Titanio grado 2 (recocido)",

  typical: "valor típico",
  "middle of the typical range 140 to 275 of A1008 CS Type B; high is the EN 10130 maximum for DC01":
    "mitad del intervalo típico de 140 a 275 de A1008 CS tipo B; el alto es el máximo de EN 10130 para DC01",
  "middle of the specified range": "mitad del intervalo especificado",
  "middle of the design minimum 140 and the maximum 210": "mitad entre el mínimo de diseño, 140, y el máximo, 210",
  "minimum up to 16 mm; real sheet is stronger": "mínimo hasta 16 mm; la chapa real es más resistente",
  "middle of the typical range of A653 CS Type B": "mitad del intervalo típico de A653 CS tipo B",
  "minimum for cold-rolled strip; low is the A240 minimum": "mínimo para fleje laminado en frío; el bajo es el mínimo de A240",
  "middle of the minimums along and across the rolling direction":
    "mitad de los mínimos a lo largo y a través de la dirección de laminación",
  "typical; low is the Aluminum Design Manual minimum (read)":
    "valor típico; el bajo es el mínimo del Aluminum Design Manual (leído)",
  "typical; low is the MIL-HDBK-5J design value": "valor típico; el bajo es el valor de diseño de MIL-HDBK-5J",
  "typical; low is the MIL-HDBK-5J design value (memory)":
    "valor típico; el bajo es el valor de diseño de MIL-HDBK-5J (de memoria)",
  "typical at 0.5 % extension": "valor típico con 0,5 % de alargamiento",
  "typical; the band is the temper's limits": "valor típico; la banda son los límites del temple",
  "typical; low is the ASTM B265 minimum (memory)": "valor típico; el bajo es el mínimo de ASTM B265 (de memoria)",

  "Manufacturers' Standard gauge": "Calibre de los fabricantes (Manufacturers' Standard)",
  "Galvanised sheet gauge": "Calibre de chapa galvanizada",
  "Stainless sheet gauge": "Calibre de chapa inoxidable",
  "Brown & Sharpe gauge": "Calibre Brown & Sharpe",

  "Finger brake by the window": "Plegadora de segmentos junto a la ventana",
};
