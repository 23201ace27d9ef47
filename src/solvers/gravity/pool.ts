import { dropOver } from '../../units/slope'
import { type Channel, litresAlong, type Profile } from './profile'
import { rootOfRising } from './rising'

/** Depths along a gutter once a pool stands so deep at its low end: what runs there already, or the pool where it is more. */
const withPool = ({ runMm, slopeMmPerM }: Channel, { alongMm, depthMm }: Profile, lowMm: number): number[] =>
  depthMm.map((mm, i) => Math.max(mm, lowMm - dropOver(runMm - (alongMm[i] ?? 0), slopeMmPerM)))

/**
 * Depth, mm, at the low end of a gutter whose outlet has been shut and into which so much more has run, L: a level pool that
 * drowns the film which was running. Over the lip it goes on as between walls, so that a depth tells by how much it runs over.
 */
export const pooledDepthMm = (channel: Channel, profile: Profile, moreL: number): number => {
  const { section } = channel
  const { alongMm, depthMm, standingL } = profile
  const nowMm = depthMm.at(-1) ?? 0
  if (moreL <= 0) return nowMm
  const missingL = (lowMm: number): number =>
    litresAlong(section, alongMm, withPool(channel, profile, lowMm)) - standingL - moreL
  let highMm = nowMm + 1
  while (missingL(highMm) < 0) highMm *= 2
  return rootOfRising(missingL, nowMm, highMm)
}
