### La ficha de receta y las etiquetas. Ninguna persona de lengua materna española ha leído aún estas frases.

card-carries = Conduce la corriente
card-blocks = Bloquea la corriente
card-open-carries = Pensada para conducir la corriente; la receta no permite saber si lo hace. Pruébala antes.
card-open-blocks = Pensada para bloquear la corriente; la receta no permite saber si lo hace. Pruébala antes.
card-mark-none = No lleva marca: nadie sabe aún si conduce o si bloquea.
card-mark-carries = La marca de esta masa: unos hilos atraviesan una bola redonda y clara.
card-mark-blocks = La marca de esta masa: unos hilos dan la vuelta ante un bloque cuadrado y oscuro.
card-looks-carries = Es pálida y mate si no lleva color; al secarse puede cubrirse de un velo blanco de sal.
card-looks-blocks = Es pálida y algo brillante si no lleva color.
card-looks-coloured = Está coloreada con: { $ingredients }.
card-looks-alike = Una masa que conduce y una que bloquea pueden parecer iguales: fíate de la marca, no del ojo.
card-looks-alike-open = Una masa que conduce y una que bloquea pueden parecer iguales: pruébala y no te fíes del ojo.
card-invented = Inventado: la receta y sus personajes son imaginarios.
card-heading-ingredients = Qué lleva
card-heading-steps = Qué hay que hacer
card-heading-does = Qué hará
card-heading-trial = La prueba de un minuto
card-heading-careful = Cuidado
card-heading-allergens = Alérgenos
card-for-people = Para { $people ->
    [one] una persona
   *[other] { $people } personas
}: hazla { $batches ->
    [one] una vez
   *[other] { $batches } veces
}, unos { $grams } g de masa cada vez. Estas son las cantidades para una vez.
card-column-ingredient = ingrediente
card-column-grams = pesado
card-column-measures = medido ({ $kitchen })
card-by-feel = al tacto, { $low } a { $high } g
card-and-by-feel = + { $low } a { $high } g al tacto
card-grams = { $amount } g
card-rounded = Tazas y cucharas están redondeadas para esta masa: su resistividad cambia un { $shift } %.
card-rounded-little = Tazas y cucharas están redondeadas de modo que esta masa no cambia.
card-scale = Una balanza es más segura que tazas y cucharas.

card-kitchen-us = tazas de EE. UU.
card-kitchen-us-label = tazas de 240 mL
card-kitchen-metric = tazas de 250 mL
card-kitchen-australian = tazas australianas
card-kitchen-imperial = tazas imperiales
card-kitchen-japanese = tazas japonesas, 200 mL
card-kitchen-scale = balanza

measure-cup = { $count ->
    [one] { $amount } taza
   *[other] { $amount } tazas
}
measure-tbsp = { $count ->
    [one] { $amount } cucharada
   *[other] { $amount } cucharadas
}
measure-tsp = { $count ->
    [one] { $amount } cucharadita
   *[other] { $amount } cucharaditas
}
measure-fl_oz = { $amount } oz líq.
measure-dessertspoon = { $count ->
    [one] { $amount } cuchara de postre
   *[other] { $amount } cucharas de postre
}
measure-go = { $amount } gō
measure-dash = { $count ->
    [one] { $amount } pizca
   *[other] { $amount } pizcas
}
measure-grams = { $amount } g
measure-sum = { $left } + { $right }

card-steps-own = Los pasos están en las palabras y en la lengua de quien hizo la receta.
card-steps-usual = La receta no da pasos: esta es la manera habitual.
card-step-pot-1 = { $felt ->
    [yes] Mezcla todo, menos lo que se añade al tacto, en una olla fría hasta que no queden grumos.
   *[no] Mezcla todo en una olla fría hasta que no queden grumos.
}
card-step-pot-2 = Una persona adulta lo cuece sin dejar de remover, hasta que la masa esté espesa, eche vapor y se separe de la olla.
card-step-kettle-1 = { $felt ->
    [yes] Mezcla lo seco en un cuenco, menos lo que se añade al tacto.
   *[no] Mezcla lo seco en un cuenco.
}
card-step-kettle-2 = Una persona adulta vierte el agua hirviendo con los demás líquidos y remueve hasta que sea una sola bola.
card-step-microwave-1 = { $felt ->
    [yes] Mezcla todo, menos lo que se añade al tacto, en un cuenco grande.
   *[no] Mezcla todo en un cuenco grande.
}
card-step-microwave-2 = Una persona adulta lo calienta en el microondas a ratos cortos y remueve tras cada uno, hasta que esté espeso y eche vapor.
card-step-not-cooked-1 = Mezcla lo seco. Añade los líquidos poco a poco.
card-step-not-cooked-2 = Amasa hasta que quede lisa.
card-step-cool = Deja que se enfríe hasta que tampoco el centro esté caliente.
card-step-feel = Incorpora al tacto, poco a poco: { $ingredients }, hasta que la masa no se pegue. Pesa lo que has usado.
card-step-keep = Antes de guardarla, escribe en la bolsa qué es.

