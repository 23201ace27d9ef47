import type { LineState } from '../../../evaluate/sawn/whatsCut'
import { unitOfStock } from '../../../sidebar/cutWords'
import { memberName } from '../../../sidebar/memberNames'
import type { Board } from '../../../model/cutList'
import { leastOf } from '../../../solvers/cutting/problem'
import { fromTicks, type Units } from '../../../units/length'
import { writerFor } from '../../../units/writer'
import { LEAST_KEPT_MM } from './sawDeeds'

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

/** How many splice plates come of an offcut, where the bay's runners are spliced. */
const platesOf = (lengthMm: number, lines: readonly LineState[]): number => {
  const plate = lines.find(({ line }) => line.marks.includes(PLATE))?.line
  return plate ? Math.floor(lengthMm / fromTicks(plate.lengthTicks)) : 0
}

/** What offcuts of one length are good for in this bay. */
export const offcutWords = (
  lengthMm: number,
  stock: string,
  lines: readonly LineState[],
  { pegs, shimmedFeet }: OffcutUses,
  units: Units,
): string => {
  const { onTape } = writerFor(units)
  const spare = spareOf(lengthMm, lines)
  const plates = platesOf(lengthMm, lines)
  const isBoard = unitOfStock(stock) === 'board'
  const uses = [
    ...(plates > 0 ? [`${plates} ${memberName(PLATE)}${plates === 1 ? '' : 's'}`] : []),
    ...(spare
      ? [`a spare ${spare.marks.map(memberName).join(', ')} (${onTape(fromTicks(spare.lengthTicks))})`]
      : []),
    ...(isBoard && pegs > 0 ? [`stakes for the ${pegs} pegs of the trenches`] : []),
    ...(isBoard && shimmedFeet > 0 ? [`packing under the ${shimmedFeet} riser feet that are shimmed`] : []),
  ]
  return uses.length > 0 ? uses.join('; ') : 'the next job'
}
