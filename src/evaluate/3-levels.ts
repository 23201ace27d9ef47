import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import type { DrainRun, Foot, Join, Levels, RowGrade } from '../model/levels'
import type { Site } from '../model/site'
import { incomingByDrain, NOTHING_IN, profileOf, runOf } from './levels/drainRun'
import { datumOf, feetOf, footingsOf, highestFooting } from './levels/footings'

const hangs = (built: Built | undefined): boolean => built?.rack?.carriedBy === 'house'

/**
 * Step 3: the rack datum, what goes under every foot, and the levels, pegs and bells along every drain. Rails are level
 * across the whole bay, or each row's with its own highest foot, or climb with the floor.
 */
export const levels = (
  built: readonly Built[],
  joins: readonly Join[],
  site: Site,
  across: Settings['datum'],
): Levels => {
  const footings = built.map((b) => footingsOf(b, site))
  // A row that hangs has no foot to shim up to; where no other stands, it hangs level over the highest floor under it.
  const standing = footings.filter((_, index) => !hangs(built[index]))
  const highest = highestFooting(standing) ?? highestFooting(footings)
  const incoming = incomingByDrain(built, joins)
  const datums = new Map<PartId, number>()
  const grades = new Map<PartId, RowGrade>()
  const feet = new Map<PartId, readonly Foot[]>()
  const drains = new Map<PartId, DrainRun>()
  built.forEach((b, index) => {
    const under = footings[index] ?? []
    const datum = datumOf(b, under, across, highest)
    if (datum) {
      datums.set(b.part, datum.levelMm)
      if (datum.grade) grades.set(b.part, datum.grade)
      if (!hangs(b)) feet.set(b.part, feetOf(under, datum))
    }
    const profile = profileOf(b, site)
    if (profile)
      drains.set(b.part, {
        part: b.part,
        ...runOf(profile, { site, ...(incoming.get(b.part) ?? NOTHING_IN) }),
      })
  })
  return { datums, grades, highest: highest && { ...highest, shimMm: 0 }, feet, drains }
}
