import { lossOfOneWay } from './oneWay'
import { found, lossOf } from './resistance'
import { PLAIN, type Work } from './work'

/** Head lost in a slot that is not blocked, from upper to lower at its flow, and how fast it grows, into `found`. */
export const lossInSlot = (work: Work, slot: number): void => {
  if (work.kind[slot] !== PLAIN) {
    lossOfOneWay(work, slot)
    return
  }
  const flow = work.flow[slot] ?? 0
  lossOf(work.links, slot, Math.abs(flow))
  if (flow < 0) found.loss = -found.loss
}
