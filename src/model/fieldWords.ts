import type { Writer } from '../units/writer'
import type { FieldMeta } from './fields'

/** The number of a field as a reader has it; one without a unit of measure, such as a count, as it is. */
export const fieldNumberWords = (
  value: number,
  unit: FieldMeta['unit'] | undefined,
  writer: Writer,
): string => {
  switch (unit) {
    case 'plain-level':
      return writer.plainLevel(value)
    case 'length':
    case 'level':
    case 'fall':
    case 'flow':
    case 'temperature':
    case 'warming':
    case 'share':
    case 'volume':
    case 'minutes':
    case 'mass':
    case 'force':
    case 'stress':
    case 'pressure':
      return writer[unit](value)
    default:
      return String(value)
  }
}
