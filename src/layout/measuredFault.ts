import { conduitAsMeasured, lumberAsMeasured } from '../catalogue/asMeasured'
import { conduits } from '../catalogue/conduit'
import { lumbers } from '../catalogue/lumber'
import { stocks } from '../catalogue/stock'
import type { StockMeasures } from '../model/measuredStock'
import type { Writer } from '../units/writer'

type Measured = readonly StockMeasures[]

/** Two walls fill the whole of an outside diameter. */
const conduitFault = (measured: Measured, { bore }: Pick<Writer, 'bore'>): string | undefined => {
  for (const conduit of conduits) {
    const { title, odMm, wallMm, idMm } = conduitAsMeasured(conduit, measured)
    if (idMm <= 0)
      return `${title} can't have a wall of ${bore(wallMm)} in an outside diameter of ${bore(odMm)}: nothing is left inside`
  }
  return undefined
}

/** A board lies on its wide side and stands on its thin one. */
const lumberFault = (measured: Measured, { onTape }: Pick<Writer, 'onTape'>): string | undefined => {
  for (const lumber of lumbers) {
    const { title, thickMm, wideMm } = lumberAsMeasured(lumber, measured)
    if (thickMm > wideMm)
      return `${title} can't be ${onTape(thickMm)} thick and ${onTape(wideMm)} wide: the thickness is the lesser side`
  }
  return undefined
}

const titleOf = (stock: string): string => stocks.find(({ key }) => key === stock)?.title ?? stock

/** Of two that are measured as one nobody knows which holds. */
const twiceFault = (measured: Measured): string | undefined => {
  const twice = measured.find(({ stock }, index) =>
    measured.slice(0, index).some((each) => each.stock === stock),
  )
  return twice && `${titleOf(twice.stock)} is measured twice`
}

/** What the schema cannot say of measured stock: in words without a full stop, or undefined where it can be so. */
export const measuredFault = (measured: Measured, writer: Writer): string | undefined =>
  measured.length === 0
    ? undefined
    : (twiceFault(measured) ?? conduitFault(measured, writer) ?? lumberFault(measured, writer))
