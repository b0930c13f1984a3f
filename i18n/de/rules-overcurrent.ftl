### Regeln zum Überstrom: was auslöst, und was nur heiß wird.

OVER001 = { $fix ->
    [unknown] Wir wissen nicht, welcher Schutzschalter { $first } schützt
    [splitter] { $first } hängt kleine Steckdosen an einen großen Schutzschalter
    [single] Eine 15-A-Steckdose an einem größeren Schutzschalter: { $first }
    [single-look] Der Schutzschalter ist vielleicht zu groß für { $first }
    [own] Wir kennen den Schutzschalter von { $about } nicht
    [camper] Der Schutzschalter ist zu groß für den Adapter { $first }
   *[other] Der Schutzschalter ist zu groß für { $first }
  }
    .why = { $fix ->
        [unknown] Wir wissen nicht, bei wie viel Ampere dieser Weg auslöst. Löst nichts aus, überhitzt das schwächste Teil ({ $known ->
            [no] angenommen:
           *[yes] gemacht für
          } { $rating }) und kann in Brand geraten.{ $alone ->
            [yes] {""}
           *[no] {" "}Teile: { $about }.
          }
        [own] Der Generator schaltet über { $demand } selbst ab, bei Hitze oder in der Höhe früher. Was er hier speist, ist für { $rating } oder mehr gemacht.
        [single-look] Eine Steckdose für einen Stecker ({ $rating }) darf nicht allein an einem Schutzschalter von { $breaker } hängen: Sie wird zu heiß, bevor etwas auslöst. Eine für zwei Stecker darf es.
        [camper] Der Adapter ist für { $rating } gemacht. Der Schutzschalter davor löst erst über { $breaker } aus. Bis dahin kann { $main ->
            [yes] alles außer dem Wohnwagen ihn überhitzen und in Brand setzen.
           *[no] der Adapter überhitzen und in Brand geraten.
          }
       *[other] { $known ->
            [no] Wir haben angenommen: Die Grenze
           *[yes] Die Grenze
          } { $alone ->
            [yes] von { $first }
           *[no] des schwächsten Teils
          } ist { $rating }. { $stops ->
            [set] Der Generator kann bis zu { $peak } hindurchtreiben, bevor etwas auslöst: Das Teil kann überhitzen und in Brand geraten.
           *[breaker] Der Schutzschalter davor löst erst über { $breaker } aus. Bis dahin kann das Teil überhitzen und in Brand geraten.
          }{ $alone ->
            [yes] {""}
           *[no] {" "}Teile: { $about }.
          }
      }
    .fix-splitter = Benutzen Sie { $any-first } für nichts. Nehmen Sie einen von einem Prüflabor zugelassenen Verteilerkasten mit einem Schutzschalter für jede Steckdose.
    .fix-receptacle = Benutzen Sie { $any-first } nicht. Lassen Sie den Schutzschalter von einer Elektrofachkraft ansehen.
    .fix-no-breaker = Benutzen Sie { $any-first } nicht. Nehmen Sie einen von einem Prüflabor zugelassenen Verteilerkasten mit einem Schutzschalter für jede Steckdose.
    .fix-single = Schließen Sie hier nicht mehr als { $rating } an. Lassen Sie es von einer Elektrofachkraft ansehen.
    .fix-single-look = Sehen Sie nach, wie viele Stecker { $first } aufnimmt. Ist es einer: nicht mehr als { $rating } anschließen und von einer Elektrofachkraft ansehen lassen.
    .fix-cord = Benutzen Sie { $any-first } hier nicht. { over-cord } { $first } selbst darf dorthin, wo der Schutzschalter höchstens { $fits } hat.
    .fix-thicker = Benutzen Sie { $any-first } hier nicht. { over-cord }
    .fix-inlet = Benutzen Sie { $any-first } hier nicht. Speisen Sie es aus einer Steckdose, deren Schutzschalter höchstens { $fits } hat.
    .fix-wiring = Benutzen Sie { $any-first } nicht. Tauschen Sie den Schutzschalter nicht aus. Lassen Sie den Kasten von einer Elektrofachkraft ansehen.
    .fix-unknown = Lesen Sie die Zahl auf dem Schutzschalter oder in der Anleitung, und schreiben Sie sie in den Plan. Bis dahin benutzen Sie { $any-first } nicht.
    .fix-free = Stecken Sie nichts in { $any-first }. Lassen Sie die Steckdose leer.
    .fix-own = Lesen Sie die Zahl auf dem Schutzschalter oder in der Anleitung, und schreiben Sie sie in den Plan.
    .fix-camper = { $main ->
        [yes] Schließen Sie dahinter nur den Wohnwagen an.
       *[no] Suchen Sie den Hauptschutzschalter im Wohnwagen: Darauf muss { $rating } oder weniger stehen. Finden Sie ihn nicht, benutzen Sie { $any-first } nicht. Schließen Sie dahinter nur den Wohnwagen an.
      }

over-cord = { $cord ->
    [gauge] Nehmen Sie ein Kabel, auf dem 16, 14 oder 12 AWG steht (1,5 mm² oder mehr): Eine kleinere AWG-Zahl ist dicker.
    [none] Kein Kabel mit diesem Stecker ist für { $made } gemacht: Nehmen Sie davor einen von einem Prüflabor zugelassenen Kasten mit kleineren Schutzschaltern.
   *[amps] Nehmen Sie ein Kabel, das für { $made } gemacht ist.
  }

