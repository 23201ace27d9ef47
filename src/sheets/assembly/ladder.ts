import { boxOf } from '../../geometry/box'
import { ruled } from '../ink'
import { together, wordsAt, type Worded } from '../paperDimensions'
import { spread } from '../spread'

/** A height with its words, mm of paper. */
export interface Rung {
  readonly y: number
  readonly text: string
}

interface LadderLook {
  readonly letterMm: number
  /** From one line of words to the next, mm. */
  readonly lineMm: number
  /** Which way from `x` its words stand. */
  readonly side: 'left' | 'right'
}

/** From where a leader starts to where its words do, mm. */
export const LADDER_MM = 6

/** Heights beside a drawing, each with a leader to where it is read; rungs from the lowest up. */
export const ladder = (rungs: readonly Rung[], x: number, { letterMm, lineMm, side }: LadderLook): Worded => {
  const out = side === 'right' ? 1 : -1
  const ys = spread(
    rungs.map(({ y }) => y),
    lineMm,
  )
  return together(
    rungs.map(({ y: at, text }, index) => {
      const y = ys[index] ?? at
      const words = wordsAt(text, { x: x + out * LADDER_MM, y }, letterMm, side === 'right' ? 'start' : 'end')
      const [from, bend, to] = [
        { x: x - out * 3, y: at },
        { x: x + out, y: at },
        { x: x + out * (LADDER_MM - 1), y },
      ]
      return {
        marks: [ruled(from, bend, 'dimension'), ruled(bend, to, 'dimension'), ...words.marks],
        // No ring stands on a leader either.
        boxes: [...words.boxes, boxOf([from, to])],
      }
    }),
  )
}
