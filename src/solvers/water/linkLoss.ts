import { lossOfOneWay } from './oneWay'
import { found, lossOf } from './resistance'
import { PLAIN, SHUT, type Work } from './work'

/** Head lost in a slot from upper to lower at its flow, and its slope, into `found`. */
export const lossInSlot = (work: Work, slot: number): void => {
  if (work.kind[slot] !== PLAIN) {
    lossOfOneWay(work, slot)
    return
  }
  const flow = work.flow[slot] ?? 0
  lossOf(work.links, slot, Math.abs(flow))
  if (flow < 0) found.loss = -found.loss
}

/** How much head a link misses at its flow, m; what is shut misses none. */
export const missedBy = (work: Work, slot: number, drop: number): number =>
  work.kind[slot] === PLAIN || (work.isHeld[slot] === 0 && work.kind[slot] !== SHUT)
    ? Math.abs(drop - found.loss)
    : 0
