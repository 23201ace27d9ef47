import type { Denominator } from './fraction'
import type { Units } from './length'
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
}

/** The writer of a reader's units. The denominator is the finest part of an inch that the work can use: 16 at the saw, 8 in the trench. */
export const writerFor = (units: Units, denominator: Denominator = 16): Writer => ({
  length: (mm) => writeLength(mm, units, denominator),
  onTape: (mm) => writeOnTape(mm, units, denominator),
  fall: (mmPerM) => writeFall(mmPerM, units),
})
