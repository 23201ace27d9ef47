import { feet, inches } from './length'
import type { Units } from './length'
import { atSaw, type Precision } from './precision'
import { writeDecimal } from './writeDecimal'
import { NO_VALUE, writeLength } from './writeLength'

/** What a level is read in: like any other length, or decimally in one unit, as a rod is graduated. */
export type LevelUnits = 'tape' | 'inches' | 'feet' | 'mm'

/** How one crew reads levels, whatever its lengths are in. */
export interface LevelReading {
  /** What the zero of the file's levels is called on paper, mm: 0, or what puts the benchmark at its value. */
  readonly zeroMm: number
  readonly in: LevelUnits
}

/** Levels as the file keeps them, written like lengths. */
export const plainReading: LevelReading = { zeroMm: 0, in: 'tape' }

/** The units in whose round numbers levels are read: a scale of levels has its marks there. */
export const unitsOfLevels = (units: Units, { in: unit }: LevelReading): Units => {
  if (unit === 'tape') return units
  return unit === 'mm' ? 'metric' : 'feet-inches'
}

/** A builder's rod is painted in hundredths of a foot, which is about 1/8 in; a hundredth of an inch is finer than any level shot. */
const DECIMALS = 2

/** As typed and kept, so many more decimals as tell one tick from the next: 1/320 mm is 0.0001 in and 0.00001 ft. */
const MORE_DECIMALS = { inches: 2, feet: 3 }

/**
 * A level, mm above the file's zero, as read off a rod: `-8-1/4"` or `-209 mm` like a length, else `-8.25"`, `99.31 ft`,
 * `-209 mm`. What is typed and kept has as many decimals as it needs. A depth, cut or cover is no level: `writeLength` writes those.
 */
export const writeLevel = (
  mm: number,
  units: Units,
  precision: Precision = atSaw,
  reading: LevelReading = plainReading,
): string => {
  if (!Number.isFinite(mm)) return NO_VALUE
  const onPaperMm = mm + reading.zeroMm
  const most = (unit: 'inches' | 'feet') => DECIMALS + (precision.hasMoreDigits ? MORE_DECIMALS[unit] : 0)
  switch (reading.in) {
    case 'tape':
      return writeLength(onPaperMm, units, precision)
    case 'inches':
      return `${writeDecimal(onPaperMm / inches(1), DECIMALS, most('inches'))}"`
    case 'feet':
      return `${writeDecimal(onPaperMm / feet(1), DECIMALS, most('feet'))} ft`
    case 'mm':
      return writeLength(onPaperMm, 'metric', precision)
  }
}
