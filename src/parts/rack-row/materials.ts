import { conduitAsMeasured, lumberAsMeasured } from '../../catalogue/asMeasured'
import { conduitOf, type Conduit } from '../../catalogue/conduit'
import { gutterOf, type Gutter } from '../../catalogue/gutter'
import { lumberOf, type Lumber } from '../../catalogue/lumber'
import { lengthAsMeasured, type StockLength, type StockMeasures } from '../../model/measuredStock'
import type { RackRow } from './schema'

/** What a row is built from: rows of the catalogue, as the builder's tape and caliper find them. */
export interface Materials {
  readonly lumber: Lumber
  readonly rail: Conduit
  /** Next size up, into which the rail slides: the sleeve of J1, the big stick of J3. */
  readonly big: Conduit
  readonly bar: Conduit
  readonly gutter: Gutter
  /** The length that a stick of one of these is sold by, with what a tape finds. */
  readonly stickOf: (stock: Conduit | Gutter) => StockLength
}

const framing = lumberOf('lumber-2x4')

export const materialsOf = (part: RackRow, measured: readonly StockMeasures[]): Materials => {
  const rail = conduitOf(part.rail)
  // The schema offers as rails only sizes that slide into a bigger one.
  const big = conduitOf(rail.slidesInto ?? rail.trade)
  return {
    lumber: lumberAsMeasured(framing, measured),
    rail: conduitAsMeasured(rail, measured),
    big: conduitAsMeasured(big, measured),
    bar: conduitAsMeasured(conduitOf(part.bar), measured),
    gutter: gutterOf(part.gutter),
    stickOf: (stock) =>
      lengthAsMeasured('stickMm' in stock ? stock.stickMm : stock.sectionMm, stock.key, measured),
  }
}
