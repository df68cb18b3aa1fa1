/** The calculators of bending: labels, helps, choices, remarks, formulas, tables. */
export const bending: Readonly<Record<string, string>> = {
  // Letters and limits that all of them share.
  Thickness: "Espesor",
  "Inside radius": "Radio interior",
  "Angle turned through": "Ángulo de giro",
  Angle: "Ángulo",
  "K-factor": "Factor K",
  "Bend allowance": "Desarrollo del pliegue",
  "Bend deduction": "Deducción de plegado",
  Setback: "Retroceso",
  Method: "Método",
  Hardness: "Dureza",
  "the outside apex, where the two outside faces would meet": "el vértice exterior, donde se cortarían las dos caras exteriores",
  "the outermost point of the bend": "el punto más exterior del pliegue",
  "Neutral line with a K-factor": "Línea neutra con un factor K",
  "Aircraft maintenance handbook (FAA)": "Manual de mantenimiento de aeronaves (FAA)",
  "DIN 6935": "DIN 6935",
  "Soft, medium, hard (machinists' handbook)": "Blando, medio, duro (manual de taller)",
  "Measured in this shop": "Medido en este taller",
  "soft, 0.55: soft brass, soft copper": "blando, 0,55: latón blando, cobre blando",
  "medium, 0.64: soft steel, aluminium, half-hard copper and brass":
    "medio, 0,64: acero blando, aluminio, cobre y latón semiduros",
  "hard, 0.71: cold-rolled and spring steel, bronze, hard copper":
    "duro, 0,71: acero laminado en frío y acero de muelles, bronce, cobre duro",
  "Hardness must be one of {}; it is “{}”.": "Dureza: debe ser una de estas: {1}; es «{2}».",
  "Measured, not the nominal gauge.": "Medido, no el calibre nominal.",
  "Inside radius of the finished bend.": "Radio interior del pliegue terminado.",
  "Legs measured to": "Alas medidas hasta",
  "the apex up to 90°, the outermost point above": "el vértice hasta 90°; por encima, el punto más exterior",
  "K-factor it stands for": "Factor K al que equivale",

  // Length of a bent strip.
  "Length of a bent strip": "Longitud de una tira plegada",
  "How long the blank must be so that the legs come out to size, and how much each bend takes up.":
    "Qué longitud debe tener el desarrollo para que las alas salgan a medida, y cuánto descuenta cada pliegue.",
  "Measured with a micrometer or caliper, not the nominal gauge.":
    "Medido con micrómetro o calibrador (pie de rey), no el calibre nominal.",
  "How far the leaf side is turned from flat; the corner left inside is 180° less this.":
    "Cuánto gira desde plano el lado del delantal; el ángulo que queda dentro es 180° menos este.",
  "Where the neutral line lies, as a fraction of the thickness from the inside face.":
    "Dónde está la línea neutra, como fracción del espesor desde la cara interior.",
  "the best fitting bend measured in this shop": "el pliegue medido en este taller que mejor corresponde",
  "From practice pieces with this sheet, radius and angle on this brake.":
    "De piezas de prueba con esta chapa, este radio y este ángulo en esta plegadora.",
  "Outside legs": "Alas exteriores",
  legs: "alas",
  Leg: "Ala",
  "In order along the strip; one bend between each two, all alike.":
    "En orden a lo largo de la tira; un pliegue entre cada dos, todos iguales.",
  "Blank length": "Longitud del desarrollo",
  "Sum of the outside legs": "Suma de las alas exteriores",
  "Σ legs": "Σ alas",
  "Number of bends": "Número de pliegues",
  "Bends about a straight line in sheet of one thickness, each leg long enough to be straight beyond the bend.":
    "Pliegues por una línea recta en chapa de un solo espesor, con alas bastante largas para quedar rectas más allá del pliegue.",
  "Published methods differ among themselves by about a quarter of a thickness a bend; measured practice pieces decide.":
    "Los métodos publicados difieren entre sí en cerca de un cuarto del espesor por pliegue; deciden las piezas de prueba medidas.",
  "Leg {} must be at least {}, the part of it that lies in {}; it is {}.":
    "Ala {1}: debe medir al menos {2}, la parte que queda en {3}; mide {4}.",
  "its bend": "su pliegue",
  "its two bends": "sus dos pliegues",
  "This stands for a neutral line outside the sheet (K = {}). Check the deduction, the radius and what the legs were measured to.":
    "Esto equivale a una línea neutra fuera de la chapa (K = {1}). Revise la deducción, el radio y hasta dónde se midieron las alas.",
  "Uses a bend deduction of {} ± {}, {}{}. By that the blank is good to ± {}.":
    "Usa una deducción de plegado de {1} ± {2}, {3}{4}. Con ella, el desarrollo vale a ± {5}.",
  ", on {}": ", en {1}",
  "What each published method says for this bend": "Lo que dice cada método publicado para este pliegue",
  "Bends measured in this metal": "Pliegues medidos en este metal",
  Measured: "Medido",
  "none of the bends measured in {} fits: the nearest has {}":
    "ninguno de los pliegues medidos en {1} corresponde: el más cercano tiene {2}",
  "no bend measured in {} is known": "no se conoce ningún pliegue medido en {1}",
  "Bend deduction is not entered, and {}. Bend practice pieces, or choose another method.":
    "Deducción de plegado: falta el valor, y {1}. Pliegue piezas de prueba o elija otro método.",
  "Practice pieces": "Piezas de prueba",
  "other thickness, {}": "otro espesor, {1}",
  "other radius, {}": "otro radio, {1}",
  "other angle, {}": "otro ángulo, {1}",
  "kept on this device": "guardado en este dispositivo",
  "in the shop’s file": "en el archivo del taller",
  ", lot {}": ", lote {1}",
  piece: "pieza",
  pieces: "piezas",

  // Methods.
  "Bend deduction is not entered. The method “measured in this shop” needs the deduction found with practice pieces.":
    "Deducción de plegado: falta el valor. El método «medido en este taller» necesita la deducción hallada con piezas de prueba.",
  "Bend deduction must be below twice the setback, {}, or nothing is left for the bend itself; it is {}.":
    "Deducción de plegado: debe ser menor que dos retrocesos, {1}, o no queda nada para el propio pliegue; es {2}.",
  "Soft group, c = 0.55": "Grupo blando, c = 0,55",
  "Medium group, c = 0.64": "Grupo medio, c = 0,64",
  "Hard group, c = 0.71": "Grupo duro, c = 0,71",
  "K 0.33 below R = 2T, 0.50 from there": "K 0,33 por debajo de R = 2T, 0,50 desde ahí",
  "Aircraft handbook (FAA)": "Manual de aeronaves (FAA)",
  "Naval aviation manual": "Manual de aviación naval",
  "Middle of the thickness, K = 0.5": "Mitad del espesor, K = 0,5",
  "Rule of thumb, ½R + 1½T off": "Regla práctica, descontar ½R + 1½T",
  "given for 90° only": "solo se da para 90°",
  "The factor table of DIN 6935 starts at R/T = {}; here it is {}, so the formula is carried on beyond its table.":
    "La tabla del factor de DIN 6935 empieza en R/T = {1}; aquí es {2}, así que la fórmula se prolonga fuera de su tabla.",
  "DIN 6935 sets the compensation to nothing for bends of less than 15°.":
    "DIN 6935 toma la compensación como nula para pliegues de menos de 15°.",
  "DIN 6935 rounds the developed length up to a full millimetre; the length here is not rounded.":
    "DIN 6935 redondea el desarrollo al milímetro entero superior; aquí la longitud no se redondea.",
  "The constants were made for aluminium aircraft sheet; the handbook's own worked channel rounds them to a hundredth of an inch.":
    "Las constantes se hicieron para chapa de aluminio de aviación; el propio ejemplo del manual las redondea a la centésima de pulgada.",
  "The rule is meant for bends made with simple tools or at the bench.":
    "La regla es para pliegues hechos con herramientas sencillas o en el banco.",
  "By DIN 6935 the inside radius must be above {} for this thickness, or the formula has no neutral line; it is {}. Choose another method.":
    "Según DIN 6935, el radio interior debe ser mayor que {1} para este espesor, o la fórmula no tiene línea neutra; es {2}. Elija otro método.",
  "The table of DIN 6935 starts at r/s = {}; it is {}.": "La tabla de DIN 6935 empieza en r/s = {1}; es {2}.",
  "A leg can be measured to the outermost point of the bend only from 90° on; the angle is {}°. Choose the apex.":
    "Un ala solo se puede medir hasta el punto más exterior del pliegue a partir de 90°; el ángulo es {1}°. Elija el vértice.",
  "A leg can be measured to the apex only up to {}°, because the outside faces hardly meet beyond it; the angle is {}°. Choose the outermost point.":
    "Un ala solo se puede medir hasta el vértice hasta {1}°, porque más allá las caras exteriores apenas se cortan; el ángulo es {2}°. Elija el punto más exterior.",

  // Formulas and their letters.
  "Bend allowance along the neutral line": "Desarrollo del pliegue por la línea neutra",
  "K-factor that an allowance stands for": "Factor K al que equivale un desarrollo",
  "Correction factor": "Factor de corrección",
  "Correction factor, DIN 6935": "Factor de corrección, DIN 6935",
  "Bend allowance, DIN 6935": "Desarrollo del pliegue, DIN 6935",
  "Bend allowance, aircraft maintenance handbook": "Desarrollo del pliegue, manual de mantenimiento de aeronaves",
  "Bend allowance by hardness group": "Desarrollo del pliegue por grupo de dureza",
  "Hardness factor": "Factor de dureza",
  "Setback to the outside apex": "Retroceso hasta el vértice exterior",
  "Setback to the outermost point of the bend": "Retroceso hasta el punto más exterior del pliegue",
  "Bend allowance from a measured deduction": "Desarrollo del pliegue a partir de una deducción medida",
  "Smallest radius from ductility": "Radio mínimo según la ductilidad",
  "Stretch of the outer face": "Alargamiento de la cara exterior",
  "Radius in thicknesses": "Radio en espesores",
  "Radius over thickness": "Radio entre espesor",

  // This shop's brake.
  "{} swings to {}; this bend is {}. Close the rest by hand or under the clamp.":
    "{1} gira hasta {2}; este pliegue es de {3}. Cierre el resto a mano o bajo el pisador.",
  "{} turns up legs from {}; leg {} is {}.": "{1} levanta alas desde {2}; el ala {3} mide {4}.",
  "{} turns up legs to {}; every leg of this strip is longer.":
    "{1} levanta alas de hasta {2}; todas las alas de esta tira son más largas.",
  "Inside radius should be at least {} for {} this thick; it is {}. A sharper bend may crack.":
    "El radio interior debería ser al menos {1} para este espesor de {2}; es {3}. Un pliegue más agudo puede agrietarse.",

  // Load on the brake.
  "Load on the brake": "Carga de la plegadora",
  "What moment bends the sheet, and how much of this shop's brake that takes.":
    "Qué momento pliega la chapa y cuánto de la plegadora de este taller exige.",
  "Length along the bend": "Longitud a lo largo del pliegue",
  "Along the bend.": "A lo largo del pliegue.",
  "Part of this shop's brake": "Parte de la plegadora de este taller",
  "Compared with the job on its rating plate, by the same formula.":
    "Comparado con el trabajo de su placa de características, con la misma fórmula.",
  "Bending moment": "Momento de plegado",
  "Part of the brake's rating": "Parte de la capacidad de la plegadora",
  Moment: "Momento",
  "Moment of the job on the plate": "Momento del trabajo de la placa",
  "Part of the rating used": "Parte usada de la capacidad",
  "The least moment that bends the sheet: its whole thickness yields and does not harden, and nothing rubs.":
    "El menor momento que pliega la chapa: todo el espesor fluye sin endurecerse y nada roza.",
  "Work hardening, a sharp radius, dull edges and friction add to it, easily a quarter or more. Stay well inside the rating.":
    "El endurecimiento, un radio agudo, los filos gastados y el roce lo aumentan, fácilmente un cuarto o más. Quédese bien por debajo de la capacidad.",
  "Compared with one rated job only. A frame, a clamp or a leaf may be the limit for short thick pieces: the plate and the manual decide.":
    "Comparado con un solo trabajo de la placa. El bastidor, el pisador o el delantal pueden ser el límite en piezas cortas y gruesas: deciden la placa y el manual.",
  "This is more than {} is rated for: {} % of {} {}, {} long. Do not bend it here.":
    "Esto supera la capacidad de {1}: {2} % de {3} de {4}, {5} de largo. No lo pliegue aquí.",
  "{} is {} long; this bend is {}.": "{1} tiene {2} de largo; este pliegue, {3}.",
  "The sheet is thicker than the {} on the plate. The moment alone would allow it, but the clamp, the fingers and the leaf may not: only the manual can say.":
    "La chapa es más gruesa que los {1} de la placa. El momento solo lo permitiría, pero quizá no el pisador, los segmentos y el delantal: solo el manual puede decirlo.",
  "By the moment alone, {} would use the whole rating in this metal at this length, and {} over the whole {} of {}.":
    "Solo por el momento, {1} usarían toda la capacidad en este metal y con esta longitud, y {2} en todos los {3} de {4}.",
  "What the spread of the yield strength does to it": "Lo que hace la dispersión del límite elástico",
  Sheet: "Chapa",
  "First yield of the outer face": "Primera fluencia de la cara exterior",
  "Part of the rating, %": "Parte de la capacidad, %",
  "Softest of this grade": "La más blanda de esta calidad",
  "Strongest of this grade": "La más resistente de esta calidad",
  "As used above": "Como se usa arriba",
  "Bending moment with the whole thickness yielding": "Momento de plegado con todo el espesor en fluencia",
  "The same for a sheet much wider than thick": "Lo mismo para una chapa mucho más ancha que gruesa",
  "Thickness on the plate": "Espesor de la placa",
  "Yield strength of the metal on the plate": "Límite elástico del metal de la placa",
  "Thickness that takes the same moment in another metal": "Espesor que pide el mismo momento en otro metal",
  "Thickness for the same moment": "Espesor para el mismo momento",
  "{} as entered: {}.": "{1}, como se escribió: {2}.",
  ", from memory": ", de memoria",
  "{} taken as {}: {}{}. A mill certificate gives the number of your sheet.":
    "{1}, se toma {2}: {3}{4}. El certificado de fábrica da el número de su chapa.",

  // Smallest radius.
  "Smallest bend radius": "Radio mínimo de plegado",
  "How sharp a bend may be before the outside cracks.": "Qué tan agudo puede ser un pliegue antes de que se agriete por fuera.",
  "Smallest inside radius": "Radio interior mínimo",
  "Across the rolling direction.": "A través de la dirección de laminación.",
  "In thicknesses": "En espesores",
  "Cold bending about a straight line, across the rolling direction; sheet free of scratches and with its burr on the inside.":
    "Plegado en frío por una línea recta, a través de la dirección de laminación; chapa sin rayas y con la rebaba por dentro.",
  "Carbon steel: sheet up to 20 mm and 640 N/mm², turned through up to 120°. Aluminium: up to ½ in, 90° bends.":
    "Acero al carbono: chapa de hasta 20 mm y 640 N/mm², giros de hasta 120°. Aluminio: hasta ½ in, pliegues de 90°.",
  "A published radius is a guide: temper, grain direction and edge quality matter as much. Bend a practice piece and look at its outside.":
    "Un radio publicado es una guía: el temple, la dirección de laminación y el borde importan lo mismo. Pliegue una pieza de prueba y mírela por fuera.",
  "The table of smallest radii goes up to a thickness of {}; it is {}.":
    "La tabla de radios mínimos llega a un espesor de {1}; es {2}.",
  "The table of smallest radii goes up to a tensile strength of {}; it is {}.":
    "La tabla de radios mínimos llega a una resistencia a la tracción de {1}; es {2}.",
  "From the reduction of area entered, {}.": "De la reducción de área escrita, {1}.",
  "From the table for a tensile strength of {}, bent across the rolling direction by up to 120°.":
    "De la tabla para una resistencia a la tracción de {1}, plegado a través de la dirección de laminación hasta 120°.",
  "From the table for {} at 90°, next greater thickness.": "De la tabla para {1} a 90°, espesor inmediato superior.",
  "{} × thickness, out of a band of {} to {} from soft to hard{}.":
    "{1} × espesor, de una banda de {2} a {3}, de blando a duro{4}.",
  " that is common practice without a source": ", práctica común sin fuente",
  "Table by tensile strength": "Tabla por resistencia a la tracción",
  "… along the rolling direction, or turned through more than 120°":
    "… a lo largo de la dirección de laminación, o con giro de más de 120°",
  "… {} of this grade, {} N/mm²": "… {1} de esta calidad, {2} N/mm²",
  softest: "la más blanda",
  strongest: "la más resistente",
  "Alloy table, {} at 90°": "Tabla por aleación, {1} a 90°",
  "{} × thickness, {}": "{1} × espesor, {2}",
  "as used for this temper": "como se usa para este temple",
  "soft end of the published band": "extremo blando de la banda publicada",
  "hard end of it": "extremo duro de ella",
  "Ductility, T (50/r − 1) with r = {} %": "Ductilidad, T (50/r − 1) con r = {1} %",
  "Design guideline for low-carbon steel: ½ T, and 0.8 mm at least":
    "Guía de diseño para acero de bajo carbono: ½ T, y 0,8 mm al menos",
  "The rule for this metal is {}, not read in its source. Take it as a first guess and bend a practice piece.":
    "La regla para este metal es {1}, no leída en su fuente. Tómela como primera estimación y pliegue una pieza de prueba.",
  "from memory": "de memoria",
  "common practice": "práctica común",
  "The fingers of this shop’s brake ({}) have a nose of {}, sharper than this. Put a strip of sheet round the nose, or use fingers with a larger one.":
    "Los segmentos de la plegadora de este taller ({1}) tienen una nariz de {2}, más aguda que esto. Ponga una tira de chapa alrededor de la nariz o use segmentos con una mayor.",
  "The rule allows a bend as sharp as the tool makes it; no bend is perfectly sharp.":
    "La regla permite un pliegue tan agudo como lo haga la herramienta; ningún pliegue es perfectamente agudo.",
  "What each published rule says for this sheet": "Lo que dice cada regla publicada para esta chapa",
  Rule: "Regla",
  "At this radius the outer face is stretched by about {}.": "Con este radio la cara exterior se alarga cerca de un {1}.",
};
