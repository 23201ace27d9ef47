import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf, grown, type Box } from '../../geometry/box'
import { between, distance, type Point } from '../../geometry/point'
import type { Built } from '../../model/built'
import { gutterEnds } from '../../model/gutterEnds'
import type { PartId } from '../../model/ids'
import type { Foot } from '../../model/levels'
import type { RackFacts } from '../../model/rackFacts'
import { rememberEach } from '../../model/remember'

/** What is under a part, for a painter: flat. Places mm of floor, heights mm. */
export interface ShimSpots {
  readonly part: PartId
  /** x, y of each foot, and the shim under it. */
  readonly feetXy: Float64Array
  readonly feetMm: Float64Array
  /** x0, y0, x1, y1 across the row of each gutter bearer, high end first, and the shim on it. */
  readonly bearers: Float64Array
  readonly bearersMm: Float64Array
  readonly box: Box
}

/** Across the row from its first line to its last, at a distance from the high end of its gutters. */
const bearerEnds = (built: Built, rack: RackFacts, fromHighMm: number): readonly [Point, Point] => {
  const { leftFace, rightFace, lineReachMm, runMm } = rack
  const share = fromHighMm / runMm
  const { high } = gutterEnds(built, rack)
  const isFromStart = distance(high, leftFace.from) < distance(high, leftFace.to)
  const onFace = ({ from, to }: RackFacts['leftFace']) => between(from, to, isFromStart ? share : 1 - share)
  const [left, right] = [onFace(leftFace), onFace(rightFace)]
  const widthMm = distance(left, right) || 1
  const most = Math.max(...lineReachMm)
  const least = Math.min(...lineReachMm)
  const halfMm = Math.min(least, widthMm - most) / 2
  return [between(left, right, (least - halfMm) / widthMm), between(left, right, (most + halfMm) / widthMm)]
}

const flat = (points: readonly Point[]): Float64Array =>
  Float64Array.from(points.flatMap(({ x, y }) => [x, y]))

/** A part's spots, remembered while its feet and its shape stay as they were. */
const spotsOf = rememberEach<readonly Foot[], Built, ShimSpots>((feet, built) => {
  const { rack } = built
  const ends = rack ? rack.bearerShims.map(({ fromHighMm }) => bearerEnds(built, rack, fromHighMm)) : []
  return {
    part: built.part,
    feetXy: flat(feet.map(({ at }) => at)),
    feetMm: Float64Array.from(feet, ({ shimMm }) => shimMm),
    bearers: flat(ends.flat()),
    bearersMm: Float64Array.from(rack?.bearerShims ?? [], ({ shimMm }) => shimMm),
    box: grown(boxOf([...feet.map(({ at }) => at), ...ends.flat()]), 1),
  }
})

/** All parts that stand on feet. */
export const shimSpots = ({ bay }: Evaluation): readonly ShimSpots[] =>
  bay.built.flatMap((built) => {
    const feet = bay.levels.feet.get(built.part)
    return feet && feet.length > 0 ? [spotsOf(feet, built)] : []
  })
