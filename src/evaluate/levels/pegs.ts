import type { DrainStation } from '../../geometry/drainProfile'
import type { Peg, PegWhy } from '../../model/levels'
import { feet } from '../../units/length'

/** A string sags over more than this: a peg at least so often. Common practice, no source. */
const STEP_MM = feet(10)

/** A peg that stands so near to where a step falls does for it, mm. */
const NEAR_STEP_MM = feet(1)

/** Two reasons at one place are one peg, mm: rounding of the tick and of sums. */
const SAME_PEG_MM = 0.5

/** A place along a line where a peg must stand, from its high end, mm. */
export interface PegPlace {
  readonly alongMm: number
  readonly why: PegWhy
  /** The hole for an outlet; 0 where there is none, or a tee. */
  readonly holeMm: number
}

interface Growing {
  readonly alongMm: number
  readonly why: Set<PegWhy>
  outlets: number
  holeMm: number
}

const placeOf = ({ alongMm, why, holeMm }: PegPlace): Growing => ({
  alongMm,
  why: new Set([why]),
  outlets: why === 'outlet' ? 1 : 0,
  holeMm,
})

/** Places from the low end up, with those at one place made one. */
const unite = (places: readonly PegPlace[]): Growing[] => {
  const united: Growing[] = []
  for (const place of places.toSorted((a, b) => b.alongMm - a.alongMm)) {
    const last = united.at(-1)
    if (!last || last.alongMm - place.alongMm > SAME_PEG_MM) {
      united.push(placeOf(place))
      continue
    }
    last.why.add(place.why)
    last.holeMm = Math.max(last.holeMm, place.holeMm)
    if (place.why === 'outlet') last.outlets += 1
  }
  return united
}

/** Every 10 ft from the low end, where no other peg stands near. */
const stepsBetween = (lengthMm: number, places: readonly PegPlace[]): PegPlace[] =>
  Array.from({ length: Math.floor(lengthMm / STEP_MM) }, (_, step): PegPlace => ({
    alongMm: lengthMm - STEP_MM * (step + 1),
    why: 'step',
    holeMm: 0,
  })).filter(({ alongMm }) => places.every((place) => Math.abs(place.alongMm - alongMm) > NEAR_STEP_MM))

/**
 * The pegs of a line from its low end up: at both ends, at what the caller names, and every 10 ft between. The cut is
 * measured from the peg's own top, so that nobody subtracts beside the trench. All mm.
 */
export const pegsAlong = (
  lengthMm: number,
  named: readonly PegPlace[],
  stationAt: (alongMm: number) => DrainStation,
  pegTopMm: number,
): readonly Peg[] => {
  const places: readonly PegPlace[] = [
    { alongMm: 0, why: 'start', holeMm: 0 },
    { alongMm: lengthMm, why: 'end', holeMm: 0 },
    ...named,
  ]
  return unite([...places, ...stepsBetween(lengthMm, places)]).map(
    ({ alongMm, why, outlets, holeMm }, index) => {
      const station = stationAt(alongMm)
      return {
        ...station,
        number: index + 1,
        fromLowMm: lengthMm - alongMm,
        why: [...why],
        outlets,
        holeMm,
        pegTopMm: station.groundMm + pegTopMm,
        cutMm: station.digMm + pegTopMm,
      }
    },
  )
}
