import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { Join } from '../model/levels'
import { joinDrainEnds, joinOutlets } from './drainJoins'
import { joinBoxes, joinMains, joinPumps, joinSharedZones, joinZones } from './supplyJoins'

/** Step 2: where mouths meet. Joins are made over roles and places, never over kinds of parts. */
export const join = (built: readonly Built[], settings: Settings): readonly Join[] => [
  ...joinOutlets(built, settings.outletReachMm),
  ...joinDrainEnds(built),
  ...joinZones(built, settings.mainReachMm),
  ...joinSharedZones(built, settings.mainReachMm),
  ...joinMains(built),
  ...joinPumps(built, settings.mainReachMm),
  ...joinBoxes(built, settings.mainReachMm),
]
