import { type Aisle, aisleState } from '../checks/aisles'
import type { Point } from '../geometry/point'
import type { Evaluation } from '../evaluate/evaluation'
import type { StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import type { Writer } from '../units/writer'
import { namesOf } from '../store/partNames'
import { aislesAround, besideOf, widthWords } from './spoken'

/** A live distance on the floor, leaf to leaf, with its state. */
export interface Distance {
  readonly from: Point
  readonly to: Point
  /** Name of what stands across. */
  readonly beside: string
  readonly words: string
  readonly state: StateWord
}

/** More than this many are a thicket: the tightest are shown. */
const MOST = 8

/** The row's side that an aisle lies on: posts along one wall, and the wall, make one distance, not twenty. */
const sideOf = ({ row, otherIs, from, to, widthMm }: Aisle): string => {
  const sign = Math.sign(widthMm)
  return [row, otherIs === 'row', Math.sign(to.x - from.x) * sign, Math.sign(to.y - from.y) * sign].join(' ')
}

/** The tightest of each side; `aisles` stand tightest first. */
const oneASide = (aisles: readonly Aisle[]): Aisle[] => {
  const seen = new Set<string>()
  return aisles.filter((aisle) => {
    const side = sideOf(aisle)
    return !seen.has(side) && seen.add(side)
  })
}

/** Distances from what is chosen to what stands next to it, the tightest first. */
export const distancesOf = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): Distance[] =>
  oneASide(aislesAround(evaluation, ids))
    .slice(0, MOST)
    .map((aisle) => {
      const { from, to, widthMm } = aisle
      const state = aisleState(aisle)
      const beside = besideOf(aisle, ids, evaluation)
      return {
        from,
        to,
        beside,
        words: `${widthWords(widthMm, writer)} ${state}`,
        state,
      }
    })

/** The same distances as a screen reader says them: `N2: aisle to Post 22" Tight; aisle to N1 40" Fits`. */
export const carriedWords = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): string => {
  const words = distancesOf(evaluation, ids, writer).map(
    ({ beside, words: wide }) => `aisle to ${beside} ${wide}`,
  )
  return words.length > 0 ? `${namesOf(evaluation.layout, ids)}: ${words.join('; ')}` : ''
}