OVER002 = Auf Dauer zu viel an { $first }
    .why = { $lasts ->
        [all] Für drei Stunden oder länger ist { $limit } die Grenze an { $first }. { when-first } sind es { $demand }, alles davon drei Stunden oder länger. Betroffen: { $about }.
        [in-a-row] Für drei Stunden oder länger ist { $limit } die Grenze an { $first }. { when-first } sind es { $demand }, und mit dem, was davor und danach läuft, so lange nie weniger als { $long }. Betroffen: { $about }.
       *[part] Für drei Stunden oder länger ist { $limit } die Grenze an { $first }. { when-first } sind es { $demand }, davon { $long } drei Stunden oder länger. Betroffen: { $about }.
      }
    .fix-move = Schließen Sie eines davon an einen anderen Schutzschalter an, stellen Sie es kleiner, oder machen Sie eine Pause, bevor drei Stunden um sind.
    .fix-rest = Gönnen Sie { $first } eine Pause, bevor drei Stunden um sind: Schalten Sie aus, was darüber läuft. Oder stellen Sie es kleiner.
    .fix-life = Stellen Sie { $life } nie herunter, und machen Sie damit keine Pause. Schließen Sie alles andere an einen anderen Schutzschalter an, oder suchen Sie eine Steckdose, die es stundenlang trägt.

OVER003 = { $first } verträgt weniger, als sein Schutzschalter durchlässt
    .why = { $first } verträgt { $limit }, und der Schutzschalter davor löst erst über { $breaker } aus. Bei diesem Kabel ist das erlaubt, doch kein Schutzschalter hindert Sie daran, es zu überlasten.
    .fix-add-up = Zählen Sie zusammen, was hinter { $first } angeschlossen ist. Bleiben Sie bei { $limit } oder weniger. Lesen Sie die Ampere auf dem Schild des Kabels; das Kleinere gilt.

OVER005 = { $fix ->
    [set] Bei einem Kurzschluss schaltet der Generator ab, nicht der Schutzschalter
    [look] Ein Kurzschluss löst vielleicht keinen Schutzschalter aus
   *[other] Das Kabel hält den Schutzschalter vielleicht vom Auslösen ab
  }
    .why = { $fix ->
        [set] Zuerst wirkt die eigene Abschaltung des Generators: Er treibt höchstens etwa { $fault } in einen Kurzschluss. Ein Schutzschalter nach UL 489 mit { $breaker } löst erst über { $soon } rasch aus. Stellen: { $about }.
        [look] Wir kennen die Art des Generators nicht, also haben wir angenommen, dass er höchstens { $fault } in einen Kurzschluss treibt. Ein Schutzschalter nach UL 489 mit { $breaker } löst erst über { $soon } rasch aus. Stellen: { $about }.
       *[other] An seinem Ende zieht ein Kurzschluss nur etwa { $fault }. Ein Schutzschalter nach UL 489 mit { $breaker } löst erst über { $soon } rasch aus. Bis dahin überhitzt das Kabel. Stellen: { $about }.
      }
    .fix-set = Prägen Sie sich ein, wie man den Motor abstellt. Werden Lampen plötzlich dunkel oder riecht etwas heiß: Motor abstellen, erst dann die Ursache suchen.
    .fix-look = Suchen Sie das Wort „inverter“ auf dem Generator. Werden Lampen plötzlich dunkel oder riecht etwas heiß: Motor abstellen, erst dann die Ursache suchen.
    .fix-wire = Nehmen Sie ein kürzeres oder dickeres Kabel. Riecht etwas heiß: Motor abstellen, erst dann die Ursache suchen.

OVER006 = { $half ->
    [assumed] Vielleicht zu viel auf einmal für { $first }
   *[known] Zu viel auf einmal für { $first }
  }
    .why = { $half ->
        [assumed] Liegen diese alle auf einer Hälfte des Generators, wie wir angenommen haben, ziehen sie{ when } { $demand }, aber die Grenze ist { $limit }: { $loads }. { $what }
       *[known] { $planned ->
            [yes] { when-first } ziehen diese Geräte über { $first } { $demand }, aber die Grenze ist { $limit }: { $loads }. { $what }
           *[no] Stecken diese Geräte alle dort, ziehen sie{ when } { $demand }, aber die Grenze ist { $limit }: { $loads }. { $what }
        }
      }
    .fix-turns = Lassen Sie diese Geräte abwechselnd laufen. Oder schließen Sie { $largest } an eine Steckdose mit einem anderen Schutzschalter an.
    .fix-turns-only = Lassen Sie diese Geräte abwechselnd laufen.
    .fix-hours = Schreiben Sie in den Plan, wann jedes davon läuft. Oder lassen Sie sie abwechselnd laufen.
    .fix-leg-look = { POWER001.fix-leg-look }
    .fix-leg-cord = { POWER001.fix-leg-cord }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Schließen Sie { $life } an Steckdosen mit verschiedenen Schutzschaltern an. Stellen Sie nichts davon je herunter.

# What stops it, at the end of the sentence above.
overload-trips = Der Schutzschalter löst aus, und alles dahinter geht aus.
overload-early = Der Schutzschalter hat schon unter seiner Aufschrift ausgelöst.
overload-late = Der Schutzschalter ist größer und löst zu spät aus: Es kann überhitzen und in Brand geraten.
overload-hot = Kein bekannter Schutzschalter verhindert das: Es überhitzt und kann in Brand geraten.
