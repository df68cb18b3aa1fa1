/** The standing cautions, by their English words: a caution that is changed in English is missing here until its Spanish is seen to. */
export const cautions: Readonly<Record<string, string>> = {
  // defer-to-manual
  "The manual and your instructor come first": "Primero el manual y su instructor",
  "This handbook explains and calculates. It does not know your machine. The machine's manual and rating plate, the rules of your shop and its trained staff always win. Use a machine only after you have been shown how.":
    "Este manual explica y calcula. No conoce su máquina. El manual y la placa de características de la máquina, las reglas de su taller y su personal formado mandan siempre. Use una máquina solo después de que le hayan enseñado cómo.",
  // pinch-points
  "Fingers out of the clamp and the leaf": "Dedos fuera del pisador y del delantal",
  "The clamp closes hard on the sheet, and the leaf meets the bed and the formed leg. Keep your fingers clear of both. One person works the brake. If two must hold a long sheet, one of them alone gives the word for every move.":
    "El pisador cierra con fuerza sobre la chapa, y el delantal llega hasta la mesa y el ala plegada. Mantenga los dedos lejos de ambos. La plegadora la maneja una sola persona. Si hay que sostener una chapa larga entre dos, una sola da la voz para cada movimiento.",
  // counterweight-and-handle
  "The leaf, its counterweight and its handle swing": "El delantal, su contrapeso y su palanca giran",
  "Stand clear of the path of the handle and the counterweight, and see that nobody is behind the machine. Lead the leaf back down by the handle. Never let it fall.":
    "Quédese fuera del recorrido de la palanca y del contrapeso, y vea que no haya nadie detrás de la máquina. Acompañe el delantal hacia abajo con la palanca. No lo deje caer nunca.",
  // stored-energy
  "A raised beam and a loaded spring can move by themselves": "Una viga levantada y un muelle cargado pueden moverse solos",
  "A raised clamp beam can drop, and a spring or counterweight can throw a lever. Before you reach in or change fingers, put the beam where it cannot fall and secure it as the manual says.":
    "La viga del pisador levantada puede caer, y un muelle o un contrapeso puede lanzar una palanca. Antes de meter la mano o cambiar segmentos, ponga la viga donde no pueda caer y asegúrela como dice el manual.",
  // loose-fingers
  "Tighten every finger before bending": "Apriete todos los segmentos antes de plegar",
  "A loose finger shifts under load, spoils the bend and can fall out when the beam rises. They are heavy: hold one with your hand below it, never above your foot.":
    "Un segmento flojo se desplaza bajo carga, estropea el pliegue y puede caer al subir la viga. Son pesados: sosténgalos con la mano por debajo, nunca por encima del pie.",
  // within-rating
  "Stay inside the rating of the machine": "No pase de la capacidad de la máquina",
  "Thicker, harder or longer work than the plate allows bends the machine, not the sheet. Never lengthen the handle. A short piece is no excuse for more thickness unless the manual says so.":
    "Un trabajo más grueso, más duro o más largo de lo que permite la placa dobla la máquina, no la chapa. No alargue nunca la palanca. Que la pieza sea corta no permite más espesor, salvo que lo diga el manual.",
  // sharp-edges
  "Sheared edges and burrs cut": "Los bordes cizallados y las rebabas cortan",
  "Take the burr off every edge before you handle or measure the piece. Carry sheet with gloves that resist cuts, and never let an edge slide through your hand. Take gloves off near turning machines, where they can be pulled in.":
    "Quite la rebaba de todos los bordes antes de manejar o medir la pieza. Lleve la chapa con guantes resistentes al corte y no deje nunca que un borde resbale por la mano. Quítese los guantes cerca de máquinas que giran, donde pueden quedar atrapados.",
  // flying-sheet
  "Sheet springs and whips": "La chapa salta y da latigazos",
  "A bent leg springs back when the clamp opens, a coiled or curled sheet opens with force, and a long leg swings up as the leaf rises. Keep your face and other people out of its way.":
    "Un ala plegada vuelve al abrir el pisador, una chapa enrollada o curvada se abre con fuerza, y un ala larga sube con el delantal. Mantenga la cara y a las demás personas fuera de su camino.",
  // eyes
  "Wear eye protection": "Use protección para los ojos",
  "Wear safety glasses when you cut, file, scribe, bend or stand beside someone who does. Metal that cracks at a bend can fly.":
    "Lleve gafas de seguridad cuando corte, lime, trace, pliegue o esté junto a quien lo haga. El metal que se agrieta en un pliegue puede salir despedido.",
  // lifting
  "Lift sheets with two people": "Levante las chapas entre dos",
  "Work out the mass first. A large sheet bends in the middle and catches the wind of a door. Lift with a partner or a lifting aid, keep the edge away from your body, and follow the lifting rules of your shop. 23 kg is the most for one person when everything is ideal, and with a sheet little is: the load is wide, thin and held away from the body.":
    "Calcule antes la masa. Una chapa grande se comba en medio y hace vela con el aire de una puerta. Levante con otra persona o con un medio de elevación, mantenga el borde lejos del cuerpo y siga las reglas de su taller para levantar. 23 kg es lo máximo para una persona cuando todo es ideal, y con una chapa poco lo es: la carga es ancha, delgada y va separada del cuerpo.",
  // cracked-bend
  "A cracked bend is scrap": "Un pliegue agrietado es chatarra",
  "A crack across the outside of a bend does not hold load and its edge is sharp. Throw the piece away and find the cause: radius too small, bent along the grain, hard metal, or a burr on the outside.":
    "Una grieta por fuera del pliegue no aguanta carga y su borde corta. Deseche la pieza y busque la causa: radio demasiado pequeño, plegado a lo largo de la laminación, metal duro o una rebaba por fuera.",
  // zinc-fume
  "Never heat zinc-coated sheet without extraction": "Nunca caliente chapa galvanizada sin extracción",
  "Heated zinc gives off zinc oxide fume. The fever it brings starts hours later, lasts 6 to 24 hours and can keep you away for two days. Weld galvanised sheet only where fume is drawn off at the tips, with your head out of it. Never anneal or braze it. Limits in the air: 5 mg/m³ over a shift (OSHA), less in other lists.":
    "El zinc calentado desprende humo de óxido de zinc. La fiebre que produce empieza horas después, dura de 6 a 24 horas y puede tenerle dos días de baja. Suelde chapa galvanizada solo donde el humo se aspire en las puntas, con la cabeza fuera de él. No la recueza ni la suelde con soldadura fuerte nunca. Límites en el aire: 5 mg/m³ en una jornada (OSHA), menos en otras listas.",
  // weld-sparks
  "Sparks fly at the eyes": "Las chispas saltan a los ojos",
  "A spot weld can spit molten metal at any moment. Wear a face shield, goggles or spectacles with side shields; clear ones do, since there is no steady arc. Close the collar and the cuffs, keep pockets shut, and put up the spark shield so that others are covered too.":
    "Un punto de soldadura puede escupir metal fundido en cualquier momento. Lleve pantalla facial, gafas cerradas o gafas con protección lateral; valen transparentes, porque no hay arco continuo. Cierre el cuello y los puños, mantenga cerrados los bolsillos y ponga la pantalla de chispas para proteger también a los demás.",
  // electrode-pinch
  "The tips close with force": "Las puntas cierran con fuerza",
  "The tips press harder than a vice and weld what is between them. Hold the sheet far out from the tips, use the guard or a holder for small parts, and let nobody else touch the foot switch. One person holds and welds.":
    "Las puntas aprietan más que un tornillo de banco y sueldan lo que haya entre ellas. Sujete la chapa lejos de las puntas, use el resguardo o un soporte para piezas pequeñas y no deje que nadie más toque el pedal. Una sola persona sujeta y suelda.",
  // welder-electricity
  "Panels stay shut": "Los paneles quedan cerrados",
  "Mains voltage is behind the panels. Only a qualified electrician opens them, with the machine switched off and locked. Switch off and let the tips cool before you dress or change them. Check that the cooling water runs.":
    "Detrás de los paneles está la tensión de la red. Solo los abre un electricista cualificado, con la máquina desconectada y bloqueada. Desconecte y deje enfriar las puntas antes de repasarlas o cambiarlas. Compruebe que corre el agua de refrigeración.",
  // magnetic-field
  "Strong magnetic field": "Campo magnético intenso",
  "Thousands of amperes make a strong magnetic field around the arms. Anyone with a pacemaker or another medical implant keeps away until their doctor and the shop allow it. Take off watches and rings, which can heat.":
    "Miles de amperios crean un campo magnético intenso alrededor de los brazos. Quien lleve marcapasos u otro implante médico se mantiene lejos hasta que su médico y el taller lo permitan. Quítese relojes y anillos, que pueden calentarse.",
  // arc-light
  "Arc light, with and without contact lenses": "Luz de arco, con y sin lentes de contacto",
  "Spot welding has no open arc; other welding in the room may have. The ultraviolet light of an arc injures an unprotected eye, with or without contact lenses, and lenses are not eye protection. Wear the helmet or goggles as for everybody, and stay behind the screens. Tell the first-aiders that you wear lenses. After dust or a splash rinse at once and take the lenses out as soon as practicable. Local rules on lenses may be stricter: follow them.":
    "La soldadura por puntos no tiene arco abierto; otra soldadura de la sala puede tenerlo. La luz ultravioleta de un arco daña el ojo sin proteger, con o sin lentes de contacto, y las lentes no protegen los ojos. Use la careta o las gafas como todos y quédese detrás de las pantallas. Diga a los socorristas que lleva lentes. Después de polvo o de una salpicadura enjuague enseguida y quítese las lentes en cuanto pueda. Las reglas locales sobre lentes pueden ser más estrictas: sígalas.",
  // hot-work
  "Hot work can start a fire": "El trabajo en caliente puede iniciar un incendio",
  "Clear paper, rags, solvents and gas bottles away, keep an extinguisher at hand, and look again half an hour afterwards. Never weld a closed container or one that held fuel. Follow the shop's rules on hot work and get the permit where one is asked for. A welded part stays hot enough to burn: mark it, and handle it with pliers.":
    "Aparte papel, trapos, disolventes y botellas de gas, tenga un extintor a mano y vuelva a mirar media hora después. No suelde nunca un recipiente cerrado o que haya tenido combustible. Siga las reglas del taller sobre trabajo en caliente y obtenga el permiso donde se pida. Una pieza soldada sigue quemando un buen rato: márquela y cójala con alicates.",
  // rivet-work
  "Chips, stems and drills": "Virutas, vástagos y brocas",
  "Clamp both sheets before you drill; a sheet that catches spins like a blade. Take the burr off each hole. The stem of a pull rivet snaps off and can fly: wear eye protection and sweep the stems up. Hammering on a rivet is loud: wear hearing protection.":
    "Sujete las dos chapas antes de taladrar; una chapa que se engancha gira como una cuchilla. Quite la rebaba de cada agujero. El vástago de un remache ciego se parte y puede salir despedido: lleve protección para los ojos y barra los vástagos. Golpear un remache hace mucho ruido: lleve protección para los oídos.",
  // furnace-heat
  "The furnace and what comes out of it burn": "El horno y lo que sale de él queman",
  "Metal that has stopped glowing still burns. Wear a face shield, heat-resistant gloves and natural-fibre clothes, use long dry tongs, and have the way to the cooling place clear before you open the door. Put up a sign at hot parts. Switch the heating off before you reach in, and do not leave it unattended.":
    "El metal que ya no brilla todavía quema. Lleve pantalla facial, guantes resistentes al calor y ropa de fibra natural, use tenazas largas y secas y tenga libre el camino al lugar de enfriamiento antes de abrir la puerta. Ponga un aviso junto a las piezas calientes. Apague la calefacción antes de meter la mano y no lo deje sin vigilancia.",
  // furnace-load
  "What must not go into the furnace": "Lo que no debe entrar en el horno",
  "No zinc-coated, painted, plated or oily sheet, no magnesium, nothing wet and no closed tube: steam and trapped air burst it. Quench only a metal whose note says so, in clean water, with the tongs dry before they go in.":
    "Ninguna chapa galvanizada, pintada, chapada o aceitada, nada de magnesio, nada mojado y ningún tubo cerrado: el vapor y el aire atrapado lo revientan. Enfríe en agua solo un metal cuya nota lo diga, en agua limpia, y con las tenazas secas antes de entrar.",
  // over-temperature
  "Aluminium melts before it glows": "El aluminio funde antes de ponerse al rojo",
  "Aluminium alloys begin to melt between about 500 and 660 °C and show no colour before. Trust the thermocouple, set the over-temperature cut-out and try it before you load.":
    "Las aleaciones de aluminio empiezan a fundir entre unos 500 y 660 °C y antes no muestran color. Fíese del termopar, ajuste el limitador de temperatura y pruébelo antes de cargar.",
  // scriber-points
  "Scribers and dividers stab": "Las puntas de trazar y los compases pinchan",
  "Keep a cork or a cap on the point, or turn it round in its handle. Carry it point down, and never in a pocket. Draw the line away from the hand that holds the rule.":
    "Tenga un corcho o un capuchón en la punta, o déle la vuelta en su mango. Llévela con la punta hacia abajo y nunca en un bolsillo. Trace la línea alejándose de la mano que sujeta la regla.",
  // centre-punch
  "Strike only a sound punch": "Golpee solo un granete sano",
  "Wear safety glasses. Grind off a head that has spread like a mushroom, since chips fly from it. Hold the punch upright with the sheet on something firm.":
    "Lleve gafas de seguridad. Esmerile una cabeza aplastada como una seta, porque saltan esquirlas. Mantenga el granete derecho, con la chapa sobre algo firme.",
  // layout-fluids
  "Layout coat, glue and alcohol burn": "El barniz de trazar, el pegamento y el alcohol arden",
  "Their vapour can catch fire and is bad to breathe. Read the label and the safety data sheet, use little, open a window or work where the air is drawn off, and keep them away from grinding, welding and the furnace. Wear gloves against the solvent, close the tin, and put rags into the metal bin with a lid.":
    "Su vapor puede prender y es malo de respirar. Lea la etiqueta y la ficha de seguridad, use poco, abra una ventana o trabaje donde se aspire el aire, y téngalos lejos del esmerilado, la soldadura y el horno. Lleve guantes contra el disolvente, cierre el bote y eche los trapos al cubo metálico con tapa.",
  // shear-blades
  "Nothing of you past the guard of the shear": "Nada de usted más allá del resguardo de la cizalla",
  "The hold-downs crush and the blades cut. A guard is right when no hand gets over, under, around or through it to the blade. Never work without it, never reach in for a scrap, and never hold a piece by hand that the hold-downs do not grip.":
    "Los pisadores aplastan y las cuchillas cortan. Un resguardo está bien cuando ninguna mano pasa por encima, por debajo, por los lados o a través de él hasta la cuchilla. No trabaje nunca sin él, no meta la mano por un retal y no sujete a mano una pieza que los pisadores no agarren.",
  // shear-hold-downs
  "The hold-downs crush more fingers than the blade": "Los pisadores aplastan más dedos que la cuchilla",
  "Most people hurt at sheet-metal shears were caught by the clamps that hold the sheet, or under the sheet itself, not by the blade. Hold the sheet from its near edge, palms on top and no fingers below it, and let go before the clamps close.":
    "A la mayoría de las personas heridas en cizallas las atraparon los pisadores que sujetan la chapa, o la propia chapa por debajo, no la cuchilla. Sujete la chapa por el borde cercano, con las palmas encima y ningún dedo debajo, y suéltela antes de que cierren los pisadores.",
  // shear-treadle
  "One person works the shear": "La cizalla la maneja una persona",
  "Two people at one shear are unsafe, unless nothing moves before both have pressed a switch of their own. A helper who carries a large sheet steps back before the cut. Whoever treads looks first: every hand on the near side of the guard, the other foot and everybody else clear of the treadle, on its way down and back up.":
    "Dos personas en una cizalla no es seguro, salvo que nada se mueva hasta que cada una haya pulsado su propio mando. Quien ayuda a llevar una chapa grande se aparta antes del corte. Quien pisa mira primero: todas las manos del lado cercano del resguardo, el otro pie y los demás fuera del pedal, al bajar y al subir.",
  // shear-offcuts
  "Nobody behind the shear": "Nadie detrás de la cizalla",
  "What is cut off drops behind the blade with sharp edges. It should land where it can be picked up without reaching in. Where it does not, fetch it only when the blade is up, still and secured.":
    "Lo que se corta cae detrás de la cuchilla con bordes afilados. Debe caer donde se pueda recoger sin meter la mano. Donde no sea así, recójalo solo con la cuchilla arriba, parada y asegurada.",
  // snips-habits
  "Snips leave edges like needles": "Las tijeras dejan bordes como agujas",
  "Do not close the blades fully: the end of the cut goes jagged. Cut a little beside the line and file to it. Keep the other hand behind the snips and away from the curl of the strip.":
    "No cierre del todo las cuchillas: el final del corte queda dentado. Corte un poco al lado de la línea y lime hasta ella. Mantenga la otra mano detrás de las tijeras y lejos del rizo de la tira.",
  // band-saw
  "No gloves at a running band saw": "Sin guantes con la sierra de cinta en marcha",
  "Wear gloves to handle the band, and none while the saw runs. Set the guides as close to the work as possible, shut the wheel doors, wear glasses, and push small work with a block, never with the fingers.":
    "Use guantes para manejar la cinta y ninguno mientras la sierra funciona. Ponga las guías lo más cerca posible de la pieza, cierre las tapas de las ruedas, lleve gafas y empuje las piezas pequeñas con un taco, nunca con los dedos.",
  // corner-cutter
  "Fingers off the table of the corner cutter": "Dedos fuera de la mesa de la escotadora",
  "Both blades come down at once. Hold the sheet well outside the guard, let the scrap fall through, and lift the blades before you turn the sheet.":
    "Las dos cuchillas bajan a la vez. Sujete la chapa bien por fuera del resguardo, deje caer el recorte y levante las cuchillas antes de girar la chapa.",
  // lock-out
  "Isolate a machine before you reach into it": "Aísle la máquina antes de meter la mano",
  "To set a blade, change a band or clear a jam, switch the machine off, lock the switch, and block what could drop or turn. Who is allowed to do this, and how, is in your shop's rules.":
    "Para ajustar una cuchilla, cambiar una cinta o quitar un atasco, desconecte la máquina, bloquee el interruptor y calce lo que pueda caer o girar. Quién puede hacerlo y cómo está en las reglas de su taller.",
  // noise
  "Sheet metal is loud": "La chapa hace mucho ruido",
  "A shear, a saw and a sheet that is dropped are loud, and loss of hearing does not come back. One published limit is 90 dB(A) for eight hours a day and 100 dB(A) for two; local limits may be lower. Wear hearing protection where your shop asks for it, and lay sheets down instead of dropping them.":
    "Una cizalla, una sierra y una chapa que cae son ruidosas, y el oído perdido no vuelve. Un límite publicado es 90 dB(A) durante ocho horas al día y 100 dB(A) durante dos; los límites locales pueden ser más bajos. Lleve protección para los oídos donde su taller lo pida y deje las chapas en su sitio en vez de soltarlas.",
  // punch-fingers
  "Fingers away from the punch": "Dedos lejos del punzón",
  "A hand punch cuts through a finger as through sheet. Hold the sheet outside the frame of the machine, keep the stripper in place, and work the lever yourself: nobody else's hand belongs near the punch while yours is on the lever.":
    "Una punzonadora de mano atraviesa un dedo como la chapa. Sujete la chapa fuera del bastidor de la máquina, deje el extractor en su sitio y mueva usted la palanca: nadie más tiene la mano cerca del punzón mientras la suya esté en la palanca.",
  // punch-and-die-match
  "See that punch and die belong together": "Compruebe que el punzón y la matriz son pareja",
  "A punch that meets the edge of its die shatters, and the pieces fly. Before the first stroke compare size, shape and letter, lower the punch slowly into the die by hand, and wear safety glasses.":
    "Un punzón que topa con el borde de su matriz se rompe, y los trozos vuelan. Antes del primer golpe compare medida, forma y letra, baje despacio a mano el punzón hasta la matriz y lleve gafas de seguridad.",
  // rolls-draw-in
  "Rolls draw hands in": "Los rodillos arrastran las manos",
  "Hands are caught mostly while the sheet is fed in, and gloves take part in many of these accidents. Push the last part with the sheet, not with your fingers. Know the stop before you start; at hand rolls the one who feeds gives the word to the one who cranks.":
    "Las manos se atrapan sobre todo al meter la chapa, y en muchos de esos accidentes intervienen los guantes. Empuje el último tramo con la chapa, no con los dedos. Sepa dónde está el paro antes de empezar; en rodillos de mano, quien alimenta da la voz a quien gira la manivela.",
  // gloves-at-rolls
  "No closed gloves at the rolls": "Sin guantes cerrados en los rodillos",
  "Carry the sheet to the rolls with gloves, then take them off, or wear fingerless ones where your shop asks for gloves. Hold the sheet back from its edge, and keep sleeves, hair and rags away.":
    "Lleve la chapa hasta los rodillos con guantes y luego quíteselos, o póngaselos sin dedos donde su taller pida guantes. Sujete la chapa lejos de su borde y mantenga apartados mangas, pelo y trapos.",
  // roll-release
  "A freed roll is heavy": "Un rodillo suelto pesa",
  "A closed tube comes off over the end of the upper roll. Hold that roll as the manual says when you free its bearing, and keep your fingers out from under it.":
    "Un tubo cerrado sale por el extremo del rodillo superior. Sujete ese rodillo como dice el manual al soltar su cojinete y no ponga los dedos debajo.",
};
