import type { Mark } from '../model/drawing'
import { type Block, fitting, stacked } from './block'

/** A piece of paper that words flow into, mm of paper. */
export interface Room {
  readonly left: number
  readonly top: number
  readonly widthMm: number
  readonly heightMm: number
}

/** A block as it comes out at a width. */
export type BlockAt = (widthMm: number) => Block

export interface Pourable {
  readonly block: BlockAt
  /** Set before the block where it is the first of a further room: what is being continued. */
  readonly again?: BlockAt
}

export interface Poured {
  readonly marks: readonly Mark[]
  /** How many blocks from the front found room. */
  readonly count: number
}

/** Blocks as they would stand in a room of that width. */
const inRoom = (blocks: readonly Pourable[], widthMm: number): Block[] =>
  blocks.map(({ block, again }, i) =>
    i === 0 && again !== undefined ? stacked([again(widthMm), block(widthMm)]) : block(widthMm),
  )

/** Blocks one below the other through rooms, in order and never out of it. */
export const pour = (blocks: readonly Pourable[], rooms: readonly Room[]): Poured => {
  const marks: Mark[] = []
  let count = 0
  for (const { left, top, widthMm, heightMm } of rooms) {
    const shown = fitting(inRoom(blocks.slice(count), widthMm), heightMm)
    marks.push(...stacked(shown).draw(left, top))
    count += shown.length
  }
  return { marks, count }
}
