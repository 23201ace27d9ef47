import { fullLph, normalDepthMm } from './manning'
import type { Section } from './section'

/** Parts of the table; straight between them, which is right to a forty-thousandth of the bore. */
const PARTS = 512

/**
 * Flow in a pipe grows nearly as depth to the power 8/3 while it is shallow (Manning on a small segment), so a table over
 * the flow to the power 3/8 is nearly straight and as good for a film as for a full pipe.
 */
const POWER = 3 / 8

/** Any pipe at any fall gives the same table: how full it runs is told by its flow over what it carries full, alone. */
const PIPE: Section & { readonly shape: 'circle' } = { shape: 'circle', diameterMm: 100 }
const SLOPE_MM_PER_M = 10
const N = 0.01

const tableOf = (): Float64Array => {
  const allLph = fullLph(PIPE.diameterMm, SLOPE_MM_PER_M, N)
  return Float64Array.from({ length: PARTS + 1 }, (_, part) => {
    const flowLph = allLph * (part / PARTS) ** (1 / POWER)
    return (normalDepthMm(PIPE, flowLph, SLOPE_MM_PER_M, N) ?? 0) / PIPE.diameterMm
  })
}

let table: Float64Array | undefined

/**
 * Depth, mm, at which a flow, L/h, runs steadily down a round pipe: `normalDepthMm` to a forty-thousandth of the bore and many times
 * as fast, for bays of hundreds of reaches. 0 for no flow; undefined where it does not fall or the flow does not fit.
 */
export const fillDepthMm = (
  diameterMm: number,
  flowLph: number,
  slopeMmPerM: number,
  n: number,
): number | undefined => {
  if (slopeMmPerM <= 0) return undefined
  const overFull = flowLph / fullLph(diameterMm, slopeMmPerM, n)
  if (overFull <= 0) return 0
  // Over what it carries full it is nearly full, and the table would be too coarse.
  if (overFull >= 1) return normalDepthMm({ shape: 'circle', diameterMm }, flowLph, slopeMmPerM, n)
  table ??= tableOf()
  const at = overFull ** POWER * PARTS
  const part = Math.floor(at)
  const [below, above] = [table[part] ?? 0, table[part + 1] ?? 0]
  return (below + (at - part) * (above - below)) * diameterMm
}
