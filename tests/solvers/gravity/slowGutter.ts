import type { Channel } from '../../../src/solvers/gravity/profile'
import { toM3PerS } from '../../../src/units/flow'

const GRAVITY = 9.80665

/** A trapezoid in metres, from its outline alone. */
interface Metres {
  readonly bottom: number
  readonly lean: number
}

const area = ({ bottom, lean }: Metres, y: number): number => bottom * y + (lean * y * y) / 2
const wetted = ({ bottom, lean }: Metres, y: number): number => bottom + 2 * y * Math.hypot(1, lean / 2)
const top = ({ bottom, lean }: Metres, y: number): number => bottom + lean * y

const inMetres = ({ section }: Channel): Metres => {
  if (section.shape !== 'trapezoid') throw new TypeError('Only trapezoids are reckoned the slow way.')
  return {
    bottom: section.bottomMm / 1000,
    lean: (section.topMm - section.bottomMm) / section.heightMm,
  }
}

/** dy/dx down the gutter where a flow passes and q a metre comes in. */
const growth = (shape: Metres, { slopeMmPerM, n }: Channel, q: number, flow: number, y: number): number => {
  const a = area(shape, y)
  const friction = ((flow / a) * n) ** 2 / (a / wetted(shape, y)) ** (4 / 3)
  const froude = (flow ** 2 * top(shape, y)) / (GRAVITY * a ** 3)
  return (slopeMmPerM / 1000 - friction - (2 * q * flow) / (GRAVITY * a ** 2)) / (1 - froude)
}

/** Fast water, the other way round: from a depth so far from the high end on, at distances from it, all mm, by the same steps. */
export const fastDepths = (
  channel: Channel,
  flowLph: number,
  fromMm: number,
  depthMm: number,
  wantedMm: readonly number[],
): number[] => {
  const shape = inMetres(channel)
  const q = toM3PerS(flowLph) / (channel.outletFromHighMm / 1000)
  let [at, y] = [fromMm / 1000, depthMm / 1000]
  return wantedMm.map((mm) => {
    while (at < mm / 1000) {
      const h = Math.min(mm / 1000 - at, 1e-4)
      const [k1, half] = [growth(shape, channel, q, q * at, y), q * (at + h / 2)]
      const k2 = growth(shape, channel, q, half, y + (h * k1) / 2)
      const k3 = growth(shape, channel, q, half, y + (h * k2) / 2)
      const k4 = growth(shape, channel, q, q * (at + h), y + h * k3)
      y += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6
      at += h
    }
    return y * 1000
  })
}

/**
 * Slow water in a gutter into which it drips evenly along, another way: the differential equation of spatially varied flow with
 * inflow, dy/dx = (S0 - Sf - 2 q Q / g A^2) / (1 - Q^2 T / g A^3) (Chow, Open-channel hydraulics (1959), equation 12-8), from
 * a given depth at the outlet to the high end in steps of a thousandth of a mm growing with distance, by Runge and Kutta of
 * the fourth order. Depths, mm, at distances from the outlet, mm.
 */
export const slowDepths = (
  channel: Channel,
  flowLph: number,
  outletMm: number,
  wantedMm: readonly number[],
): number[] => {
  const shape = inMetres(channel)
  const runM = channel.outletFromHighMm / 1000
  const q = toM3PerS(flowLph) / runM
  const rate = (out: number, y: number): number => -growth(shape, channel, q, q * (runM - out), y)
  let [out, y] = [0, outletMm / 1000]
  return wantedMm.map((mm) => {
    const until = mm / 1000
    while (out < until) {
      const h = Math.min(until - out, Math.max(1e-6, out * 2e-4, 0))
      const k1 = rate(out, y)
      const k2 = rate(out + h / 2, y + (h * k1) / 2)
      const k3 = rate(out + h / 2, y + (h * k2) / 2)
      const k4 = rate(out + h, y + h * k3)
      y += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6
      out += h
    }
    return y * 1000
  })
}
