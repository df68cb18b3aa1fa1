/** The calculators of bending that stand on the pages below it: practice pieces, springback, folded edges, fingers. */
export const bendingMore: Readonly<Record<string, string>> = {
  // Practice pieces.
  "Number of pieces": "Número de piezas",
  "Bend deduction, mean of the pieces": "Deducción de plegado, media de las piezas",
  "Sum of all legs": "Suma de todas las alas",
  "Sum of all flat lengths": "Suma de todos los desarrollos",
  "Σ flats": "Σ desarrollos",
  "Spread of the pieces": "Dispersión de las piezas",
  "Sum of the squared differences from the mean": "Suma de los cuadrados de las diferencias con la media",
  "Student's t for this count": "t de Student para este número",
  Uncertainty: "Incertidumbre",
  "Uncertainty of the mean": "Incertidumbre de la media",
  "What a bend really takes up on this brake with this sheet, from strips bent and measured, with an honest ±.":
    "Lo que un pliegue descuenta de verdad en esta plegadora con esta chapa, de tiras plegadas y medidas, con un ± honrado.",
  "Measured with a micrometer or caliper on these strips.": "Medido con micrómetro o calibrador en estas tiras.",
  "How far each strip was turned from flat, measured after it was let go.":
    "Cuánto se giró cada tira desde plano, medido después de soltarla.",
  Pieces: "Piezas",
  "Flat length": "Desarrollo",
  "Before bending.": "Antes de plegar.",
  "Leg A": "Ala A",
  "Leg B": "Ala B",
  "Outside, after bending.": "Por fuera, después de plegar.",
  "Several strips of one sheet, bent alike: same fingers, same swing, same way of the grain.":
    "Varias tiras de una misma chapa, plegadas igual: los mismos segmentos, el mismo giro, la misma dirección de laminación.",
  "The true mean lies within this in 95 of 100 cases, as far as scatter goes.":
    "La media verdadera cae dentro en 95 de 100 casos, en lo que toca a la dispersión.",
  Spread: "Dispersión",
  "Standard deviation of one piece.": "Desviación típica de una pieza.",
  "Holds for this sheet, radius, angle, tooling and brake only.":
    "Solo vale para esta chapa, este radio, este ángulo, estas herramientas y esta plegadora.",
  "The ± holds the scatter of the pieces. An error they all share, such as a caliper that reads wrong, is not in it.":
    "El ± contiene la dispersión de las piezas. Un error que todas comparten, como un calibrador que lee mal, no está en él.",
  "{} of piece {} must be at least {}, the part of it that lies in the bend; it is {}.":
    "{1} de la pieza {2}: debe medir al menos {3}, la parte que queda en el pliegue; mide {4}.",
  "Flat length of piece {} must be above {}, the straight parts of its legs, or nothing is left for the bend; it is {}.":
    "Desarrollo de la pieza {1}: debe ser mayor que {2}, las partes rectas de sus alas, o no queda nada para el pliegue; es {3}.",
  "One piece shows nothing of the scatter, so no ± can be given. Bend at least three, better {}.":
    "Una sola pieza no muestra nada de la dispersión, así que no se puede dar un ±. Pliegue al menos tres, mejor {1}.",
  "With {} pieces the ± is {} standard deviations of the mean, where many pieces need 2. Bend {} or more.":
    "Con {1} piezas el ± son {2} desviaciones típicas de la media; con muchas piezas bastan 2. Pliegue {3} o más.",
  "{} more {} would halve the ±, if they scatter alike. One single next bend falls within ± {} of the mean.":
    "{1} {2} más reducirían el ± a la mitad, si se dispersan igual. Un solo pliegue siguiente cae a ± {3} de la media.",
  "The K-factor is known to ± {}: a small ± of the deduction is a large one of K, so carry the deduction, not K.":
    "El factor K se conoce a ± {1}: un ± pequeño de la deducción es uno grande de K, así que lleve consigo la deducción, no K.",
  "All pieces agree to the last digit. That says more about the reading of the caliper than about the bends: the ± is not really nothing.":
    "Todas las piezas coinciden hasta la última cifra. Eso dice más de la lectura del calibrador que de los pliegues: el ± no es de verdad cero.",
  "Piece {} stands apart from the others ({} standard deviations from the mean, doubtful beyond {}). Measure it again; leave it out only if you find what went wrong with it.":
    "La pieza {1} se aparta de las demás ({2} desviaciones típicas de la media, dudosa por encima de {3}). Mídala otra vez; déjela fuera solo si encuentra qué falló.",
  "This stands for a neutral line outside the sheet (K = {}). Check the radius, the thickness and what the legs were measured to.":
    "Esto equivale a una línea neutra fuera de la chapa (K = {1}). Revise el radio, el espesor y hasta dónde se midieron las alas.",
  "The pieces": "Las piezas",
  Piece: "Pieza",
  "From the mean": "Desde la media",
  "stands apart": "se aparta",
  "Measured here, beside what each published method says": "Lo medido aquí, junto a lo que dice cada método publicado",
  "From the measured one": "Desde la medida",
  "Measured with these pieces": "Medida con estas piezas",
  "within the ±": "dentro del ±",
  "Use this deduction for a blank": "Usar esta deducción para un desarrollo",
  "Use it in the plan of a part": "Usarla en el plan de una pieza",

  // Springback.
  Springback: "Retorno elástico",
  "How sharp the tool must be and how far to swing so that the bend ends at the radius and angle wanted.":
    "Qué tan aguda debe ser la herramienta y cuánto girar para que el pliegue quede con el radio y el ángulo deseados.",
  "Inside radius wanted": "Radio interior deseado",
  "Of the finished bend, after it has sprung back.": "Del pliegue terminado, después del retorno.",
  "Angle wanted": "Ángulo deseado",
  "Turned through from flat, after springback.": "De giro desde plano, después del retorno.",
  "Tool radius": "Radio de la herramienta",
  "Swing the leaf to": "Girar el delantal hasta",
  Overbend: "Giro de más",
  "Tool radius over finished radius": "Radio de la herramienta entre radio terminado",
  "1: no springback. Towards 0: nearly all of it.": "1: sin retorno. Hacia 0: vuelve casi todo.",
  "Pure bending of a strip that yields at one constant stress. Work hardening, the tool's gap and stretch along the sheet are left out.":
    "Flexión pura de una tira que fluye a una tensión constante. Se dejan fuera el endurecimiento, la holgura de la herramienta y el estirado de la chapa.",
  "Meant for radii of several thicknesses. For a sharp bend it says nearly nothing: there a degree or two is usual, and a practice piece decides.":
    "Pensado para radios de varios espesores. De un pliegue agudo no dice casi nada: ahí lo usual es un grado o dos, y decide una pieza de prueba.",
  "Two sheets of one grade can differ in yield strength by half, so treat the answer as a starting value.":
    "Dos chapas de la misma calidad pueden diferir a la mitad en su límite elástico: tome la respuesta como valor de partida.",
  "Inside radius must be at most {} for this sheet and angle; it is {}. Nearly all of a wider bend is elastic: it would have to be wound more than once round its tool, and a tool of {} leaves no set at all.":
    "Radio interior: se admite como máximo {1} para esta chapa y este ángulo; es {2}. Un pliegue más amplio es casi todo elástico: habría que enrollarlo más de una vuelta en su herramienta, y una herramienta de {3} no deja deformación alguna.",
  " For this angle it reaches an inside radius of up to {}.": " Con este ángulo alcanza un radio interior de hasta {1}.",
  " It cannot make this angle in one swing at any radius.": " No puede hacer este ángulo en un giro con ningún radio.",
  "{} swings to {}; this bend needs {}{}.{} Roll a wide bend, or press the rest.":
    "{1} gira hasta {2}; este pliegue necesita {3}{4}.{5} Cilindre un pliegue amplio o prense el resto.",
  ", which no leaf can swing": ", que ningún delantal puede girar",
  "For a radius below two thicknesses the relation leaves out most of what happens; expect a degree or two more than it says.":
    "Con un radio menor que dos espesores la relación deja fuera casi todo lo que pasa; espere un grado o dos más de lo que dice.",
  "Round a tool of {} or more this sheet takes no set: it springs back flat.":
    "En una herramienta de {1} o más esta chapa no queda doblada: vuelve a quedar plana.",
  "Inside radius after springback": "Radio interior después del retorno",
  "Elastic share": "Parte elástica",
  "Springback factor": "Factor de retorno",
  "Angle to swing": "Ángulo que hay que girar",
  "Elastic share of a bend": "Parte elástica de un pliegue",
  "Tool radius must be below {}, or this sheet springs back flat; it is {}.":
    "Radio de la herramienta: debe ser menor que {1}, o esta chapa vuelve a quedar plana; es {2}.",
  "Radius after springback": "Radio después del retorno",
  "Springback factor of the angle": "Factor de retorno del ángulo",

  // Folded edges.
  "Folded edge": "Borde doblado",
  "What a folded edge adds to the flat, where its folds are scribed, and how they are made.":
    "Lo que un borde doblado añade al desarrollo, dónde se trazan sus dobleces y cómo se hacen.",
  "Kind of edge": "Tipo de borde",
  "closed: folded back and pressed flat": "cerrado: doblado hacia atrás y aplastado",
  "open: folded back with a gap": "abierto: doblado hacia atrás con hueco",
  "teardrop: rolled until the edge touches the sheet": "en gota: enrollado hasta que el borde toca la chapa",
  "double: folded back flat twice, raw edge inside": "doble: doblado y aplastado dos veces, borde vivo por dentro",
  "Width of the folded edge": "Ancho del borde doblado",
  Gap: "Hueco",
  "Finished, from the outermost point of the fold to the end of the folded part; teardrop: to where it touches.":
    "Terminado, desde el punto más exterior del doblez hasta el final de la parte doblada; en gota: hasta donde toca.",
  "Open: clear height between the faces. Teardrop: inside width of the loop.":
    "Abierto: altura libre entre las caras. En gota: ancho interior del lazo.",
  "Add to the finished size": "Añadir a la medida terminada",
  "The finished size runs to the outermost point of the fold.":
    "La medida terminada llega hasta el punto más exterior del doblez.",
  Steps: "Pasos",
  Fold: "Doblez",
  How: "Cómo",
  swing: "girar",
  "press flat": "aplastar",
  To: "Hasta",
  "Turned through from flat after this step.": "Giro desde plano después de este paso.",
  "When finished.": "Al terminar.",
  "Middle of the fold from the raw edge": "Centro del doblez desde el borde vivo",
  "On the flat.": "En el desarrollo.",
  "Closed and double: a published rule for light sheet that leaves the thickness out.":
    "Cerrado y doble: una regla publicada para chapa fina que no tiene en cuenta el espesor.",
  "Open and teardrop: worked out along the middle of the thickness, not printed in any source we know.":
    "Abierto y en gota: calculado por la mitad del espesor; no está impreso en ninguna fuente que conozcamos.",
  "Only for metal that takes so sharp a fold; see the smallest bend radius.":
    "Solo para metal que admita un doblez tan agudo; vea el radio mínimo de plegado.",
  "The rule and the geometry of the fold differ by {}. Fold a practice piece of this sheet and measure before you cut the part.":
    "La regla y la geometría del doblez difieren en {1}. Doble una pieza de prueba de esta chapa y mida antes de cortar la pieza.",
  "Worked out with the neutral line at mid-thickness. Fold a practice piece before you cut the part.":
    "Calculado con la línea neutra a mitad del espesor. Doble una pieza de prueba antes de cortar la pieza.",
  "Folded on these lines, the first flap is a little too long to lie inside the second fold. Scribe its line about {} nearer the raw edge and cut that much off.":
    "Doblada por estas líneas, la primera solapa es algo larga para caber en el segundo doblez. Trace su línea unos {1} más cerca del borde vivo y recorte esa medida.",
  "Press it onto a strip {} thick laid inside, and draw the strip out.":
    "Aplástelo sobre una tira de {1} de espesor puesta dentro y saque la tira.",
  "Close it round a rod or wire of {} diameter to keep the loop round.":
    "Ciérrelo alrededor de una varilla o alambre de {1} de diámetro para que el lazo quede redondo.",
  "{} turns up legs from {}; this edge is {} wide.": "{1} levanta alas desde {2}; este borde tiene {3} de ancho.",
  "{} swings to {}; the rest is pressed under the clamp or closed by hand.":
    "{1} gira hasta {2}; el resto se aplasta bajo el pisador o se cierra a mano.",
  "Rule and geometry": "Regla y geometría",
  Edge: "Borde",
  "Add by the rule": "Añadir según la regla",
  "Along the middle of the thickness": "Por la mitad del espesor",
  "Rule adds more by": "La regla añade de más",
  "What the folded edge adds": "Lo que añade el borde doblado",
  "Closed folded edge, by the rule": "Borde doblado cerrado, según la regla",
  "Double folded edge, by the rule": "Borde doblado doble, según la regla",
  "Angle at which the edge touches the sheet": "Ángulo con el que el borde toca la chapa",
  "Folded edge along the middle of the thickness": "Borde doblado por la mitad del espesor",
  "Gap must be above 0 for this kind of edge; it is {}. Choose closed for none.":
    "Hueco: debe ser mayor que 0 para este tipo de borde; es {1}. Para no dejar hueco elija cerrado.",
  "Width of the folded edge must be at least {} for this gap and thickness, {}; it is {}.":
    "Ancho del borde doblado: se admite al menos {1} para este hueco y este espesor, {2}; es {3}.",
  "or the edge does not reach the sheet beyond its loop": "o el borde no llega a la chapa más allá de su lazo",
  "which the round part alone takes": "que ya ocupa la parte redonda sola",

  // Fingers for a box.
  "Clearance left": "Holgura que queda",
  "Fingers together": "Segmentos juntos",
  "Fingers for a box": "Segmentos para una caja",
  "Which fingers of the brake fill the inside of a box best, so that the sides already bent up fit beside them.":
    "Qué segmentos de la plegadora llenan mejor el interior de una caja, para que los lados ya plegados quepan junto a ellos.",
  "Inside width of the box": "Ancho interior de la caja",
  "Clearance wanted": "Holgura deseada",
  "Between the inside faces of the two sides that are already bent up.":
    "Entre las caras interiores de los dos lados que ya están plegados.",
  "Left free in all, both ends together, so that the box can be taken off.":
    "Lo que queda libre en total, los dos extremos juntos, para poder sacar la caja.",
  "Fingers there are": "Segmentos que hay",
  fingers: "segmentos",
  "One entry a finger. Left empty, the fingers of this shop’s brake.":
    "Una entrada por segmento. Si se deja vacío, los segmentos de la plegadora de este taller.",
  Take: "Tomar",
  "In any order along the nose; the widest in the middle is handy.":
    "En cualquier orden a lo largo de la nariz; conviene el más ancho en medio.",
  Finger: "Segmento",
  "Both ends together. Push the fingers close and centre them.": "Los dos extremos juntos. Junte los segmentos y céntrelos.",
  "Every set of the fingers listed is tried: none fills the width better and leaves the clearance wanted.":
    "Se prueba cada combinación de los segmentos de la lista: ninguna llena mejor el ancho dejando la holgura deseada.",
  "Counts widths only. Whether the sides clear the fingers and the clamp in height is a question of the box’s depth.":
    "Solo cuenta anchos. Que los lados libren los segmentos y el pisador en altura depende de la profundidad de la caja.",
  "All the fingers together are only {}. {} of the bend would have no finger above it: make the box narrower, or bend this side before the others.":
    "Todos los segmentos juntos suman solo {1}. {2} del pliegue no tendrían segmento encima: haga la caja más estrecha o pliegue este lado antes que los otros.",
  "{} stay open, which is {} more than wanted. The corners of the bend may bow there; change the width a little, or put the open part in the middle, between two fingers.":
    "Quedan libres {1}, que son {2} más de lo deseado. Ahí pueden arquearse las esquinas del pliegue; cambie un poco el ancho o deje el hueco en medio, entre dos segmentos.",
  "With no clearance at all the box sticks on the fingers. A millimetre or two in all is usual.":
    "Sin ninguna holgura la caja se queda pegada a los segmentos. Lo usual es un milímetro o dos en total.",
  "Bend two opposite sides first, then set these fingers so that those sides rise beside them.":
    "Pliegue primero dos lados opuestos y luego ponga estos segmentos de modo que esos lados queden a su lado.",
  "From the {} fingers of {}. Its fingers are {} high: sides up to about that height clear the clamp.":
    "De los {1} segmentos de {2}. Sus segmentos tienen {3} de alto: los lados de hasta cerca de esa altura libran el pisador.",
  "On the brake and on the rack": "En la plegadora y en el estante",
  Where: "Dónde",
  "on the brake": "en la plegadora",
  "on the rack": "en el estante",
  "The list must have 1 to {} fingers; it has {}.": "La lista debe tener de 1 a {1} segmentos; tiene {2}.",
  "Inside width of the box must be at least {}, the narrowest finger and its clearance; it is {}.":
    "Ancho interior de la caja: se admite al menos {1}, el segmento más estrecho y su holgura; es {2}.",
};
