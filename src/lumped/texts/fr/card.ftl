### La fiche de recette et les étiquettes. Aucun francophone de naissance n'a encore relu ces phrases.

card-carries = Conduit le courant
card-blocks = Bloque le courant
card-open-carries = Censée conduire le courant ; la recette ne permet pas de le savoir. Essayez-la d’abord.
card-open-blocks = Censée bloquer le courant ; la recette ne permet pas de le savoir. Essayez-la d’abord.
card-mark-none = Elle ne porte pas de marque : personne ne sait encore si elle conduit ou si elle bloque.
card-mark-carries = La marque de cette pâte : des fils traversent une boule ronde et claire.
card-mark-blocks = La marque de cette pâte : des fils font demi-tour devant un bloc carré et sombre.
card-looks-carries = Elle est pâle et mate si elle n’est pas colorée ; en séchant, elle peut se couvrir d’un voile de sel blanc.
card-looks-blocks = Elle est pâle et un peu brillante si elle n’est pas colorée.
card-looks-coloured = Elle est colorée avec : { $ingredients }.
card-looks-alike = Une pâte qui conduit et une pâte qui bloque peuvent se ressembler tout à fait : fiez-vous à la marque, pas à l’œil.
card-looks-alike-open = Une pâte qui conduit et une pâte qui bloque peuvent se ressembler tout à fait : essayez-la, ne vous fiez pas à l’œil.
card-invented = Inventé : la recette et ses personnages sont imaginaires.
card-heading-ingredients = Ce qu’il faut
card-heading-steps = Ce qu’il faut faire
card-heading-does = Ce qu’elle fera
card-heading-trial = L’essai d’une minute
card-heading-careful = Attention
card-heading-allergens = Allergènes
card-for-people = Pour { $people ->
    [one] une personne
   *[other] { $people } personnes
} : à faire { $batches } fois, environ { $grams } g de pâte à chaque fois. Voici les quantités pour une fois.
card-column-ingredient = ingrédient
card-column-grams = pesé
card-column-measures = mesuré ({ $kitchen })
card-by-feel = au toucher, { $low } à { $high } g
card-and-by-feel = + { $low } à { $high } g au toucher
card-grams = { $amount } g
card-rounded = Tasses et cuillères sont arrondies pour cette pâte : sa résistivité change de { $shift } %.
card-rounded-little = Tasses et cuillères sont arrondies de façon que cette pâte ne change pas.
card-scale = Une balance est plus sûre que des tasses et des cuillères.

card-kitchen-us = tasses des États-Unis
card-kitchen-us-label = tasses de 240 mL
card-kitchen-metric = tasses de 250 mL
card-kitchen-australian = tasses australiennes
card-kitchen-imperial = tasses impériales
card-kitchen-japanese = tasses japonaises, 200 mL
card-kitchen-scale = balance

measure-cup = { $count ->
    [one] { $amount } tasse
   *[other] { $amount } tasses
}
measure-tbsp = { $amount } c. à soupe
measure-tsp = { $amount } c. à café
measure-fl_oz = { $amount } oz liq.
measure-dessertspoon = { $amount } c. à dessert
measure-go = { $amount } gō
measure-dash = { $count ->
    [one] { $amount } pincée
   *[other] { $amount } pincées
}
measure-grams = { $amount } g
measure-sum = { $left } + { $right }

card-steps-own = Les étapes sont dans les mots et dans la langue de l’auteur de la recette.
card-steps-usual = La recette ne donne pas d’étapes : voici la façon habituelle.
card-step-pot-1 = { $felt ->
    [yes] Mélangez tout, sauf ce qui s’ajoute au toucher, dans une casserole froide, jusqu’à ce qu’il n’y ait plus de grumeaux.
   *[no] Mélangez tout dans une casserole froide, jusqu’à ce qu’il n’y ait plus de grumeaux.
}
card-step-pot-2 = Un adulte fait cuire en remuant sans cesse, jusqu’à ce que la pâte soit épaisse, fume et se détache de la casserole.
card-step-kettle-1 = { $felt ->
    [yes] Mélangez les ingrédients secs dans un saladier, sauf ce qui s’ajoute au toucher.
   *[no] Mélangez les ingrédients secs dans un saladier.
}
card-step-kettle-2 = Un adulte verse l’eau bouillante avec les autres liquides et remue jusqu’à obtenir une seule boule.
card-step-microwave-1 = { $felt ->
    [yes] Mélangez tout, sauf ce qui s’ajoute au toucher, dans un grand saladier.
   *[no] Mélangez tout dans un grand saladier.
}
card-step-microwave-2 = Un adulte chauffe au micro-ondes par petits coups et remue après chacun, jusqu’à ce que la pâte soit épaisse et fume.
card-step-not-cooked-1 = Mélangez les ingrédients secs. Ajoutez les liquides peu à peu.
card-step-not-cooked-2 = Pétrissez jusqu’à ce que la pâte soit lisse.
card-step-cool = Laissez refroidir jusqu’à ce que le milieu, lui aussi, ne soit plus chaud.
card-step-feel = Incorporez au toucher, peu à peu : { $ingredients }, jusqu’à ce que la pâte ne colle plus. Pesez ce que vous avez pris.
card-step-keep = Avant de la ranger, écrivez sur le sachet ce que c’est.

