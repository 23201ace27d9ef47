import type { Aisle } from '../../checks/aisles'
import { rowBoxes } from '../../checks/standing'
import type { Bay } from '../../checks/context'
import { middle, type Box } from '../../geometry/box'
import { distance, type Point } from '../../geometry/point'
import type { DimensionMark } from '../../model/drawing'
import type { Writer } from '../../units/writer'
import { dimensionBoxes, type ClearWords } from '../clearWords'
import { lineBoxes } from './shunned'

/** The same way measured again nearer than this says nothing new, mm of paper. */
const AGAIN_MM = 70
/** How far along the way the line may slide to clear other words, shares of the length that the two face each other. */
const SLIDES = [0, 0.12, -0.12, 0.24, -0.24, 0.36, -0.36, 0.44, -0.44]
/** Two measured ways are one where they agree to this, mm. */
const SAME_MM = 1

const notes = { row: 'leaf to leaf', wall: 'leaf to wall', obstacle: 'leaf to obstacle' } as const

type Axis = 'x' | 'y'

const axisOf = ({ from, to }: Aisle): Axis => (Math.abs(to.x - from.x) >= Math.abs(to.y - from.y) ? 'x' : 'y')
const acrossOf = (aisle: Aisle): Axis => (axisOf(aisle) === 'x' ? 'y' : 'x')

const isSame = (a: Aisle, b: Aisle): boolean => {
  const axis = axisOf(a)
  if (axisOf(b) !== axis) return false
  const [aLow, aHigh] = [Math.min(a.from[axis], a.to[axis]), Math.max(a.from[axis], a.to[axis])]
  const [bLow, bHigh] = [Math.min(b.from[axis], b.to[axis]), Math.max(b.from[axis], b.to[axis])]
  return Math.abs(aLow - bLow) < SAME_MM && Math.abs(aHigh - bHigh) < SAME_MM
}

/** Ways beside an obstacle that are wider than this many times what they need are not worth a line on the sheet. */
const AMPLE = 1.5

export const isWorthALine = ({ widthMm, otherIs, needMm }: Aisle): boolean =>
  widthMm > 0 && (otherIs !== 'obstacle' || widthMm < AMPLE * needMm)

/** The same way measured more often than this, row behind row, is written once for all of them. */
const OFTEN = 3

/** One width to write, and every aisle of the bay that it may be written in. */
export type Way = readonly [Aisle, ...Aisle[]]

/** Aisles that measure the same, in the order of the first of each. */
const sameOnes = (aisles: readonly Aisle[]): Aisle[][] => {
  const ways: Aisle[][] = []
  for (const aisle of aisles) {
    const way = ways.find(([first]) => first !== undefined && isSame(first, aisle))
    if (way === undefined) ways.push([aisle])
    else way.push(aisle)
  }
  return ways
}

/** Those of a way that are far enough apart on the paper to be written each. */
const apart = (way: readonly Aisle[], ratio: number): Way[] => {
  const kept: Aisle[] = []
  for (const aisle of way)
    if (!kept.some(({ from }) => distance(from, aisle.from) < AGAIN_MM * ratio)) kept.push(aisle)
  return kept.map((aisle) => [aisle])
}

/**
 * Narrowest first, so that what matters finds room, and of equals the longest. A way that was measured close by is not
 * measured again: a leg of the wall is no nearer than the wall.
 */
export const waysToShow = (aisles: readonly Aisle[], ratio: number): Way[] => {
  const inOrder = aisles
    .filter(isWorthALine)
    .toSorted((a, b) => Math.round(a.widthMm - b.widthMm) || b.lengthMm - a.lengthMm)
  return sameOnes(inOrder).flatMap((way) => {
    const [first, ...others] = way
    if (first === undefined) return []
    return way.length > OFTEN ? [[first, ...others] as const] : apart(way, ratio)
  })
}

/** How far a wall is from a place on a row's edge, straight across the way; Infinity where none is ahead. */
const wallAhead = (outline: readonly Point[], from: Point, axis: Axis, sign: number): number => {
  const side = axis === 'x' ? 'y' : 'x'
  let nearest = Infinity
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a
    const t = (from[side] - a[side]) / (b[side] - a[side])
    if (!(t >= 0 && t <= 1)) return
    const gap = sign * (a[axis] + (b[axis] - a[axis]) * t - from[axis])
    if (gap >= 0) nearest = Math.min(nearest, gap)
  })
  return nearest
}

/** Where along the way the tape may be held: all places where it reads the same. */
const holds = (aisle: Aisle, row: Box | undefined, outline: readonly Point[]): number[] => {
  const side = acrossOf(aisle)
  if (aisle.otherIs !== 'wall' || row === undefined)
    return SLIDES.map((share) => aisle.from[side] + share * aisle.lengthMm)
  const axis = axisOf(aisle)
  const sign = Math.sign(aisle.to[axis] - aisle.from[axis])
  const reads = (at: number) =>
    Math.abs(wallAhead(outline, { ...aisle.from, [side]: at }, axis, sign) - aisle.widthMm) < SAME_MM
  const centre = middle(row)[side]
  return [...SLIDES.map((share) => centre + share * aisle.lengthMm).filter(reads), aisle.from[side]]
}

const markAt = (aisle: Aisle, at: number): DimensionMark => {
  const side = acrossOf(aisle)
  return {
    as: 'dimension',
    pen: aisle.widthMm < aisle.clashBelowMm ? 'must-fix' : 'dimension',
    from: { ...aisle.from, [side]: at },
    to: { ...aisle.to, [side]: at },
    offsetMm: 0,
    note: notes[aisle.otherIs],
  }
}

export interface AisleMarks {
  readonly marks: readonly DimensionMark[]
  /** Ways whose width found no room to be written. */
  readonly leftOut: number
}

/** Widths of the ways, leaf to leaf, each where its words are clear of all others. */
export const aisleMarks = (bay: Bay, ratio: number, words: ClearWords, write: Writer): AisleMarks => {
  const ways = waysToShow(bay.aisles, ratio)
  const boxes = new Map(rowBoxes(bay.built).map(({ part, box }) => [part, box]))
  const marks = ways.flatMap((way) => {
    const length = write.onTape(way[0].widthMm)
    const tries = way.flatMap((aisle) =>
      holds(aisle, boxes.get(aisle.row), bay.house.outline).map((at) => markAt(aisle, at)),
    )
    return words.first(tries, (mark) => dimensionBoxes(mark, length, ratio)) ?? []
  })
  words.shun(marks.flatMap(({ from, to }) => lineBoxes([from, to], ratio)))
  return { marks, leftOut: ways.length - marks.length }
}
