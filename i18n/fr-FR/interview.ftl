# The household shape of North America is not that of houses in Europe, and says so here.

face-5-15R = Maison US
face-5-20R = Maison US, en T
face-1-15R = US, sans terre

shape-5-15R = Maison US, 15 A (5-15R)
shape-5-20R = Maison US avec fente en T, 20 A (5-20R)
shape-1-15R = Maison US, sans terre, 15 A (1-15R)
shape-5-15P = Maison US, 3 broches, 15 A (5-15P)
shape-5-20P = Maison US, lame tournée (5-20P)
shape-1-15P = Maison US, sans terre (1-15P)

pick-gear-what-extension = Rallonge ordinaire, maison US (5-15)
pick-gear-what-three-way = Rallonge, 3 prises maison US (5-15)
pick-gear-what-split-30 = Répartiteur L5-30, 3 maison US
pick-gear-what-split-30-four = Répartiteur L14-30, 4 maison US

ask-load-plug = Quelle fiche a-t-il ?
    .why = { $about }. La plupart ont la fiche de maison US.
    .help = Deux lames et une broche ronde : 5-15P. Deux lames seulement : 1-15P.
    .row = Fiche