card-interval = { $mean } ({ $low } à { $high })
card-resistivity = Résistivité { $value } Ω·m : 95 fournées sur 100 devraient se trouver entre ces bornes.
card-unmeasured = Calculé d’après la recette ; personne n’a mesuré de fournée.
card-learnt = Calculé d’après la recette et { $batches }.
card-batches = { $count ->
    [one] 1 fournée mesurée
   *[other] { $count } fournées mesurées
}
card-roll-thick = Une lampe rouge, alimentée à travers 10 cm d’un boudin de 2 cm d’épaisseur : { $state }.
card-roll-thin = La même lampe, à travers 30 cm d’un boudin de 8 mm : { $state }.
card-wall = Une cloison de 3 mm entre deux morceaux (4 cm² en contact) : une lampe rouge posée en travers reste { $state }.
card-wall-breaks = Une cloison de 3 mm entre deux morceaux (4 cm² en contact) : une lampe rouge posée en travers est seulement { $state }. Faites-la plus épaisse.
card-wall-lasts = Le sel s’infiltre dans une telle cloison : refaites-la après { $low } à { $high } heures.
card-wall-lasts-long = Le sel s’infiltre dans une telle cloison : elle tient { $low } heures ou plus.
card-pack = Calculé pour un bloc de quatre piles AA.
card-state-dark = éteinte
card-state-barely-lit = à peine allumée
card-state-dim = faible
card-state-bright = vive
card-state-span = entre { $worst } et { $best }
card-feel = Toucher : { $feel }, autant que la recette le dise.
card-feel-open = Toucher : de { $low } à { $high } ; la recette seule n’en dit pas plus.
card-feel-crumbles = friable
card-feel-stiff = ferme
card-feel-right = juste bien
card-feel-soft = molle
card-feel-sticks = collante
card-keeps = Se garde dans une boîte fermée { $low } à { $high } jours dans la pièce, { $cold_low } à { $cold_high } jours au réfrigérateur (usage courant ; personne ne l’a mesuré).

card-contains = Contient : { $allergens }.
card-may-contain = Peut contenir : { $allergens }.
card-contains-none = Aucun ingrédient n’est un allergène de la liste. Lisez les emballages.
card-list = { $left }, { $right }
card-not-food = Ne se mange pas

card-careful-eaten = Elle contient { $share } % de sel. { $child } g peuvent tuer un enfant de { $child_mass } kg, { $dog } g rendent malade un chien de { $dog_mass } kg. Si un morceau a été mangé, appelez tout de suite un médecin, un centre antipoison ou un vétérinaire ; ne faites pas vomir, ne donnez pas d’eau salée.
card-careful-tartrate-dog = La crème de tartre et l’acide tartrique peuvent détruire les reins d’un chien. Si un chien en a mangé, appelez tout de suite un vétérinaire.
card-careful-epsom-child = Le sel d’Epsom est un laxatif. Si un enfant en a mangé, demandez à un centre antipoison.
card-careful-potassium-child = Le sel de potassium peut arrêter un cœur. Si un enfant en a mangé, appelez tout de suite un centre antipoison.
card-careful-glycerol-child = La glycérine peut rendre un petit enfant très malade. Si un enfant en a mangé, demandez à un centre antipoison.
card-careful-boron-child = Le borax est un poison. Si quelqu’un en a mangé, appelez tout de suite un centre antipoison.
card-careful-alum = L’alun brûle la bouche et l’estomac. Gardez le paquet sous clé.
card-careful-burnt-alum = L’alun calciné est presque deux fois plus fort que l’alun en cristaux : pesez-le.
card-careful-borax = Le borax n’a pas sa place dans une pâte pour enfants. N’en mettez pas.
card-careful-flour-raw = La farine crue peut porter des germes et cette pâte n’est pas cuite à cœur : personne n’y goûte, tous se lavent les mains.
card-careful-flour-cooked = La farine crue peut porter des germes. Cuisez jusqu’à ce que tout fume ; la farine ajoutée après est crue. Lavez-vous les mains.
card-careful-hot = Plaque chaude, pâte chaude : un adulte cuit, et distribue la pâte quand le milieu a refroidi.
card-careful-acid-eyes = Les acides piquent les yeux : un adulte verse. Rincez un quart d’heure et demandez à un médecin.
card-careful-salt-skin = Le sel pique : pas sur les coupures, la peau abîmée ou l’eczéma, pas près des yeux.
card-careful-dust = Versez la farine bas et lentement : sa poussière gêne les asthmatiques et brûle près d’une flamme.
card-careful-slippery = L’huile et la glycérine rendent le sol glissant : essuyez tout de suite.
card-careful-spirit = L’alcool brûle : pas de flamme à côté, et jamais dans une casserole chaude.
card-careful-small-parts = Pas avant trois ans : lampes, piles et petites boules peuvent étouffer.
card-careful-pack-wires = Les deux fils des piles ne se touchent jamais : ils chauffent.
card-careful-cells = Pas de piles boutons près des petits enfants : avalées, elles percent des trous en quelques heures.
card-careful-mains = Ne branchez jamais la pâte sur le secteur.
card-careful-colour-stains = Le colorant tache les mains et le tissu.
card-careful-sugar-ants = Le sucre attire fourmis et guêpes, et moisit : gardez au froid.
card-careful-pan = Sel et acide rongent l’aluminium nu : cuisez dans l’acier ou l’émail.
card-careful-metal = Coupez ce qui devient vert, noir ou rouillé, et retirez les fils quand vous arrêtez.
card-careful-mould = Jetez-la quand elle sent, a des taches ou devient gluante.
card-careful-disposal-salt = Vieille pâte à la poubelle : pas dans l’évier, pas au jardin, jamais dehors pour les animaux.
card-careful-disposal = Vieille pâte à la poubelle : pas dans l’évier, jamais dehors pour les animaux.
card-careful-migration = Elle contient un métal que la loi limite dans les jouets. Cette fiche n’est pas un certificat.
card-careful-packet = Lisez et suivez l’emballage de : { $ingredients }.
card-careful-rules = Les règles locales et les personnes qualifiées passent d’abord.

