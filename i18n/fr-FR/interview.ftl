# The household shape of North America is not that of houses in Europe, and says so here.

face-5-15R = US ordinaire
    .also = normale maison mur plate
face-5-20R = US en T
    .also = normale maison mur
face-1-15R = US sans terre
    .also = vieille deux fentes plate

shape-5-15R = US ordinaire, 15 A (5-15R)
shape-5-20R = US ordinaire, fente en T, 20 A (5-20R)
shape-1-15R = US sans terre, 15 A (1-15R)
shape-5-15P = US, 3 broches, 15 A (5-15P)
shape-5-20P = US, une lame tournée, 20 A (5-20P)
shape-1-15P = US sans terre, 15 A (1-15P)

pick-gear-what-extension = Rallonge US ordinaire (5-15)
pick-gear-what-three-way = Rallonge, 3 prises US (5-15)
pick-gear-what-split-30 = Répartiteur L5-30 vers 3 prises US
pick-gear-what-split-30-four = Répartiteur L14-30 vers 4 prises US

ask-load-plug = Quelle fiche a-t-il ?
    .why = { $about }. La plupart ont la fiche US ordinaire.
    .help = Deux lames et une broche ronde : 5-15P. Deux lames seulement : 1-15P.
    .row = Fiche
