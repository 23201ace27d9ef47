import { conduitOf, type Conduit } from '../../catalogue/conduit'
import { gutterOf, type Gutter } from '../../catalogue/gutter'
import { lumberOf, type Lumber } from '../../catalogue/lumber'
import type { RackRow } from './schema'

/** What a row is built from: rows of the catalogue. */
export interface Materials {
  readonly lumber: Lumber
  readonly rail: Conduit
  /** Next size up, into which the rail slides: the sleeve of J1, the big stick of J3. */
  readonly big: Conduit
  readonly bar: Conduit
  readonly gutter: Gutter
}

const framing = lumberOf('lumber-2x4')

export const materialsOf = (part: RackRow): Materials => {
  const rail = conduitOf(part.rail)
  return {
    lumber: framing,
    rail,
    // The schema offers as rails only sizes that slide into a bigger one.
    big: conduitOf(rail.slidesInto ?? rail.trade),
    bar: conduitOf(part.bar),
    gutter: gutterOf(part.gutter),
  }
}
