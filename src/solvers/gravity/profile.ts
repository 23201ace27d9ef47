import { MM_PER_M } from '../../units/length'
import { dropOver } from '../../units/slope'
import { cubicMetres } from '../../units/volume'
import { type Arm, armWater, type ArmWater } from './arm'
import { outletDepthMm, type OutletDepth } from './outlet'
import { areaMm2, type Section } from './section'

/** A gutter that falls to an outlet in its bottom, and past it to its low end. Distances on the flat from the high end, mm. */
export interface Channel {
  readonly section: Section
  /** Less than 0 where it has come to fall the other way, and water stands. */
  readonly slopeMmPerM: number
  readonly runMm: number
  readonly outletFromHighMm: number
  readonly boreMm: number
  /** Manning's n. */
  readonly n: number
}

/** What drips in: flows, L/h, at ascending distances from the high end, mm. */
export interface Drips {
  readonly alongMm: readonly number[]
  readonly lph: readonly number[]
}

/** The water along a gutter. */
export interface Profile {
  /** From the high end to the low end, mm, and how deep it stands over the invert there. */
  readonly alongMm: readonly number[]
  readonly depthMm: readonly number[]
  readonly flowLph: number
  readonly deepestMm: number
  readonly deepestAtMm: number
  /** At the outlet: what that needs, or the flow's own depth if it is more. */
  readonly outletDepthMm: number
  readonly outletRegime: OutletDepth['regime']
  readonly standingL: number
}

const L_PER_MM3 = cubicMetres(1) / MM_PER_M ** 3

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** The arm that reaches uphill from the outlet. */
const uphill = ({ section, slopeMmPerM, outletFromHighMm, n }: Channel, { alongMm, lph }: Drips): Arm => {
  const count = alongMm.filter((mm) => mm <= outletFromHighMm).length
  return {
    section,
    n,
    climb: dropOver(1, slopeMmPerM),
    lengthMm: outletFromHighMm,
    dripsMm: alongMm
      .slice(0, count)
      .map((mm) => outletFromHighMm - mm)
      .reverse(),
    dripsLph: lph.slice(0, count).reverse(),
  }
}

/** The tail behind it. */
const downhill = (channel: Channel, { alongMm, lph }: Drips): Arm => {
  const { section, slopeMmPerM, runMm, outletFromHighMm, n } = channel
  const count = alongMm.filter((mm) => mm <= outletFromHighMm).length
  return {
    section,
    n,
    climb: -dropOver(1, slopeMmPerM),
    lengthMm: Math.max(0, runMm - outletFromHighMm),
    dripsMm: alongMm.slice(count).map((mm) => mm - outletFromHighMm),
    dripsLph: lph.slice(count),
  }
}

/** The two arms as one line from the high end. */
const joined = (outletMm: number, up: ArmWater, down: ArmWater) => ({
  alongMm: [
    ...up.fromOutletMm.map((mm) => outletMm - mm).reverse(),
    ...down.fromOutletMm.slice(1).map((mm) => outletMm + mm),
  ],
  depthMm: [...up.depthMm.toReversed(), ...down.depthMm.slice(1)],
})

/** Litres between a gutter's bottom and depths along it, each step as a slice with straight sides. */
export const litresAlong = (
  section: Section,
  alongMm: readonly number[],
  depthMm: readonly number[],
): number => {
  let mm3 = 0
  let before = areaMm2(section, depthMm[0] ?? 0)
  for (let i = 1; i < alongMm.length; i += 1) {
    const area = areaMm2(section, depthMm[i] ?? 0)
    mm3 += ((before + area) / 2) * ((alongMm[i] ?? 0) - (alongMm[i - 1] ?? 0))
    before = area
  }
  return mm3 * L_PER_MM3
}

/**
 * How deep water runs in a gutter into which it drips: steady, what `armWater` says uphill of the outlet and in the tail
 * behind it. At the outlet stands what that needs as weir or orifice, or critical depth if it is more.
 */
export const troughProfile = (channel: Channel, drips: Drips): Profile => {
  const { section, outletFromHighMm, boreMm } = channel
  const flowLph = sumOf(drips.lph)
  const need = outletDepthMm(boreMm, flowLph)
  const up = armWater(uphill(channel, drips), need.depthMm)
  const outletMm = Math.max(need.depthMm, up.depthMm[0] ?? 0)
  const down = armWater(downhill(channel, drips), outletMm)
  const { alongMm, depthMm } = joined(outletFromHighMm, up, down)
  const deepestMm = Math.max(...depthMm)
  return {
    alongMm,
    depthMm,
    flowLph,
    deepestMm,
    deepestAtMm: alongMm[depthMm.indexOf(deepestMm)] ?? 0,
    outletDepthMm: outletMm,
    outletRegime: need.regime,
    standingL: litresAlong(section, alongMm, depthMm),
  }
}
