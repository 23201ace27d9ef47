import { inches } from '../units/length'
import { poundsPerFoot } from '../units/mass'
import { finder } from './lookup'

export type ConduitTrade = '1/2' | '3/4' | '1' | '1-1/4'

/** Thin-wall steel electrical conduit, sold by a trade size that is none of its dimensions. */
export interface Conduit {
  readonly key: `conduit-${ConduitTrade}`
  readonly trade: ConduitTrade
  readonly title: string
  readonly odMm: number
  readonly wallMm: number
  readonly idMm: number
  /** As published, not computed: the tests hold it against the outside diameter and the wall. */
  readonly kgPerM: number
  readonly stickMm: number
  /** The next size, into which this one slides; none where the catalogue has no bigger one. */
  readonly slidesInto?: ConduitTrade
  readonly source: string
}

const SOURCE =
  'Steel Tube Institute, EMT Weights and Dimensions (as ANSI C80.3 and UL 797); 10 ft sticks: UL 797, from memory'

/** One row as the table prints it: trade size, outside diameter in, wall in, pounds per 100 ft. */
const row = (trade: ConduitTrade, od: number, wall: number, poundsPer100Feet: number): Conduit => ({
  key: `conduit-${trade}`,
  trade,
  title: `${trade} in thin-wall conduit`,
  odMm: inches(od),
  wallMm: inches(wall),
  idMm: inches(od - 2 * wall),
  kgPerM: poundsPerFoot(poundsPer100Feet / 100),
  stickMm: inches(120),
  source: SOURCE,
})

export const conduits: readonly Conduit[] = [
  { ...row('1/2', 0.706, 0.042, 30), slidesInto: '3/4' },
  { ...row('3/4', 0.922, 0.049, 46), slidesInto: '1' },
  { ...row('1', 1.163, 0.057, 67), slidesInto: '1-1/4' },
  row('1-1/4', 1.51, 0.065, 101),
]

/** The conduit of a trade size, such as `3/4`. */
export const conduitOf: (trade: string) => Conduit = finder('conduit', conduits, (conduit) => conduit.trade)
