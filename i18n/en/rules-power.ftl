# Rules on power.

POWER001 = { $fix ->
    [leg] One side of the generator is asked for too much at { $time }
   *[other] Too much is on at once at { $time }
  }
    .why = { $fix ->
        [turns] These ask for { $demand } together: { $about }. The generator can keep up { $limit }, so it is { $over } too much.
        [leg] These load one side: { $about }. They draw { $demand } on one side and each side gives { $limit }, so it is { $over } too much.
       *[other] These draw { $demand } together: { $about }. The generator gives { $limit }, so it is { $over } too much, though the watts look fine.
      }
    .fix-turns = Run them in turns. Give each its hours, or leave one at home. Start with { $first }: it asks for the most.
    .fix-leg = Move { $first } to a receptacle on the other side, or run these in turns.
    .fix-amps = Run them in turns. Start with { $first }. It may draw more amps than its watts suggest.
