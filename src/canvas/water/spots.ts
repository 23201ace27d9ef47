import { boxOf, grown, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { Built, Mouth } from '../../model/built'
import { rememberEach } from '../../model/remember'

/** Where the towers of a row hang, for a painter: flat, in the order of the row's tower heads. */
export interface TowerSpots {
  /** x, y of each, mm of floor. */
  readonly xy: Float64Array
  readonly heads: readonly Mouth[]
  readonly box: Box
  readonly bodyMm: number
  /** From tower to tower where they stand closest. */
  readonly closestMm: number
}

const flatPlaces = (heads: readonly Mouth[]): Float64Array => {
  const xy = new Float64Array(heads.length * 2)
  heads.forEach(({ at }, index) => xy.set([at.x, at.y], index * 2))
  return xy
}

/** The towers of a row; undefined for a part that bears none. Towers that were taken out are no heads. */
export const towerSpotsOf = rememberEach<Built, null, TowerSpots | undefined>(({ rack, mouths }) => {
  const heads = mouths.filter(({ role }) => role === 'tower-head')
  if (!rack || heads.length === 0) return undefined
  return {
    xy: flatPlaces(heads),
    heads,
    box: grown(boxOf(heads.map(({ at }) => at)), rack.pitchMm / 2),
    bodyMm: rack.bodyMm,
    closestMm: rack.lines > 1 ? Math.min(rack.pitchMm, rack.lineSpacingMm) : rack.pitchMm,
  }
})

/** The tower nearest to a place, as its index; undefined where none is within half of the way to the next. */
export const towerAt = ({ xy, closestMm }: TowerSpots, p: Point): number | undefined => {
  let found: number | undefined
  let least = closestMm / 2
  for (let i = 0; 2 * i < xy.length; i += 1) {
    const gapMm = Math.hypot((xy[2 * i] ?? 0) - p.x, (xy[2 * i + 1] ?? 0) - p.y)
    if (gapMm <= least) {
      found = i
      least = gapMm
    }
  }
  return found
}
