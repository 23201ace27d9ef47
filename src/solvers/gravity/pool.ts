import { dropOver } from '../../units/slope'
import { type Channel, litresAlong, type Profile } from './profile'
import { rootOfRising } from './rising'

/** Depths along a gutter once a pool stands so deep at its low end: what runs there already, or the pool where it is more. */
const withPool = ({ runMm, slopeMmPerM }: Channel, { alongMm, depthMm }: Profile, lowMm: number): number[] =>
  depthMm.map((mm, i) => Math.max(mm, lowMm - dropOver(runMm - (alongMm[i] ?? 0), slopeMmPerM)))

/**
 * Depth, mm, where it is most, of a gutter whose outlet has been shut and into which so much more has run, L: a level pool
 * that drowns the film which was running. Over the lip it goes on as between walls, so that a depth tells by how much it
 * runs over.
 */
export const pooledDepthMm = (channel: Channel, profile: Profile, moreL: number): number => {
  const { section } = channel
  const { alongMm, depthMm, standingL, deepestMm } = profile
  if (moreL <= 0) return deepestMm
  // Where the gutter falls the other way the pool lies at its high end, and its surface under the low end.
  const emptyMm = (depthMm.at(-1) ?? 0) + Math.min(0, dropOver(channel.runMm, channel.slopeMmPerM))
  const missingL = (lowMm: number): number =>
    litresAlong(section, alongMm, withPool(channel, profile, lowMm)) - standingL - moreL
  let moreMm = 1
  while (missingL(emptyMm + moreMm) < 0) moreMm *= 2
  return Math.max(...withPool(channel, profile, rootOfRising(missingL, emptyMm, emptyMm + moreMm)))
}
