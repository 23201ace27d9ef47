import { fromM3PerS, toM3PerS } from '../../units/flow'
import { MM_PER_M } from '../../units/length'
import { rootOfRising } from './rising'
import { areaMm2, heightMm, hydraulicRadiusMm, type Section } from './section'

const MM2_PER_M2 = MM_PER_M * MM_PER_M

/** A circle carries most so full, and a little more than quite full: the crown's wall only brakes. Chow (1959), art. 6-4. */
export const FULLEST_SHARE = 0.938

/** And runs fastest so full. */
const FASTEST_SHARE = 0.813

/** Mean velocity, m/s, by Manning: V = R^(2/3) S^(1/2) / n with R in m; 0 where it does not fall or nothing is wet. */
export const manningMS = (section: Section, depthMm: number, slopeMmPerM: number, n: number): number =>
  slopeMmPerM <= 0
    ? 0
    : (Math.cbrt(hydraulicRadiusMm(section, depthMm) / MM_PER_M) ** 2 * Math.sqrt(slopeMmPerM / MM_PER_M)) / n

/**
 * Flow, L/h, that runs steadily at a depth, mm, and a slope, mm per m: Q = A R^(2/3) S^(1/2) / n. Manning (1891), as in
 * Chow, Open-channel hydraulics (1959), equation 5-6. 0 where it does not fall.
 */
export const manningLph = (section: Section, depthMm: number, slopeMmPerM: number, n: number): number =>
  fromM3PerS((areaMm2(section, depthMm) / MM2_PER_M2) * manningMS(section, depthMm, slopeMmPerM, n))

/** The depth up to which more depth is more flow, mm. */
const fullestMm = (section: Section): number =>
  section.shape === 'circle' ? FULLEST_SHARE * section.diameterMm : heightMm(section)

/**
 * Depth, mm, at which a flow, L/h, runs steadily down a slope: the inverse of `manningLph`, and 0 for no flow. Undefined
 * where it does not fall, or where the flow does not fit under the lip or into the pipe.
 */
export const normalDepthMm = (
  section: Section,
  flowLph: number,
  slopeMmPerM: number,
  n: number,
): number | undefined => {
  if (slopeMmPerM <= 0) return undefined
  if (flowLph <= 0) return 0
  const mostMm = fullestMm(section)
  if (manningLph(section, mostMm, slopeMmPerM, n) < flowLph) return undefined
  return rootOfRising((depthMm) => manningLph(section, depthMm, slopeMmPerM, n) - flowLph, 0, mostMm)
}

const circle = (diameterMm: number): Section => ({ shape: 'circle', diameterMm })

/** What a pipe of a bore carries full, L/h, without head over its crown; 0 where it does not fall. */
export const fullLph = (diameterMm: number, slopeMmPerM: number, n: number): number =>
  manningLph(circle(diameterMm), diameterMm, slopeMmPerM, n)

/** What it carries half full, L/h: half as much. */
export const halfFullLph = (diameterMm: number, slopeMmPerM: number, n: number): number =>
  manningLph(circle(diameterMm), diameterMm / 2, slopeMmPerM, n)

/** Mean velocity, m/s, of a flow, L/h, at a depth, mm; 0 where nothing is wet. */
export const velocityMS = (section: Section, depthMm: number, flowLph: number): number =>
  depthMm <= 0 ? 0 : toM3PerS(flowLph) / (areaMm2(section, depthMm) / MM2_PER_M2)

/**
 * Flow, L/h, at which a pipe of a bore at a slope runs at a velocity, m/s. Undefined where it does not fall, or so little
 * that no depth of water runs as fast.
 */
export const flowForVelocityLph = (
  diameterMm: number,
  slopeMmPerM: number,
  n: number,
  wantedMS: number,
): number | undefined => {
  const section = circle(diameterMm)
  const fastestMm = FASTEST_SHARE * diameterMm
  const speedAt = (depthMm: number): number => manningMS(section, depthMm, slopeMmPerM, n)
  if (speedAt(fastestMm) < wantedMS) return undefined
  const depthMm = rootOfRising((mm) => speedAt(mm) - wantedMS, 0, fastestMm)
  return manningLph(section, depthMm, slopeMmPerM, n)
}

/** Breaks of the fit below: share of the bore, n over n full there; straight between. */
const CAMP: readonly (readonly [number, number])[] = [
  [0, 1],
  [0.03, 1.1],
  [0.1, 1.22],
  [0.2, 1.28],
  [0.3, 1.29],
  [0.5, 1.25],
  [1, 1],
]

/**
 * How much rougher a pipe acts at a share of its bore than full: Camp, Sewage Works Journal 18 (1946), as straight lines
 * between breaks, from memory but for the worked example that is tested. For comparison: the program keeps n constant.
 */
export const campRatio = (share: number): number => {
  const at = CAMP.findIndex(([to]) => to >= share)
  const [toShare, toRatio] = CAMP[at] ?? [1, 1]
  const [fromShare, fromRatio] = CAMP[at - 1] ?? [0, 1]
  return toShare === fromShare
    ? toRatio
    : fromRatio + ((share - fromShare) / (toShare - fromShare)) * (toRatio - fromRatio)
}