card-qr = La même recette comme fichier pour Lumped.
card-qr-no-story = Cette recette comme fichier pour Lumped, sans son histoire.
card-qr-no-steps = Cette recette comme fichier pour Lumped, sans histoire ni étapes.
card-qr-none = La recette est trop longue pour un code qu’un téléphone puisse lire : gardez son fichier.
card-qr-as-written = Ses quantités sont celles de la recette telle qu’elle a été écrite.
card-qr-alt = Un code carré avec le texte de la recette
card-foot-computed = Calculé par Lumped { $version } le { $date }.
card-foot-sources = Sources : { $sources } ; et aussi l’usage courant et la mémoire.
card-unread-fr = Aucun francophone de naissance n’a encore relu ce texte.
card-foot-batch = Fournée : { $batch }, { $date }.
card-foot-batch-undated = Fournée : { $batch }.

card-date = { $day } { $month } { $year }
card-month-1 = janvier
card-month-2 = février
card-month-3 = mars
card-month-4 = avril
card-month-5 = mai
card-month-6 = juin
card-month-7 = juillet
card-month-8 = août
card-month-9 = septembre
card-month-10 = octobre
card-month-11 = novembre
card-month-12 = décembre

card-allergen-celery = céleri
card-allergen-cereals-containing-gluten = céréales contenant du gluten
card-allergen-gluten = gluten
card-allergen-crustaceans = crustacés
card-allergen-crustacean-shellfish = crustacés
card-allergen-eggs = œufs
card-allergen-fish = poisson
card-allergen-lupin = lupin
card-allergen-milk = lait
card-allergen-molluscs = mollusques
card-allergen-mustard = moutarde
card-allergen-peanuts = arachides
card-allergen-sesame = sésame
card-allergen-soybeans = soja
card-allergen-sulphur-dioxide-and-sulphites = anhydride sulfureux et sulfites
card-allergen-tree-nuts = fruits à coque
card-allergen-wheat = blé

tags-made = faite le
tags-tare = vide
tags-gross = avec la pâte
tags-hash = recette { $hash }
tags-fold = pliez ici
tags-qr-alt = Un code carré qui dit ce que c’est
tags-foot = Coupez le long des tirets ; pliez les grandes étiquettes au milieu et posez-les debout.

card-trial-mould-straw = une paille remplie de pâte
card-trial-mould-barrel = un corps de seringue rempli de pâte
card-trial-mould-ice-cube = un creux de bac à glaçons rempli de pâte
card-trial-lamp = une lampe rouge
card-trial-pack = un bloc de quatre piles AA
card-trial-resistor = une résistance de { $ohms } Ω
trial-card-do-resistor = Une minute : { $mould }, deux vis enfoncées de { $depth } mm, { $pack }, { $resistor } et { $lamp }, l’un après l’autre.
trial-card-do-plain = Une minute : { $mould }, deux vis enfoncées de { $depth } mm, { $pack } et { $lamp }, l’un après l’autre.
trial-card-conducting = Vive : bon. Faible : pressez la pâte autour des vis ; si elle le reste, ou si elle est éteinte : pas bon.
trial-card-insulating = Éteinte : bon. Faible : seulement pour des cloisons épaisses. Vive : pas bon.
trial-card-share = { $good } bonnes fournées sur 100 réussissent, et { $passed } sur 100 avec une faute ({ $bad }).
trial-card-weak = Cet essai est faible : il se trompe sur plus d’une bonne fournée sur dix, ou sur plus d’une mauvaise sur dix. Si cela compte, mesurez la résistivité.
trial-bad-no-salt = le sel oublié
trial-bad-spoon-of-salt = une cuillerée à café de sel est entrée
trial-bad-no-carrier = une pâte qui conduit peu, 5 Ω·m
