import type { Quantity } from '../model/finding'
import { writeDecimal } from '../units/writeDecimal'
import type { Writer } from '../units/writer'

/**
 * How lengths are read. What a builder holds a tape to is in inches alone, `36"`: clearances, aisles, carts, headroom,
 * covers, drops, gaps, shims, and how far a mend shifts a thing. What is long, and where a thing lies, is in feet,
 * `34' 0"`: gutter runs, drains, stock, places. Levels are read as the crew reads them. A rule's sentence and its arithmetic never differ.
 */
export const quantityWords = (
  { value, unit, isInFeet, isLevel, isTotal }: Quantity,
  writer: Writer,
): string => {
  switch (unit) {
    case 'mm':
      if (isLevel) return writer.level(value)
      return isInFeet ? writer.length(value) : writer.onTape(value)
    case 'mm/m':
      return writer.fall(value)
    case 'lph':
      return isTotal ? writer.flowTotal(value) : writer.flow(value)
    case 'm/s':
      return writer.velocity(value)
    case 'C':
      return writer.temperature(value)
    case 'L':
      return writer.volume(value)
    case 'min':
      return writer.minutes(value)
    case 'share':
      return writer.share(value)
    case 'kg':
      return writer.mass(value)
    case 'N':
      return writer.force(value)
    case 'MPa':
      return writer.stress(value)
    case 'kPa':
      return writer.pressure(value)
    case 'Nmm':
      return writer.moment(value)
    case 'ratio':
      return writeDecimal(value, 2)
    case 'count':
      return String(value)
  }
}

/** How far a thing goes by the compass: `8" north and 2" east`. */
export const shiftWords = (dxMm: number, dyMm: number, { onTape }: Writer): string =>
  [
    dyMm !== 0 ? `${onTape(Math.abs(dyMm))} ${dyMm > 0 ? 'north' : 'south'}` : '',
    dxMm !== 0 ? `${onTape(Math.abs(dxMm))} ${dxMm > 0 ? 'east' : 'west'}` : '',
  ]
    .filter(Boolean)
    .join(' and ')
