import type { Place } from '../../geometry/point'
import { pointAlong, segmentsOf } from '../../geometry/polyline'
import { CLEANOUT_APART_MM } from '../../model/drainFacts'
import { dropOver } from '../../units/slope'
import type { DrainLine } from './schema'

/** A run of whole steps but for the rounding of the machine gets no step more. */
const ROUNDING = 1e-6

/** How far along its path a line has its ends and bends, the low end last, mm. */
const alongsOf = (path: readonly Place[], stops: readonly Place[]): number[] => {
  const isStop = new Set<unknown>(stops)
  const segments = segmentsOf(path)
  const alongs = segments.filter(({ from }) => isStop.has(from)).map(({ startMm }) => startMm)
  return [...alongs, segments.reduce((sum, { lengthMm }) => sum + lengthMm, 0)]
}

/** Distances from the high end, in even steps where two cleanouts would lie further apart than a rod reaches, mm. */
const stepsBetween = (alongs: readonly number[]): number[] =>
  alongs.slice(1).flatMap((endMm, index) => {
    const startMm = alongs[index] ?? 0
    const steps = Math.ceil((endMm - startMm) / CLEANOUT_APART_MM - ROUNDING)
    return Array.from(
      { length: Math.max(steps - 1, 0) },
      (_, step) => startMm + ((endMm - startMm) * (step + 1)) / steps,
    )
  })

/** Where the cleanouts of a line stand, by its own choice: `stops` are its high end and its bends. */
export const cleanoutsOf = (
  { cleanouts, slope }: DrainLine,
  path: readonly Place[],
  stops: readonly Place[],
): Place[] => {
  if (cleanouts === 'none') return []
  if (cleanouts === 'bends') return [...stops]
  const highMm = path[0]?.z ?? 0
  const between = stepsBetween(alongsOf(path, stops)).map((alongMm) => ({
    ...pointAlong(path, alongMm),
    z: highMm - dropOver(alongMm, slope),
  }))
  return [...stops, ...between]
}
