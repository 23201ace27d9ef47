import { conduitAsMeasured, lumberAsMeasured } from '../../catalogue/asMeasured'
import { conduitOf, conduits, type Conduit } from '../../catalogue/conduit'
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
  /** Next size down, which slides into the rail: the dowel of J4. The smallest rail has none, and its dowel does not go in. */
  readonly dowel: Conduit
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
  const dowel = conduits.find(({ slidesInto }) => slidesInto === rail.trade) ?? rail
  return {
    lumber: lumberAsMeasured(framing, measured),
    rail: conduitAsMeasured(rail, measured),
    big: conduitAsMeasured(big, measured),
    dowel: conduitAsMeasured(dowel, measured),
    bar: conduitAsMeasured(conduitOf(part.bar), measured),
    gutter: gutterOf(part.gutter),
    stickOf: (stock) =>
      lengthAsMeasured('stickMm' in stock ? stock.stickMm : stock.sectionMm, stock.key, measured),
  }
}
