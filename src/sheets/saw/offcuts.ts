import type { LineState } from '../../evaluate/sawn/whatsCut'
import { isCoil, unitOfStock } from '../cutWords'
import { memberName } from '../../model/memberNames'
import type { Board } from '../../model/cutList'
import { leastOf, type Saw } from '../../solvers/cutting/problem'
import { fromTicks, inches, toTicks, type Units } from '../../units/length'
import { writerFor } from '../../units/writer'

/** Offcuts so long are kept: splice plates, packing and stakes come of them. Common practice, no source. */
export const LEAST_KEPT_MM = inches(16)

/** Like offcuts of a plan that are worth keeping. */
export interface KeptOffcut {
  readonly lengthMm: number
  readonly count: number
}

/** Offcuts worth keeping of these boards, longest first, those of one length on the tape together. */
export const keptOffcuts = (
  boards: readonly Pick<Board, 'offcutMm' | 'count'>[],
  onTape: (mm: number) => string,
): readonly KeptOffcut[] => {
  const kept = new Map<string, KeptOffcut>()
  for (const { offcutMm, count } of boards) {
    if (offcutMm < LEAST_KEPT_MM) continue
    const before = kept.get(onTape(offcutMm))
    const lengthMm = Math.min(offcutMm, before?.lengthMm ?? offcutMm)
    kept.set(onTape(offcutMm), { lengthMm, count: count + (before?.count ?? 0) })
  }
  return [...kept.values()].sort((a, b) => b.lengthMm - a.lengthMm)
}

/** What of a bay offcuts of lumber can serve beside its members. */
export interface OffcutUses {
  /** Pegs and stakes that its trenches take. */
  readonly pegs: number
  /** Feet that are packed up. */
  readonly shimmedFeet: number
}

/** The longest member of the same stock that comes of an offcut, to have a spare of it; undefined where none does. */
const spareOf = (lengthMm: number, lines: readonly LineState[]): LineState['line'] | undefined =>
  lines
    .map(({ line }) => line)
    .filter(({ marks }) => !marks.includes(PLATE))
    .filter((line) => fromTicks(leastOf({ ...line, rule: { kind: 'exact' } })) <= lengthMm)
    .reduce<LineState['line'] | undefined>(
      (best, line) => (best && best.lengthTicks >= line.lengthTicks ? best : line),
      undefined,
    )

const PLATE = 'SP'

/** How many pieces of a length come of an offcut: a kerf between two, none after the last where it ends with the offcut. */
const piecesOf = (lengthMm: number, lengthTicks: number, { kerfTicks }: Saw): number =>
  Math.floor((toTicks(lengthMm) + kerfTicks) / (lengthTicks + kerfTicks))

/** How many splice plates come of an offcut, where the bay's runners are spliced. */
const platesOf = (lengthMm: number, lines: readonly LineState[], saw: Saw): number => {
  const plate = lines.find(({ line }) => line.marks.includes(PLATE))?.line
  return plate ? piecesOf(lengthMm, plate.lengthTicks, saw) : 0
}

/** `a spare base cross-piece or top tie (43-1/2")`, `10 spares of 8-1/4" (sleeve)`. */
const spareWords = ({ marks }: LineState['line'], count: number, length: string): string => {
  const names = [...new Set(marks.map((mark) => memberName(mark).replace(/,.*/, '')))]
  const name = names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`
  return count > 1 ? `${count} spares of ${length} (${name})` : `a spare ${name} (${length})`
}

/** What offcuts of one length are good for in this bay. */
export const offcutWords = (
  lengthMm: number,
  { stock, saw }: { readonly stock: string; readonly saw: Saw },
  lines: readonly LineState[],
  { pegs, shimmedFeet }: OffcutUses,
  units: Units,
): string => {
  if (isCoil(stock)) return 'the next job'
  const { onTape } = writerFor(units)
  const spare = spareOf(lengthMm, lines)
  const plates = platesOf(lengthMm, lines, saw)
  const isBoard = unitOfStock(stock) === 'board'
  const uses = [
    ...(plates > 0 ? [`${plates} ${memberName(PLATE)}${plates === 1 ? '' : 's'}`] : []),
    ...(spare
      ? [
          spareWords(
            spare,
            Math.max(1, piecesOf(lengthMm, spare.lengthTicks, saw)),
            onTape(fromTicks(spare.lengthTicks)),
          ),
        ]
      : []),
    ...(isBoard && pegs > 0 ? [`stakes for the ${pegs} pegs of the trenches`] : []),
    ...(isBoard && shimmedFeet > 0 ? [`packing under the ${shimmedFeet} riser feet that are shimmed`] : []),
  ]
  return uses.length > 0 ? uses.join('; or ') : 'the next job'
}
