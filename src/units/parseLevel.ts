import { onTick, type Units } from './length'
import { parseLength, type ParsedLength } from './parseLength'
import { respell } from './typed'
import type { LevelReading, LevelUnits } from './writeLevel'

/** Marks that a number without one has where levels are read in one unit. */
const MARK: Readonly<Partial<Record<LevelUnits, string>>> = { inches: '"', feet: "'", mm: ' mm' }

const UNMARKED = /^[+-]?[\d./ -]+$/

/** `5-6-1/2` and `5-6` are feet and inches to everybody; `66-1/2` is one number. */
const DASHED_FEET = /^[+-]?\d+-\d+(?![\d/])/

const marked = (text: string, unit: LevelUnits): string => {
  const typed = respell(text)
  const isBare = UNMARKED.test(typed) && !DASHED_FEET.test(typed)
  return isBare ? `${typed}${MARK[unit] ?? ''}` : text
}

/**
 * The level that a builder typed, in mm above the file's zero: what `writeLevel` writes, read back. A number without a
 * mark is in the unit that levels are read in; any length is read as `parseLength` reads it, and refused likewise.
 */
export const parseLevel = (text: string, units: Units, { zeroMm, in: unit }: LevelReading): ParsedLength => {
  const read = parseLength(marked(text, unit), units)
  return read.ok ? { ok: true, mm: onTick(read.mm - zeroMm) + 0 } : read
}
