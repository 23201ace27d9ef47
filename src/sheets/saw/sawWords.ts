import type { PieceLine } from '../../evaluate/pieceTally'
import type { SharedStop } from './sharedStops'
import type { Board } from '../../model/cutList'
import { mateOf, type Piece, type Saw } from '../../solvers/cutting/problem'
import { isCoil, lengthWriter, unitOfStock } from '../cutWords'
import { marksWords } from '../sawnWords'
import { fromTicks, inches, toTicks, type Units } from '../../units/length'
import { writerFor } from '../../units/writer'
import { writeStock } from '../../units/writeStock'
import type { SawOrder } from './sawOrder'

const SIXTEENTH = toTicks(inches(1 / 16))

/** A length on the tape to the sixteenth; what a piece may not be shorter than goes up to it, never down. */
export const atLeastWords = (mm: number, units: Units): string =>
  units === 'metric'
    ? writerFor(units).onTape(Math.ceil(mm - 1e-6))
    : writerFor(units).onTape(fromTicks(Math.ceil(toTicks(mm) / SIXTEENTH - 1e-6) * SIXTEENTH))

/** A length on the tape that may not be gone over: down to the sixteenth or the mm. */
export const atMostWords = (mm: number, units: Units): string =>
  units === 'metric'
    ? writerFor(units).onTape(Math.floor(mm + 1e-6))
    : writerFor(units).onTape(fromTicks(Math.floor(toTicks(mm) / SIXTEENTH + 1e-6) * SIXTEENTH))

/** How the saw hand makes the pieces of a stop, in full; `keepsRule` where whole boards are parted on marks as drawn. */
export const sawnHow = (
  { cut, lengthTicks, minusTicks }: PieceLine,
  stock: string,
  { keepsRule, saw }: { readonly keepsRule: boolean; readonly saw: Saw },
  units: Units,
): string => {
  if (cut.kind === 'exact' || !keepsRule) return 'Measure'
  const of = `${writeStock(cut.stockMm, units)} ${unitOfStock(stock)}`
  if (cut.kind === 'uncut') return `Whole ${of}, not cut`
  const least = atLeastWords(fromTicks(Math.max(1, lengthTicks - minusTicks)), units)
  if (cut.parts === 2)
    return `Halve: mark the middle of a ${of}, cut on the mark; each half at least ${least}`
  const every = writerFor(units).onTape(fromTicks(mateOf(toTicks(cut.stockMm), cut.parts, saw)))
  return `${cut.parts} equal parts of a ${of}, ${every} each; none under ${least}`
}

/** `26 x 12 ft`, with what the boards are where that is not what the yard sells. */
export const boardName = (
  { count, stockMm, isLeftover }: Pick<Board, 'count' | 'stockMm' | 'isLeftover'>,
  stock: string,
  units: Units,
): string =>
  isLeftover
    ? `${count} x ${lengthWriter(stock, units)(stockMm)} leftover`
    : `${count} x ${writeStock(stockMm, units)}`

/** The pieces of one board in cutting order: `2 x 43-1/2" (BX TT), 16" (SP)`. */
export const piecesWords = (cuts: Board['pieces'], stock: string, units: Units): string => {
  const write = lengthWriter(stock, units)
  return cuts
    .map(({ lengthMm, count, marks }) => {
      const of = marks.length > 0 ? ` (${marksWords(marks)})` : ''
      return count > 1 ? `${count} x ${write(lengthMm)}${of}` : `${write(lengthMm)}${of}`
    })
    .join(', ')
}

/** The work of a material: cuts, and how often the stop is set; coils are cut by the tape, without one. */
export const workWords = ({ cuts, stopSettings }: SawOrder, stock: string): string => {
  const stops = `the stop is set ${stopSettings === 1 ? 'once' : `${stopSettings} times`}`
  if (cuts === 0) return 'Nothing to saw.'
  const all = `${cuts} ${cuts === 1 ? 'cut' : 'cuts'}`
  if (isCoil(stock)) return `${all}.`
  return `${all}${stopSettings > 0 ? `; ${stops}` : ', all on marks: no stop is set'}.`
}

/** What one stop could serve that two do now. */
export const sharedWords = ({ longMm, shortMm, isWithinTolerance }: SharedStop, units: Units): string => {
  const { onTape } = writerFor(units)
  return isWithinTolerance
    ? `One stop at ${onTape(shortMm)} would serve ${onTape(longMm)} and ${onTape(shortMm)}: the longer pieces may be that much shorter.`
    : `${onTape(longMm)} and ${onTape(shortMm)} are ${onTape(longMm - shortMm)} apart, which a tape hardly tells: drawn alike they would share one stop.`
}

/** How short a piece of a line may be cut, beside its length: nothing where it may not. */
export const minusWords = ({ minusTicks }: Pick<Piece, 'minusTicks'>, units: Units): string =>
  minusTicks >= SIXTEENTH ? `no more than ${atMostWords(fromTicks(minusTicks), units)} short` : ''
