import { leastOf, type Piece } from '../../solvers/cutting/problem'
import { fromTicks, inches, toTicks } from '../../units/length'

/** Two stops that a tape hardly tells apart. Common practice, no source. */
const NEAR_TICKS = toTicks(inches(1 / 16))

/** Two stop settings that one could serve. */
export interface SharedStop {
  readonly longMm: number
  readonly shortMm: number
  /** The longer pieces may be cut as short as the shorter ones; else the two are only near. */
  readonly isWithinTolerance: boolean
}

const shared = (long: Piece, short: Piece): SharedStop | undefined => {
  const apart = long.lengthTicks - short.lengthTicks
  const isWithinTolerance = leastOf(long) <= short.lengthTicks
  if (apart === 0 || (!isWithinTolerance && apart > NEAR_TICKS)) return undefined
  return { longMm: fromTicks(long.lengthTicks), shortMm: fromTicks(short.lengthTicks), isWithinTolerance }
}

/** Neighbouring stop settings of one material that could be one. Pieces that need no stop, whole or parted on marks, are left out. */
export const sharedStops = (pieces: readonly Piece[]): readonly SharedStop[] => {
  const measured = pieces
    .filter(({ rule, count }) => rule.kind === 'exact' && count > 0)
    .sort((a, b) => b.lengthTicks - a.lengthTicks)
  return measured.slice(1).flatMap((short, index) => {
    const long = measured[index]
    const found = long && shared(long, short)
    return found ? [found] : []
  })
}
