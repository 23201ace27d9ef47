import type { Units } from './length'
import { asTyped, atSaw, type Precision } from './precision'
import { writeFall } from './writeFall'
import { writeLength, writeOnTape } from './writeLength'

/** Numbers in the units of one reader; whoever makes words is handed one and never asks which units they are. */
export interface Writer {
  /** A length in mm: `5' 6-1/2"` or `1690 mm`. */
  readonly length: (mm: number) => string
  /** A length in mm as read along a tape, never in feet: `66-1/2"` or `1690 mm`. */
  readonly onTape: (mm: number) => string
  /** A fall in mm per metre: `1/8 in/ft` or `10.4 mm/m`. */
  readonly fall: (mmPerM: number) => string
  /** The same units as typed, for the few numbers that the crew's step would make alike. */
  readonly exact: () => Writer
}

/** The writer of a reader's units, to the precision that the work can use. */
export const writerFor = (units: Units, precision: Precision = atSaw): Writer => ({
  length: (mm) => writeLength(mm, units, precision),
  onTape: (mm) => writeOnTape(mm, units, precision),
  fall: (mmPerM) => writeFall(mmPerM, units),
  exact: () => writerFor(units, asTyped),
})
