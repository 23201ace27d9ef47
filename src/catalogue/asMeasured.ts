import { measuresOf, type StockMeasures } from '../model/measuredStock'
import type { Conduit } from './conduit'
import type { Lumber } from './lumber'

/** Rows of the catalogue as the builder's tape and caliper find them; the very row where nothing was measured of it. */
type Measured = readonly StockMeasures[]

export const lumberAsMeasured = (lumber: Lumber, measured: Measured): Lumber => {
  const found = measuresOf(measured, lumber.key)
  if (!found) return lumber
  return { ...lumber, thickMm: found.thickMm ?? lumber.thickMm, wideMm: found.wideMm ?? lumber.wideMm }
}

export const conduitAsMeasured = (conduit: Conduit, measured: Measured): Conduit => {
  const found = measuresOf(measured, conduit.key)
  if (!found) return conduit
  const odMm = found.odMm ?? conduit.odMm
  const wallMm = found.wallMm ?? conduit.wallMm
  return { ...conduit, odMm, wallMm, idMm: odMm - 2 * wallMm }
}
