import type { Aisle } from '../checks/aisles'
import type { Point } from '../geometry/point'
import type { Evaluation } from '../evaluate/evaluation'
import type { StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Writer } from '../units/writer'
import { aislesAround, aisleState } from './spoken'

/** A live distance on the floor, leaf to leaf, with its state. */
export interface Distance {
  readonly from: Point
  readonly to: Point
  readonly words: string
  readonly state: StateWord
}

/** More than this many are a thicket: the tightest are shown. */
const MOST = 8

/** The row's side that an aisle lies on: posts along one wall make one distance, not twenty. */
const sideOf = ({ row, otherIs, from, to, widthMm }: Aisle): string => {
  const sign = Math.sign(widthMm)
  return [row, otherIs, Math.sign(to.x - from.x) * sign, Math.sign(to.y - from.y) * sign].join(' ')
}

/** The tightest of each side; `aisles` stand tightest first. */
const oneASide = (aisles: readonly Aisle[]): Aisle[] => {
  const seen = new Set<string>()
  return aisles.filter((aisle) => {
    const side = sideOf(aisle)
    return !seen.has(side) && seen.add(side)
  })
}

const widthWords = (widthMm: number, writer: Writer): string =>
  widthMm < 0 ? `${writer.onTape(-widthMm)} overlap` : writer.onTape(widthMm)

/** Distances from what is chosen to what stands next to it, the tightest first. */
export const distancesOf = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): Distance[] =>
  oneASide(aislesAround(evaluation, ids))
    .slice(0, MOST)
    .map((aisle) => {
      const state = aisleState(aisle)
      return { from: aisle.from, to: aisle.to, words: `${widthWords(aisle.widthMm, writer)} ${state}`, state }
    })
