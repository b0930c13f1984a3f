# Rules on fuel.

FUEL001 = One tank does not last
    .why = Something is to run for { $stretch } without a break. One tank lasts about { $tank }. Fuel spilled on a hot engine catches fire.
    .fix-pause = Plan a break in daylight. Stop the engine and let it cool for 20 minutes before you open the tank. Not in rain, no flames.
