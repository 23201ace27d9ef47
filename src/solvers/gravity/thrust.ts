import { MM_PER_M } from '../../units/length'
import { GRAVITY } from '../water/properties'
import { criticalOfSquare } from './critical'
import { rootOfRising } from './rising'
import { areaMm2, momentMm3, type Section, topWidthMm, wettedMm } from './section'

/** Part of an open channel whose bed falls by so much a mm along the flow; less than 0 where the water runs up it. */
export interface Bed {
  readonly section: Section
  readonly fall: number
  /** Manning's n. */
  readonly n: number
}

/** The flow's own momentum and the push of its pressure, over the weight of water, mm3: Q^2 / g A and the first moment. */
export const thrustMm3 = (section: Section, depthMm: number, squareMm5: number): number =>
  (squareMm5 > 0 ? squareMm5 / areaMm2(section, depthMm) : 0) + momentMm3(section, depthMm)

/** Manning's n^2 V^2 / R^(4/3) has R in m; with all lengths in mm it is this much more. */
const IN_MM = GRAVITY * Math.cbrt(MM_PER_M)

/** Manning's friction slope times the area, mm2. Multiplied out: powers are what takes time here. */
const dragMm2 = ({ n }: Bed, area: number, wetted: number, squareMm5: number): number => {
  if (squareMm5 === 0) return 0
  const root = Math.cbrt(area / wetted)
  const square = root * root
  return (n * n * IN_MM * squareMm5) / (area * square * square)
}

/** What weight less friction adds to the thrust over each mm, mm2: A (S0 - Sf). */
export const pullMm2 = (bed: Bed, depthMm: number, squareMm5: number): number => {
  if (depthMm <= 0) return 0
  const area = areaMm2(bed.section, depthMm)
  return area * bed.fall - dragMm2(bed, area, wettedMm(bed.section, depthMm), squareMm5)
}

/** A place in the flow: how deep it must be for thrust and half a step's pull to come to what the place before asks. */
export interface Balance {
  readonly bed: Bed
  readonly squareMm5: number
  /** Half the step; less than 0 where the place before lies upstream. */
  readonly halfMm: number
  readonly wantedMm3: number
}

const missMm3 = ({ bed, squareMm5, halfMm, wantedMm3 }: Balance, depthMm: number): number =>
  thrustMm3(bed.section, depthMm, squareMm5) + halfMm * pullMm2(bed, depthMm, squareMm5) - wantedMm3

const cube = (x: number): number => x * x * x

const isSlow = (section: Section, depthMm: number, squareMm5: number): boolean =>
  squareMm5 * topWidthMm(section, depthMm) <= cube(areaMm2(section, depthMm))

/** Newton steps before the sure way is taken, and how near is found, of the depth; the last step then errs by its square. */
const MOST_STEPS = 12
const CLOSE = 1e-6

/** One Newton step, mm. For its slope the wetted length, which hardly grows with depth, is taken as it is. */
const stepFrom = ({ bed, squareMm5, halfMm, wantedMm3 }: Balance, depthMm: number): number => {
  const { section, fall } = bed
  const area = areaMm2(section, depthMm)
  const top = topWidthMm(section, depthMm)
  const drag = dragMm2(bed, area, wettedMm(section, depthMm), squareMm5)
  const carried = squareMm5 / area
  const miss = carried + momentMm3(section, depthMm) + halfMm * (area * fall - drag) - wantedMm3
  const slope = area - (carried * top) / area + halfMm * top * (fall + ((7 / 3) * drag) / area)
  return -miss / slope
}

/** Newton along the slow or the fast branch; undefined where a step leaves it. */
const byNewton = (balance: Balance, fromMm: number, slow: boolean): number | undefined => {
  let depthMm = fromMm
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const by = stepFrom(balance, depthMm)
    depthMm += by
    if (!(depthMm > 0 && isSlow(balance.bed.section, depthMm, balance.squareMm5) === slow)) return undefined
    if (Math.abs(by) <= CLOSE * depthMm) return depthMm
  }
  return undefined
}

const GROWS = 1.5

/** A depth at which more is pushed than is wanted, from one that may do. */
const deepEnough = (balance: Balance, fromMm: number): number => {
  let depthMm = fromMm
  while (missMm3(balance, depthMm) <= 0) depthMm *= GROWS
  return depthMm
}

/**
 * The slow (subcritical) depth, mm, of a balance, but at least so deep; critical depth where there is none, and the water
 * no longer feels what is below it. `nearMm` is a depth like it.
 */
export const slowDepthMm = (
  balance: Balance,
  nearMm: number,
  leastMm = 0,
): { readonly depthMm: number; readonly isControl: boolean } => {
  const near = byNewton(balance, nearMm, true)
  if (near !== undefined && near >= leastMm) return { depthMm: near, isControl: false }
  const { bed, squareMm5 } = balance
  const lowMm = Math.max(leastMm, criticalOfSquare(bed.section, squareMm5))
  if (missMm3(balance, lowMm) >= 0) return { depthMm: lowMm, isControl: true }
  const highMm = deepEnough(balance, Math.max(nearMm, lowMm, 1))
  return { depthMm: rootOfRising((mm) => missMm3(balance, mm), lowMm, highMm), isControl: false }
}

/** The fast (supercritical) depth, mm, of a balance; undefined where there is none. `nearMm` is a depth like it. */
export const fastDepthMm = (balance: Balance, nearMm: number): number | undefined => {
  const near = nearMm > 0 ? byNewton(balance, nearMm, false) : undefined
  if (near !== undefined) return near
  const criticalMm = criticalOfSquare(balance.bed.section, balance.squareMm5)
  if (!(criticalMm > 0) || missMm3(balance, criticalMm) > 0) return undefined
  let lowMm = criticalMm
  while (missMm3(balance, lowMm) <= 0) lowMm /= GROWS
  return rootOfRising((mm) => -missMm3(balance, mm), lowMm, criticalMm)
}
