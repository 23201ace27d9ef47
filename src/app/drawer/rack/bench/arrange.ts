/** Which views of a row are drawn. */
export type Views = 'along' | 'across' | 'both'

/** Room for drawings, mm of glass. */
export interface Room {
  readonly widthMm: number
  readonly heightMm: number
}

/** How wide a drawing is: what stands beside it, mm of glass, and what is drawn to scale, mm of the rack. */
export interface Width {
  readonly besideMm: number
  readonly lengthMm: number
}

export interface Asked {
  readonly along: Width
  readonly across: Width
  /** The largest scale at which a drawing is no higher than this, mm of glass. */
  readonly scaleFor: (heightMm: number) => number
  /** Nothing is drawn smaller, whatever the room: unasked, both are drawn only where they fit so. */
  readonly leastScale: number
  /** A row of many racks scrolls along; a rack never does. */
  readonly isRow: boolean
  readonly canStack: boolean
}

/** Scale is mm of glass a mm of the rack. */
export interface Arranged {
  readonly scale: number
  readonly views: Views
  readonly isStacked: boolean
}

/** A row may be drawn so much smaller to be seen whole, rather than be scrolled. */
const SHRINKS_TO = 0.6

/** Both views are drawn unasked where that leaves them so much of the size that one alone would have. */
const WORTH_BOTH = 0.7

/** Both views beside or over each other, whichever makes them larger, or one alone; unasked both where there is room for both. */
export const arrange = (asked: Asked, room: Room, views: Views | undefined): Arranged => {
  const { along, across, scaleFor, leastScale, isRow, canStack } = asked
  const scaleOf = (heightMm: number, ...beside: readonly Width[]): number => {
    const byHeight = scaleFor(heightMm)
    const freeMm = room.widthMm - beside.reduce((sum, { besideMm }) => sum + besideMm, 0)
    const byWidth = freeMm / beside.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
    const mayScroll = isRow && beside.includes(along)
    return Math.min(byHeight, mayScroll ? Math.max(byWidth, SHRINKS_TO * byHeight) : byWidth)
  }
  const one = (each: Views, width: Width): Arranged => ({
    scale: scaleOf(room.heightMm, width),
    views: each,
    isStacked: false,
  })
  if (views === 'along') return one('along', along)
  if (views === 'across') return one('across', across)
  const besideEach = scaleOf(room.heightMm, along, across)
  const half = room.heightMm / 2
  const stacked = canStack ? Math.min(scaleOf(half, along), scaleOf(half, across)) : 0
  const both: Arranged = {
    scale: Math.max(besideEach, stacked),
    views: 'both',
    isStacked: stacked > besideEach,
  }
  const alone = one('along', along)
  const isWorthIt = both.scale >= leastScale && both.scale >= WORTH_BOTH * alone.scale
  return views === 'both' || isWorthIt ? both : alone
}
