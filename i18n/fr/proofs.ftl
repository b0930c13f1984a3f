# Tests of a receptacle, and volts: what they show, and what that proves.

## The card's test steps. $at lists receptacles, or says that it holds for all.

print-test-everywhere = Partout où un testeur se branche
print-test-protected = Là où l’étiquette dit « GFCI : OUI »
# $joint is a box that must not be used, $at the outlets or boxes with the TEST button.
print-test-without = Ne branchez pas « { $joint } ». Avec cela branché, ne vous fiez pas au GFCI de { $at }.
print-test-find-out = Nous ignorons si le neutre { -generator(form: "of") } est flottant ou relié. Lisez son manuel, ou demandez à un { -electrician }.
print-test-reads-correct = { $at } : un testeur de prise doit montrer CORRECT.
print-test-reads-floating = { $at } : un testeur de prise devrait montrer OPEN GROUND. C’est normal pour un neutre flottant : n’essayez pas d’y changer quelque chose. Un { -ground-wire } coupé donne la même lecture.
print-test-reads-either = { $at } : un testeur de prise montre CORRECT si le neutre est relié et le { -ground-wire } intact. OPEN GROUND : neutre flottant, ou { -ground-wire } coupé. N’utilisez alors pas cette prise avant de savoir lequel.
print-test-other = Toute autre lecture : arrêtez le moteur. Débranchez cette rallonge ou ce coffret, redémarrez le moteur, et testez la prise où c’était branché. Remontez ainsi vers { -generator(form: "the") } jusqu’à une lecture juste. N’utilisez ni ce que vous avez débranché en dernier, ni ce qui y est branché. Si la prise { -generator(form: "of") } elle-même montre une lecture fausse, ne l’utilisez pas.
print-test-tester-trips = { $at } : le bouton du testeur doit aussi couper le courant. Sinon, n’utilisez pas cette prise.
print-test-tester-no-way-back = { $at } : le bouton du testeur ne fait rien ici. Appuyez plutôt sur TEST du GFCI lui-même.
print-test-tester-blind = { $at } : le bouton du testeur ne fait rien. Le GFCI n’y coupe aucun choc. N’y branchez que ce que l’étiquette permet.
print-test-tester-doubtful = { $at } : le bouton TEST du GFCI coupe le courant, mais un choc ne le fera peut-être pas. N’y branchez que ce que l’étiquette permet.
print-test-tester-either = { $at } : nous ne pouvons pas dire ce que fait le bouton du testeur. Seul compte le bouton TEST du GFCI lui-même.

## The worksheet: tests

print-ws-tests = Ce que chaque essai montre ici, et ce qu’il prouve
print-ws-tests-lamps = Lampes d’un testeur : phase-neutre, phase-terre, neutre-terre. Une lampe éteinte peut luire faiblement.
print-ws-tests-own = Le bouton TEST du GFCI lui-même prouve que le GFCI coupe le courant. Il n’a pas besoin de terre, et ne dit rien d’elle.
print-ws-tests-meter = Mesure : moteur arrêté, tout débranché. Du trou de terre au châssis nu, et au trou du neutre. Tenez d’abord les pointes ensemble, et retranchez cette lecture. C’est pour un { -electrician }. N’ouvrez jamais rien.
print-ws-tests-time = Temps maximal permis à un GFCI : (20 ÷ mA) à la puissance 1,43, en secondes : { $times }.
# $leak in thousandths of an ampere.
print-trip-time = { $leak } mA en { $seconds } s au plus
print-ws-column-lamps = Lampes
print-ws-column-reads = Le testeur montre
print-ws-column-own-button = TEST est à
print-ws-column-tester-button = Bouton du testeur
print-ws-column-ground = Terre à châssis
print-ws-column-joined = Neutre à terre
print-lamp-lit = oui
print-lamp-dark = non
print-lamp-either = ?
print-reads-correct = correct
print-reads-floating = open ground, car le neutre est flottant
print-reads-either = correct ou open ground : nous l’ignorons
print-button-trips = coupe le courant
print-button-no-way-back = ne fait rien
print-button-blind = ne fait rien : le GFCI ne le voit pas
print-button-either = nous ne pouvons pas le dire
print-button-no-protection = aucun GFCI connu
# $ohms is the most a meter shows there.
print-meter-ground-here = près de 0 Ω
print-meter-ground-yes = { $ohms } ou moins
print-meter-neutral-yes = relié
print-meter-neutral-no = non relié
print-meter-neutral-unknown = dit quel neutre c’est
print-proves-reads-correct = CORRECT prouve que le { -ground-wire } est intact jusqu’à la liaison avec le neutre. Il ne montre ni neutre et terre inversés, ni une deuxième liaison.
print-proves-reads-floating = OPEN GROUND avec un neutre flottant ne prouve rien : c’est pareil avec un { -ground-wire } coupé.
print-proves-reads-either = Tant que nous ignorons le neutre : CORRECT prouve qu’il est relié et que le { -ground-wire } est intact. OPEN GROUND ne tranche ni l’un ni l’autre.
print-proves-button-trips = Le bouton du testeur coupe le courant : cela prouve à la fois le GFCI, le { -ground-wire } et la liaison.
print-proves-button-no-way-back = Le bouton du testeur ne fait rien là où son courant ne trouve pas de retour : cela ne prouve rien sur le GFCI.
print-proves-button-blind = Le bouton du testeur ne fait rien là où la liaison est en aval du GFCI : son courant revient par le GFCI. Celui qui traverse une personne aussi.
print-proves-button-either = Là où nous ignorons les liaisons, un bouton du testeur qui ne fait rien ne prouve rien. S’il coupe le courant, il prouve le GFCI.

## The worksheet: volts

print-ws-volts-how = Volts = nominaux − volts perdus avec tout ce qui marche jusque-là. Au moment du démarrage comptent les ampères de démarrage.
print-ws-volts-low = { -generator(form: "The") } peut donner quelques volts de plus ou de moins : lisez d’abord là. Si une étape montre encore moins, arrêtez, et cherchez une mauvaise fiche, une rallonge mince ou trop d’appareils en marche. Si une moitié en 120/240 V montre plus que { -generator(form: "the") }, arrêtez aussi : le neutre est peut-être coupé.
print-ws-column-dips = Chute à
print-ws-column-reads-volts = Lu
print-ws-column-boxes = Coffrets alors
print-ws-worst-range = Un réseau de 120 V est tenu entre { $least } et { $most } (plage A). C’est pour les distributeurs. Ici, c’est un conseil.
print-ws-worst-running = En marche
print-ws-worst-start = Pendant que { $starts } démarre
print-ws-column-beside = Avec ceux-ci en marche
print-ws-longest = Longueur possible de chaque rallonge
print-ws-longest-how = Longueur = volts perdus ÷ (ampères × ohms par pied × 2), cette rallonge seule, avec le plus qui peut y marcher ensemble. Les calibres qui ne supportent pas ces ampères, ou que le disjoncteur en amont ne protège pas, sont omis. Une rallonge à fiche ordinaire n’est pas plus longue que le marquage usuel de son calibre pour ces ampères.
print-ws-longest-ohms = { $per } : { $ohms }.
print-ws-longest-advice = 3 % et 5 % sont des conseils pour tout le chemin. Ce n’est pas la loi.
print-ws-column-at-3 = Pour 3 %
print-ws-column-at-5 = Pour 5 %