card-interval = { $mean } ({ $low } a { $high })
card-resistivity = Resistividad { $value } Ω·m: 95 de cada 100 tandas deberían quedar entre estos extremos.
card-unmeasured = Calculado a partir de la receta; nadie ha medido una tanda.
card-learnt = Calculado a partir de la receta y de { $batches }.
card-batches = { $count ->
    [one] 1 tanda medida
   *[other] { $count } tandas medidas
}
card-roll-thick = Una lámpara roja, alimentada a través de 10 cm de un rollo de 2 cm de grueso: { $state }.
card-roll-thin = La misma lámpara, a través de 30 cm de un rollo de 8 mm: { $state }.
card-wall = Un tabique de 3 mm entre dos trozos (4 cm² de contacto): una lámpara roja puesta a través queda { $state }.
card-wall-breaks = Un tabique de 3 mm entre dos trozos (4 cm² de contacto): una lámpara roja puesta a través queda solo { $state }. Hazlo más grueso.
card-wall-lasts = La sal se cuela en un tabique así: renuévalo tras { $low } a { $high } horas.
card-wall-lasts-long = La sal se cuela en un tabique así: dura { $low } horas o más.
card-pack = Calculado para un portapilas de cuatro pilas AA.
card-state-dark = apagada
card-state-barely-lit = apenas encendida
card-state-dim = débil
card-state-bright = brillante
card-state-span = entre { $worst } y { $best }
card-feel = Tacto: { $feel }, hasta donde dice la receta.
card-feel-open = Tacto: de { $low } a { $high }; la receta sola no dice más.
card-feel-crumbles = quebradiza
card-feel-stiff = dura
card-feel-right = en su punto
card-feel-soft = blanda
card-feel-sticks = pegajosa
card-keeps = Se conserva en una caja cerrada de { $low } a { $high } días en la sala, de { $cold_low } a { $cold_high } días en la nevera (costumbre; nadie lo ha medido).

card-contains = Contiene: { $allergens }.
card-may-contain = Puede contener: { $allergens }.
card-contains-none = Ningún ingrediente es un alérgeno de la lista. Lee los envases.
card-list = { $left }, { $right }
card-not-food = No se come

card-careful-eaten = El { $share } % es sal. { $child } g pueden matar a un niño de { $child_mass } kg, { $dog } g enferman a un perro de { $dog_mass } kg. Si alguien comió un trozo, llama enseguida a un médico, a un centro de toxicología o a un veterinario; no provoques el vómito ni des agua con sal.
card-careful-tartrate-dog = El cremor tártaro y el ácido tartárico pueden destruir los riñones de un perro. Si un perro comió algo, llama enseguida a un veterinario.
card-careful-epsom-child = La sal de Epsom es laxante. Si un niño la comió, pregunta a un centro de toxicología.
card-careful-potassium-child = La sal de potasio puede parar un corazón. Si un niño la comió, llama enseguida a un centro de toxicología.
card-careful-glycerol-child = La glicerina puede enfermar mucho a un niño pequeño. Si un niño la comió, pregunta a un centro de toxicología.
card-careful-boron-child = El bórax es un veneno. Si alguien lo comió, llama enseguida a un centro de toxicología.
card-careful-alum = El alumbre quema la boca y el estómago. Guarda el paquete bajo llave.
card-careful-burnt-alum = El alumbre calcinado es casi el doble de fuerte que el alumbre en cristales: pésalo.
card-careful-borax = El bórax no es para masas de niños. No lo pongas.
card-careful-flour-raw = La harina cruda puede llevar gérmenes y esta masa no está cocida por dentro: nadie la prueba, todos se lavan las manos.
card-careful-flour-cooked = La harina cruda puede llevar gérmenes. Cuece hasta que toda eche vapor; la harina añadida después está cruda. Lávate las manos.
card-careful-hot = Fogón caliente, masa caliente: cocina una persona adulta, y la reparte cuando el centro esté frío.
card-careful-acid-eyes = Los ácidos pican en los ojos: vierte una persona adulta. Enjuaga un cuarto de hora y pregunta a un médico.
card-careful-salt-skin = La sal escuece: no en cortes, piel dañada ni eczema, no cerca de los ojos.
card-careful-dust = Vierte la harina desde poca altura y despacio: su polvo molesta a quien tiene asma, y arde cerca de una llama.
card-careful-slippery = El aceite y la glicerina hacen resbalar: límpialos enseguida del suelo.
card-careful-spirit = El alcohol arde: sin llamas cerca, y nunca en una olla caliente.
card-careful-small-parts = No para menores de tres años: lámparas, pilas y bolitas pueden asfixiar.
card-careful-pack-wires = Los dos cables de las pilas no se tocan nunca: se calientan.
card-careful-cells = Sin pilas de botón cerca de niños pequeños: tragadas, abren agujeros en pocas horas.
card-careful-mains = No conectes nunca la masa a un enchufe.
card-careful-colour-stains = El colorante mancha manos y tela.
card-careful-sugar-ants = El azúcar atrae hormigas y avispas, y cría moho: guárdala en frío.
card-careful-pan = La sal y el ácido atacan el aluminio desnudo: cocina en acero o esmalte.
card-careful-metal = Corta lo que se ponga verde, negro u oxidado, y saca los cables al terminar.
card-careful-mould = Tírala cuando huela, tenga manchas o se ponga viscosa.
card-careful-disposal-salt = La masa vieja, a la basura: no al desagüe, no a la tierra, nunca fuera para animales.
card-careful-disposal = La masa vieja, a la basura: no al desagüe, nunca fuera para animales.
card-careful-migration = Contiene un metal que la ley limita en los juguetes. Esta ficha no es un certificado.
card-careful-packet = Lee y sigue el envase de: { $ingredients }.
card-careful-rules = Primero van las normas locales y las personas cualificadas.

