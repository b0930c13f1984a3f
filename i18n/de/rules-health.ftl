### Regeln zur Gesundheit.

HEALTH001 = { $fix ->
    [charged] Von einer Batterie und diesem Generator hängt die Gesundheit eines Menschen ab: { $about }
    [find-out] Niemand weiß, ob die Gesundheit eines Menschen davon abhängt: { $about }
   *[other] Von diesem einen Generator hängt die Gesundheit eines Menschen ab: { $about }
  }
    .why = Ein Generator kann jederzeit stehen bleiben: Der Tank ist leer, der Schutz löst aus, oder jemand stellt ihn ab. Wer schläft, merkt es vielleicht nicht rechtzeitig.
    .fix-battery = Nehmen Sie eine für das Gerät gemachte Batterie mit, die die ganze Nacht reicht. Fragen Sie die Ärztin, den Arzt oder den Lieferanten, wie lange das Gerät aus sein darf und ob es überhaupt an einem Generator und einem Verlängerungskabel laufen darf. Sauerstoff: nicht rauchen, und keine Flamme und kein Heizgerät näher als { $flames }.
    .fix-charged = Laden Sie seine Batterie vor der Nacht. Probieren Sie einmal am Tag, ob sie übernimmt, wenn Sie den Stecker ziehen. Sauerstoff: nicht rauchen, und keine Flamme und kein Heizgerät näher als { $flames }.
    .fix-find-out = Fragen Sie, wem es gehört, was es tut, und schreiben Sie seine Art in den Plan. Hängt die Gesundheit eines Menschen davon ab, nehmen Sie eine dafür gemachte Batterie mit, die die ganze Nacht reicht. Sauerstoff: nicht rauchen, und keine Flamme und kein Heizgerät näher als { $flames }.

HEALTH002 = { $fix ->
    [when] Das macht Wärme und läuft vielleicht, während Menschen schlafen: { $about }
   *[other] Das macht Wärme und läuft, während Menschen schlafen: { $about }
  }
    .why = Von { $from } bis { $to } ({ $night }) sieht niemand danach. Bettzeug rutscht darauf, oder ein Topf kocht leer, und Stoff brennt schnell. Die Feuerwehr sagt: Heizgeräte vor dem Schlafen aus.
    .fix-off = Wärmen Sie erst das Zelt oder das Bett; dann ausschalten und den Stecker ziehen. Nur eine Decke, die laut Hersteller die ganze Nacht an sein darf, kann an bleiben, wie es in ihrer Anleitung steht.
    .fix-cook = Kochen Sie, bevor jemand einschläft. Dann ausschalten und den Stecker ziehen.
    .fix-when = { night-decide } Ausschalten und den Stecker ziehen, bevor jemand einschläft.
