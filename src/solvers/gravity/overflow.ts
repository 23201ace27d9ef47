import { fromM3PerS } from '../../units/flow'
import { toHeadM } from '../../units/head'
import { GRAVITY } from '../water/properties'
import { DISCHARGE, orificeLph } from './orifice'
import { rootOfRising } from './rising'
import { areaMm2, type Section, topWidthMm } from './section'

/** Nearer to the crown a pipe's surface is too narrow for sums. */
const NEARLY_FULL = 0.999

/** What must stand in front of a pipe for it to run at a depth that is critical there: depth and velocity head, mm. */
const headForMm = (pipe: Section, depthMm: number): number =>
  depthMm + areaMm2(pipe, depthMm) / (2 * topWidthMm(pipe, depthMm))

const criticalLph = (pipe: Section, depthMm: number): number => {
  const [area, width] = [areaMm2(pipe, depthMm), topWidthMm(pipe, depthMm)]
  if (width <= 0) return 0
  const velocityMS = Math.sqrt(GRAVITY * toHeadM(area / width))
  return fromM3PerS(velocityMS * toHeadM(toHeadM(area)))
}

/**
 * Flow, L/h, that a level overflow pipe of a bore takes, mm, under water so high over its invert, mm: as a weir, critical
 * at its mouth (Chow, Open-channel hydraulics (1959), chapter 4), or as a hole with a sharp edge under the head over its
 * middle, whichever is less. 0 for water that stands no higher than its invert. Pipe, screen and bends behind are left out.
 */
export const overflowLph = (boreMm: number, headMm: number): number => {
  if (headMm <= 0 || boreMm <= 0) return 0
  const pipe: Section = { shape: 'circle', diameterMm: boreMm }
  const depthMm = rootOfRising((mm) => headForMm(pipe, mm) - headMm, headMm * 1e-9, boreMm * NEARLY_FULL)
  const asWeir = criticalLph(pipe, Math.min(depthMm, headMm))
  const asHole = headMm > boreMm ? orificeLph(boreMm, headMm - boreMm / 2, DISCHARGE.sharp) : Infinity
  return Math.min(asWeir, asHole)
}

/** The head, mm, over its invert at which it takes a flow, L/h; Infinity for more than it takes under `mostMm`. */
export const overflowHeadMm = (boreMm: number, flowLph: number, mostMm: number): number =>
  overflowLph(boreMm, mostMm) < flowLph
    ? Infinity
    : rootOfRising((mm) => overflowLph(boreMm, mm) - flowLph, 0, mostMm)