card-qr = La misma receta como archivo para Lumped.
card-qr-no-story = Esta receta como archivo para Lumped, sin su historia.
card-qr-no-steps = Esta receta como archivo para Lumped, sin historia ni pasos.
card-qr-none = Ningún teléfono leería el código de una receta tan larga: guarda su archivo.
card-qr-as-written = Sus cantidades son las de la receta tal como se escribió.
card-qr-alt = Un código cuadrado con el texto de la receta
card-foot-computed = Calculado por Lumped { $version } el { $date }.
card-foot-sources = Fuentes: { $sources }; además, costumbre y memoria.
card-unread-es = Ninguna persona de lengua materna española ha leído aún este texto.
card-foot-batch = Tanda: { $batch }, { $date }.
card-foot-batch-undated = Tanda: { $batch }.

card-date = { $day } de { $month } de { $year }
card-month-1 = enero
card-month-2 = febrero
card-month-3 = marzo
card-month-4 = abril
card-month-5 = mayo
card-month-6 = junio
card-month-7 = julio
card-month-8 = agosto
card-month-9 = septiembre
card-month-10 = octubre
card-month-11 = noviembre
card-month-12 = diciembre

card-allergen-celery = apio
card-allergen-cereals-containing-gluten = cereales que contienen gluten
card-allergen-gluten = gluten
card-allergen-crustaceans = crustáceos
card-allergen-crustacean-shellfish = crustáceos
card-allergen-eggs = huevos
card-allergen-fish = pescado
card-allergen-lupin = altramuces
card-allergen-milk = leche
card-allergen-molluscs = moluscos
card-allergen-mustard = mostaza
card-allergen-peanuts = cacahuetes
card-allergen-sesame = sésamo
card-allergen-soybeans = soja
card-allergen-sulphur-dioxide-and-sulphites = dióxido de azufre y sulfitos
card-allergen-tree-nuts = frutos de cáscara
card-allergen-wheat = trigo

tags-made = hecha el
tags-tare = vacía
tags-gross = con masa
tags-hash = receta { $hash }
tags-fold = dobla aquí
tags-qr-alt = Un código cuadrado que dice qué es
tags-foot = Corta por las rayas; dobla las etiquetas grandes por la mitad y ponlas de pie.

card-trial-mould-straw = una pajita llena de masa
card-trial-mould-barrel = un cuerpo de jeringa lleno de masa
card-trial-mould-ice-cube = un hueco de cubitera lleno de masa
card-trial-lamp = una lámpara roja
card-trial-pack = un portapilas de cuatro pilas AA
card-trial-resistor = una resistencia de { $ohms } Ω
trial-card-do-resistor = Un minuto: { $mould }, dos tornillos metidos { $depth } mm, { $pack }, { $resistor } y { $lamp }, uno tras otro.
trial-card-do-plain = Un minuto: { $mould }, dos tornillos metidos { $depth } mm, { $pack } y { $lamp }, uno tras otro.
trial-card-conducting = Brillante: vale. Débil: aprieta la masa alrededor de los tornillos; si sigue así, o apagada: no vale.
trial-card-insulating = Apagada: vale. Débil: solo para tabiques gruesos. Brillante: no vale.
trial-card-share = Pasan { $good } de 100 tandas buenas y { $passed } de 100 con un fallo ({ $bad }).
trial-card-weak = Esta prueba es débil: se equivoca con más de una de cada diez tandas buenas, o con más de una de cada diez malas. Si importa, mide la resistividad.
trial-bad-no-salt = la sal olvidada
trial-bad-spoon-of-salt = entró una cucharadita de sal
trial-bad-no-carrier = una masa que conduce poco, 5 Ω·m
