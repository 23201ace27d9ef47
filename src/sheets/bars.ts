import type { Box } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { Mark } from '../model/drawing'
import { feet, inches, type Units } from '../units/length'
import type { Writer } from '../units/writer'
import type { Block } from './block'
import { lettered, LETTERS, panel, ruled } from './ink'

const SEGMENTS = 4
/** The narrowest column less room for the last words. */
const LONGEST_BAR_MM = 44
const INSET_MM = 4
const BAR_MM = 1.8

const segmentsMm: Readonly<Record<Units, readonly number[]>> = {
  'feet-inches': [0.5, 1, 2, 5, 10, 20, 50, 100, 200].map(feet),
  metric: [100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000],
}

/** Lengths that the check bar may have, longest first. */
const checksMm: Readonly<Record<Units, readonly number[]>> = {
  'feet-inches': [12, 6, 4, 2].map(inches),
  metric: [300, 150, 100, 50],
}

/** One quarter of the scale bar in mm of floor: the longest round length that keeps the bar handy. */
export const scaleSegment = (ratio: number, units: Units): number => {
  const fits = segmentsMm[units].filter((mm) => (SEGMENTS * mm) / ratio <= LONGEST_BAR_MM)
  return fits.at(-1) ?? segmentsMm[units][0] ?? 1
}

/** Length of the check bar, mm of paper. */
export const checkLength = (roomMm: number, units: Units): number =>
  checksMm[units].find((mm) => mm <= roomMm) ?? checksMm[units].at(-1) ?? roomMm

const BLOCK_MM = 9

/** The scale bar of the floor, in mm of paper. */
export const scaleBar = (ratio: number, units: Units, write: Writer): Block => ({
  heightMm: BLOCK_MM,
  draw: (left, top) => {
    const segment = scaleSegment(ratio, units)
    const paperMm = segment / ratio
    const x = left + INSET_MM
    const y = top - BLOCK_MM + 2
    const boxes = Array.from({ length: SEGMENTS }, (_, i) => {
      const box = { x0: x + i * paperMm, y0: y, x1: x + (i + 1) * paperMm, y1: y + BAR_MM }
      return panel(box, 'outline', i % 2 === 0 ? 'post' : 'paper')
    })
    const words = [0, SEGMENTS / 2, SEGMENTS].map((i) => {
      const at = { x: x + i * paperMm, y: y + BAR_MM + 2 }
      return lettered(i === 0 ? '0' : write.length(i * segment), at, LETTERS.small, { anchor: 'middle' })
    })
    return [...boxes, ...words]
  },
})

/** A bar that shows whether the printer kept the size, along the longer side of its room. In mm of paper. */
export const checkBar = (room: Box, units: Units, write: Writer): Mark[] => {
  const upright = room.y1 - room.y0 > room.x1 - room.x0
  const longMm = Math.max(room.x1 - room.x0, room.y1 - room.y0)
  const lengthMm = checkLength(longMm - 2 * INSET_MM, units)
  const line = (upright ? room.x0 : room.y0) + 2.4
  const start = (upright ? (room.y0 + room.y1) / 2 : (room.x0 + room.x1) / 2) - lengthMm / 2
  /** `along` the bar from its start, `aside` towards the drawing. */
  const place = (along: number, aside: number): Point =>
    upright ? { x: line + aside, y: start + along } : { x: start + along, y: line + aside }
  return [
    ruled(place(0, 0), place(lengthMm, 0), 'outline'),
    ...[0, lengthMm].map((along) => ruled(place(along, -1.4), place(along, 1.4), 'outline')),
    lettered(
      `Measure me: ${write.onTape(lengthMm)}. If I am not, this print is not to scale.`,
      place(lengthMm / 2, 2.4),
      LETTERS.small,
      { anchor: 'middle', upright },
    ),
  ]
}
