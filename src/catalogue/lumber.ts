import { feet, inches } from '../units/length'
import { finder } from './lookup'

export type LumberNominal = '1x4' | '2x3' | '2x4' | '2x6' | '4x4'

/** Softwood framing lumber, dressed dry: named by a nominal size, sold by its actual length. */
export interface Lumber {
  readonly key: `lumber-${LumberNominal}`
  readonly nominal: LumberNominal
  readonly title: string
  /** Actual, mm; thickness is the lesser side. */
  readonly thickMm: number
  readonly wideMm: number
  /** Lengths on the rack of a common yard, shortest first, mm. */
  readonly lengthsMm: readonly number[]
  readonly source: string
}

const SOURCE =
  'American Softwood Lumber Standard, US DOC PS 20, dry dressed sizes; whole-foot lengths in 2 ft steps'

/** Stock lengths in feet: what a yard keeps of any framing size. */
const lengths = [8, 10, 12, 14, 16]

/** One row as the standard prints it: nominal size, actual thickness and width in. */
const row = (nominal: LumberNominal, thick: number, wide: number): Lumber => ({
  key: `lumber-${nominal}`,
  nominal,
  title: `${nominal} lumber`,
  thickMm: inches(thick),
  wideMm: inches(wide),
  lengthsMm: lengths.map(feet),
  source: SOURCE,
})

export const lumbers: readonly Lumber[] = [
  row('1x4', 0.75, 3.5),
  row('2x3', 1.5, 2.5),
  row('2x4', 1.5, 3.5),
  row('2x6', 1.5, 5.5),
  row('4x4', 3.5, 3.5),
]

/** The lumber of a key, such as `lumber-2x4`. */
export const lumberOf: (key: string) => Lumber = finder('lumber', lumbers, (lumber) => lumber.key)
