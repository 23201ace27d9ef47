import { wrapped } from '../drawing/lettering'
import type { Mark, Pen } from '../model/drawing'
import { LEADING, lettered, LETTERS, ruled } from './ink'

/** A piece of a column: how tall it is, and its marks once its top is known. All in mm of paper. */
export interface Block {
  readonly heightMm: number
  readonly draw: (left: number, top: number) => Mark[]
}

/** Words broken to a width. */
export const paragraph = (
  text: string,
  widthMm: number,
  letterMm: number = LETTERS.body,
  pen: Exclude<Pen, 'none'> = 'note',
): Block => {
  const lines = wrapped(text, letterMm, widthMm)
  const step = letterMm * LEADING
  return {
    heightMm: lines.length * step,
    draw: (left, top) =>
      lines.map((line, i) => lettered(line, { x: left, y: top - (i + 0.5) * step }, letterMm, { pen })),
  }
}

/** Words over a thin rule. */
export const heading = (text: string, widthMm: number): Block => ({
  heightMm: LETTERS.heading * LEADING + 1.6,
  draw: (left, top) => {
    const line = top - LETTERS.heading * LEADING - 0.2
    return [
      lettered(text, { x: left, y: top - (LETTERS.heading * LEADING) / 2 }, LETTERS.heading),
      ruled({ x: left, y: line }, { x: left + widthMm, y: line }, 'dimension'),
    ]
  },
})

export const gap = (heightMm: number): Block => ({ heightMm, draw: () => [] })

/** Blocks one below the other. */
export const stacked = (blocks: readonly Block[]): Block => ({
  heightMm: blocks.reduce((sum, { heightMm }) => sum + heightMm, 0),
  draw: (left, top) => {
    let at = top
    return blocks.flatMap((block) => {
      const marks = block.draw(left, at)
      at -= block.heightMm
      return marks
    })
  },
})

/** As many blocks from the front as a height holds. */
export const fitting = (blocks: readonly Block[], heightMm: number): Block[] => {
  let left = heightMm
  const over = blocks.findIndex((block) => {
    left -= block.heightMm
    return left < 0
  })
  return over < 0 ? [...blocks] : blocks.slice(0, over)
}
