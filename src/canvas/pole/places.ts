import type { Level } from '../../evaluate/levelStack'
import { spreadSizes } from '../spread'
import type { PoleScale } from './poleScale'

/** Places across the pole, px. */
export const WIDTH = 128
export const STAFF = { left: 8, right: 22 }
export const LABEL_LEFT = 38

/** A label of two lines of words, px high. */
const LABEL_PX = 28

/** A level with its label: where it is on the staff and where its words have room, px down the pole. */
export interface Placed {
  readonly level: Level
  readonly isFree: boolean
  readonly markY: number
  readonly y: number
  readonly highPx: number
}

/** Room that a label takes, px: one that can be changed is a target for a finger. */
export const labelPx = (isFree: boolean, targetPx: number): number =>
  isFree ? Math.max(LABEL_PX, targetPx) : LABEL_PX

/** Labels down the pole, highest level first, between two places, px. */
export const placed = (
  levels: readonly (readonly [Level, boolean])[],
  scale: PoleScale,
  [top, bottom]: readonly [number, number],
  targetPx: number,
): readonly Placed[] => {
  const falling = levels.toSorted(([a], [b]) => b.levelMm - a.levelMm)
  const marks = falling.map(([{ levelMm }]) => scale.pxOf(levelMm))
  const sizes = falling.map(([, isFree]) => labelPx(isFree, targetPx))
  const places = spreadSizes(marks, sizes, top, bottom)
  return falling.map(([level, isFree], index) => ({
    level,
    isFree,
    markY: marks[index] ?? 0,
    y: places[index] ?? 0,
    highPx: sizes[index] ?? LABEL_PX,
  }))
}
