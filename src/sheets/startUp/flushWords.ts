import type { Words } from '../../checks/context'
import type { MainFlush, ZoneFlush } from '../../evaluate/water/flush'

const SECONDS_A_MINUTE = 60

/** Seconds while they are few, else whole minutes, rounded up: nobody shuts a cap early by this. */
export const clock = (seconds: number): string =>
  seconds < 90 ? `${Math.round(seconds)} s` : `${Math.ceil(seconds / SECONDS_A_MINUTE)} min`

/** How the ends of one zone are flushed, in the columns of its table. */
export const zoneRow = (flush: ZoneFlush, { name, velocity, flowTotal, volume }: Words): string[] => [
  name(flush.part),
  flush.atOnce === 0 ? 'none' : `${flush.atOnce} of ${flush.ends.length}`,
  velocity(flush.slowestMS),
  flowTotal(flush.endsLph),
  flush.batches === 0 ? '—' : clock(flush.seconds),
  flush.batches === 0 ? '—' : volume(flush.litres),
]

/** How the end of one main is flushed, in the columns of its table. */
export const mainRow = (flush: MainFlush, { name, velocity, flowTotal, volume }: Words): string[] => [
  name(flush.part),
  `${velocity(flush.velocityMS)}${flush.isFastEnough ? '' : ', too slow'}`,
  flowTotal(flush.flowLph),
  volume(flush.litres),
]
