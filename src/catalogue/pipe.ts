import { feet, inches } from '../units/length'
import { inchesPerFoot } from '../units/slope'
import { COMMON_PRACTICE, finder } from './lookup'

/** Buried gravity pipe. */
export interface DrainPipe {
  readonly key: 'drain-2in' | 'drain-3in' | 'drain-4in' | 'drain-6in' | 'drain-8in'
  readonly title: string
  readonly odMm: number
  readonly idMm: number
  readonly wallMm: number
  readonly stickMm: number
  /** How far the bell at a stick's uphill end takes the next one in. */
  readonly bellMm: number
  /** Least fall that the plumbing code asks of the size: International Plumbing Code, Table 704.1, as adopted. */
  readonly leastFallMmPerM: number
  readonly source: string
}

/**
 * International Plumbing Code, Table 704.1: 1/4 in a foot up to 2-1/2 in, 1/8 from 3 to 6 in, 1/16 from 8 in. A check value,
 * not a permit.
 */
const codeFall = (size: number): number => {
  if (size <= 2.5) return inchesPerFoot(1 / 4)
  return inchesPerFoot(size <= 6 ? 1 / 8 : 1 / 16)
}

/** Depth of the bells by size, inches: ASTM D2729 and D3034, least socket depths, from memory. */
const BELL_DEPTHS = { 2: 1.5, 3: 1.5, 4: 1.75, 6: 3, 8: 4 }

const drainRow = (size: 2 | 3 | 4 | 6 | 8, od: number, id: number, source: string): DrainPipe => ({
  key: `drain-${size}in`,
  title: `${size} in drain pipe`,
  odMm: inches(od),
  idMm: inches(id),
  wallMm: inches((od - id) / 2),
  stickMm: inches(120),
  bellMm: inches(BELL_DEPTHS[size]),
  leastFallMmPerM: codeFall(size),
  source,
})

const THIN_WALL = 'ASTM D2729 thin-wall drain pipe, from memory, bore to the nearest 0.01 in'

export const drainPipes: readonly DrainPipe[] = [
  // The same 2 in pipe makes the drops, so it is the thick-walled one that a 2-1/2 in hole takes.
  drainRow(2, 2.375, 2.067, 'ASTM D1785 schedule 40, from memory'),
  drainRow(3, 3.25, 3.11, THIN_WALL),
  drainRow(4, 4.215, 4.06, THIN_WALL),
  drainRow(6, 6.275, 6.08, THIN_WALL),
  // Thin-wall pipe ends at 6 in; wall 1/35 of the outside.
  drainRow(8, 8.4, 7.92, 'ASTM D3034 sewer pipe, SDR 35, from memory'),
]

/** The drain pipe of a key, such as `drain-4in`. */
export const drainPipeOf: (key: string) => DrainPipe = finder('drain pipe', drainPipes, (pipe) => pipe.key)

/**
 * What joins with what. Poly pipe is made to its inside diameter, drip tubing to its own, and neither takes the
 * other's fittings though both are sold as "3/4 in"; a microtube only meets a barb.
 */
export type PolyFamily = 'poly-pipe' | 'drip-tubing' | 'microtube'

/** Flexible pipe that comes in a coil. */
export interface Poly {
  readonly key: string
  readonly family: PolyFamily
  readonly title: string
  readonly idMm: number
  readonly odMm: number
  readonly coilMm: number
  readonly source: string
}

type Sizes = Omit<Poly, 'coilMm' | 'idMm' | 'odMm'> & { readonly id: number; readonly od: number }

/** One row: diameters in inches as published. Coils of 100 ft: common practice, no source. */
const polyRow = ({ id, od, ...words }: Sizes): Poly => ({
  ...words,
  idMm: inches(id),
  odMm: inches(od),
  coilMm: feet(100),
})

const pipeRow = (size: string, id: number, wall: number): Poly =>
  polyRow({
    key: `pe-${size}`,
    family: 'poly-pipe',
    title: `${size} in poly pipe`,
    id,
    od: id + 2 * wall,
    source: 'ASTM D2239 polyethylene pipe controlled by inside diameter, SIDR 15, from memory',
  })

const dripRow = (size: string, id: number, od: number): Poly =>
  polyRow({
    key: `drip-${size}`,
    family: 'drip-tubing',
    title: `${size} in drip tubing`,
    id,
    od,
    source: COMMON_PRACTICE,
  })

const microRow = (size: string, id: number, od: number): Poly =>
  polyRow({
    key: `tube-${size}`,
    family: 'microtube',
    title: `${size} in microtube`,
    id,
    od,
    source: 'Retail help pages on drip irrigation microtubing',
  })

export const polys: readonly Poly[] = [
  pipeRow('1/2', 0.622, 0.06),
  pipeRow('3/4', 0.824, 0.06),
  pipeRow('1', 1.049, 0.07),
  pipeRow('1-1/4', 1.38, 0.092),
  pipeRow('1-1/2', 1.61, 0.107),
  pipeRow('2', 2.067, 0.138),
  dripRow('1/2', 0.6, 0.7),
  dripRow('3/4', 0.82, 0.94),
  dripRow('1', 1.06, 1.2),
  microRow('1/8', 0.125, 0.187),
  microRow('1/4', 0.17, 0.25),
]

/** The poly pipe, drip tubing or microtube of a key, such as `pe-3/4` or `tube-1/8`. */
export const polyOf: (key: string) => Poly = finder('poly', polys, (poly) => poly.key)
