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

/** Distances from what is chosen to what stands next to it, the tightest first. */
export const distancesOf = (evaluation: Evaluation, ids: readonly PartId[], writer: Writer): Distance[] =>
  aislesAround(evaluation, ids)
    .slice(0, MOST)
    .map((aisle) => {
      const state = aisleState(aisle)
      return { from: aisle.from, to: aisle.to, words: `${writer.onTape(aisle.widthMm)} ${state}`, state }
    })
