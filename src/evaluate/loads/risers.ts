import type { Screen } from '../../model/strength'
import { bearingScreen, conduitIn, edgeScreen, endScreen, netScreen } from './holes'
import { risersBuilt } from './risersBuilt'
import { columnScreen, slendernessScreen } from './risersColumn'
import { pushScreens } from './risersPush'
import { widerSide, woodOf, worstOf } from './risersScreen'
import type { RowInput } from './rowInput'

/**
 * Risers as columns and against a push, and the holes in them; each screen at its worst riser, none where there are no
 * risers. A riser that is too slender has no column screen: it is refused, not rated.
 */
export const riserScreens = (input: RowInput): readonly Screen[] => {
  const { frame, settings } = input
  const risers = risersBuilt(input)
  const [first] = risers
  if (!first) return []
  const wood = woodOf(settings, widerSide(first))
  const holes = risers.map((riser) => ({ riser, conduitMm: conduitIn(frame, riser) }))
  return [
    worstOf(risers.map(slendernessScreen)),
    worstOf(risers.flatMap((riser) => columnScreen(riser, wood))),
    worstOf(risers.flatMap((riser) => pushScreens(riser, settings.pushN, wood))),
    worstOf(risers.map((riser) => netScreen(riser, wood))),
    worstOf(holes.map(({ riser, conduitMm }) => edgeScreen(riser, conduitMm))),
    worstOf(holes.map(({ riser, conduitMm }) => endScreen(riser, conduitMm))),
    worstOf(holes.map(({ riser, conduitMm }) => bearingScreen(riser, conduitMm, wood))),
  ].flat()
}
