import { feet } from '../units/length'
import { polys } from './pipe'

/** What one of a thing costs: a piece, or a foot of what comes off a coil. Whole cents. */
export interface Price {
  readonly key: string
  readonly cents: number
  readonly per: 'piece' | 'foot'
  readonly source: string
}

/** How prices are asked for, so that a builder's own can stand before these. Undefined is no price, never 0. */
export type PriceOf = (key: string) => Price | undefined

const PLACEHOLDER = 'Placeholder, invented; put your own'

const price = (key: string, cents: number, per: Price['per'] = 'piece'): Price => ({
  key,
  cents,
  per,
  source: PLACEHOLDER,
})

/** A foot of each pipe and tube. */
const aFoot: Readonly<Record<string, number>> = {
  'pe-1/2': 28,
  'pe-3/4': 40,
  'pe-1': 62,
  'pe-1-1/4': 95,
  'pe-1-1/2': 130,
  'pe-2': 205,
  'drip-1/2': 17,
  'drip-3/4': 31,
  'drip-1': 52,
  'tube-1/8': 8,
  'tube-1/4': 11,
}

/** Fittings by noun, in 1/2 in; a bigger size costs as many times as much as is said below. */
const inHalfInch: Readonly<Record<string, number>> = {
  elbow: 70,
  tee: 95,
  coupling: 50,
  adapter: 80,
  union: 330,
  'ball-valve': 540,
  'trim-valve': 760,
  'sight-tube-tee': 140,
  'lateral-flush-cap': 60,
  'lateral-flush-valve': 260,
  'lateral-plug': 35,
  clamp: 45,
}

const sizeFactor: Readonly<Record<string, number>> = {
  '1/2': 1,
  '3/4': 1.2,
  '1': 1.6,
  '1-1/4': 2.2,
  '1-1/2': 2.8,
  '2': 4,
}

const REDUCER_HALF_INCH = 90

const clamped = polys.filter(({ family }) => family !== 'microtube')

const sizeOf = (key: string): string => key.slice(key.indexOf('-') + 1)

const inSize = (cents: number, pipe: string): number => Math.round(cents * (sizeFactor[sizeOf(pipe)] ?? 1))

const sized = clamped.flatMap(({ key }) =>
  Object.entries(inHalfInch).map(([noun, cents]) => price(`${noun}-${key}`, inSize(cents, key))),
)

const reducers = clamped.flatMap((big) =>
  clamped
    .filter(({ family, idMm }) => family === big.family && idMm < big.idMm)
    .map((small) =>
      price(`reducing-coupling-${big.key}-to-${sizeOf(small.key)}`, inSize(REDUCER_HALF_INCH, big.key)),
    ),
)

/** Things of one size. */
const single: Readonly<Record<string, number>> = {
  'main-tee': 520,
  'main-cap': 240,
  'sight-tube': 180,
  'barb-1/8': 9,
  'barb-1/4': 10,
  'goof-plug': 4,
  'zip-tie': 3,
}

/**
 * Invented prices of what a row's water is made of, so that feeds can be weighed against each other before anyone has
 * asked a shop. What is chosen by its label (pumps, filters, head boxes) and what no shop has is not in it.
 */
export const prices: readonly Price[] = [
  ...Object.entries(aFoot).map(([key, cents]) => price(key, cents, 'foot')),
  ...sized,
  ...reducers,
  ...Object.entries(single).map(([key, cents]) => price(key, cents)),
]

const byKey = new Map(prices.map((row) => [row.key, row]))

/** The placeholder price of a catalogue key, such as `tee-pe-3/4` or `tube-1/8`. */
export const priceOf: PriceOf = (key) => byKey.get(key)

/** What a length costs off the coil, to the cent; what a piece costs has no length. */
export const centsOfLength = ({ cents, per }: Price, lengthMm: number): number | undefined =>
  per === 'foot' ? Math.round((cents * lengthMm) / feet(1)) : undefined
