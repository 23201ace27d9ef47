import type { RailLine, RowStrength } from '../../model/strength'
import { rankOf } from '../../model/finding'
import type { RackBuilt } from './rowBuilt'

/** What the string along a rail of a rack is to show. */
export interface ProofSag {
  /** Most sag between risers under the proof load alone, mm; undefined where the rail would not come through it. */
  readonly leftMm: number | undefined
  readonly rightMm: number | undefined
}

/** The share of what a row's rails carry with everything hung that is towers: the rest lies on them before and after. */
const towerShare = ({ rails, loads }: RowStrength): number => {
  const carriedN = rails.flatMap(({ reactions }) => reactions).reduce((sum, { fullN }) => sum + fullN, 0)
  return carriedN > 0 ? Math.min(1, (loads.towers * loads.towerN) / carriedN) : 0
}

/** Of what lies in a rack, the most that its rail sags with everything hung; undefined where a span of it is too long. */
const mostIn = ({ spans, curve }: RailLine, fromU: number, toU: number): number | undefined => {
  const within = spans.filter((span) => span.toU > fromU && span.fromU < toU)
  if (within.some(({ state }) => rankOf({ subject: 'strength', state }) === 2)) return undefined
  return curve.u.reduce(
    (most, u, i) => (u >= fromU && u <= toU ? Math.max(most, curve.sagMm[i] ?? 0) : most),
    0,
  )
}

/**
 * How far each rail of a rack goes down when the proof load is hung on it. A rail that is not bent sags in proportion to what hangs on
 * it, and its towers and its own weight lie along it alike.
 */
export const proofSag = (
  { number, rackMm }: Pick<RackBuilt, 'number' | 'rackMm'>,
  strength: RowStrength,
  proofTimes: number,
): ProofSag => {
  const [fromU, toU] = [(number - 1) * rackMm, number * rackMm]
  const times = proofTimes * towerShare(strength)
  const [left, right] = strength.rails.map((line) => {
    const most = mostIn(line, fromU, toU)
    return most === undefined ? undefined : most * times
  })
  return { leftMm: left, rightMm: right }
}
