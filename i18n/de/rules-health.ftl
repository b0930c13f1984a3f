### Regeln zur Gesundheit.

HEALTH001 = { $fix ->
    [charged] Von dieser Batterie und diesem Generator hängt die Gesundheit eines Menschen ab: { $about }
    [find-out] Vielleicht hängt die Gesundheit eines Menschen davon ab: { $about }
   *[other] Von diesem einen Generator hängt die Gesundheit eines Menschen ab: { $about }
  }
    .why = Ein Generator kann jederzeit stehen bleiben: Der Tank ist leer, ein Schutzschalter löst aus, oder jemand stellt ihn ab. Wer schläft, merkt es vielleicht nicht rechtzeitig.
    .fix-battery = Nehmen Sie eine für das Gerät gemachte Batterie mit, die die ganze Nacht reicht. Fragen Sie die Ärztin, den Arzt oder den Lieferanten, wie lange das Gerät aus sein darf und ob es überhaupt an einem Generator und einem Verlängerungskabel laufen darf. Bei Sauerstoff: nicht rauchen, und keine Flamme und kein Heizgerät näher als { $flames }.
    .fix-charged = Laden Sie die Batterie des Geräts vor der Nacht. Probieren Sie tagsüber einmal, ob sie übernimmt, wenn Sie den Stecker ziehen. Bei Sauerstoff: nicht rauchen, und keine Flamme und kein Heizgerät näher als { $flames }.
    .fix-find-out = Fragen Sie, wem es gehört, was es tut. Hängt die Gesundheit eines Menschen davon ab, nehmen Sie eine dafür gemachte Batterie mit, die die ganze Nacht reicht. Bei Sauerstoff: nicht rauchen, und keine Flamme und kein Heizgerät näher als { $flames }.

HEALTH002 = { $fix ->
    [when] Heizt vielleicht, während Menschen schlafen: { $about }
   *[other] Heizt, während Menschen schlafen: { $about }
  }
    .why = Von { $from } bis { $to } ({ $night }) passt niemand darauf auf, und Stoff brennt schnell. Die Feuerwehr sagt: Heizgeräte vor dem Schlafen ausschalten.
    .fix-off = Wärmen Sie erst das Zelt oder das Bett; dann ausschalten und den Stecker ziehen. Lassen Sie eine Heizdecke nur an, wenn man laut Anleitung damit schlafen darf.
    .fix-cook = Kochen Sie, bevor jemand einschläft. Dann ausschalten und den Stecker ziehen.
    .fix-when = { night-decide } Ausschalten und den Stecker ziehen, bevor jemand einschläft.
