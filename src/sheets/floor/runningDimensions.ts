import type { Mark } from '../../model/drawing'
import type { House } from '../../layout/house'
import type { Writer } from '../../units/writer'
import { inches } from '../../units/length'
import { textWidth } from '../../drawing/lettering'
import { lettered, LETTERS, ruled } from '../ink'
import { spread } from '../spread'
import type { Plan } from './plan'
import type { RowRun } from './rowRuns'

/** One reading of a tape held at the baseline. */
export interface Reading {
  /** From the inside of the west or south wall, mm. */
  readonly fromWallMm: number
  /** A row's centreline, or an end or corner. */
  readonly isCentre: boolean
}

/** Readings nearer than this are one: a pencil line is as wide. */
const SAME_MM = inches(1 / 16)

/** The string stands this far outside all that swings or stands there, mm of paper. */
const STRING_OUT_MM = 3.5
const TICK_MM = 1.6
const WORDS_OUT_MM = 2.4
/** Beyond the words. */
const AIR_MM = 1.5
/** Least distance of neighbouring readings' words, mm of paper. */
const WORDS_APART_MM = 3.1

const merged = (readings: readonly Reading[]): Reading[] => {
  const kept: Reading[] = []
  for (const reading of readings.toSorted((a, b) => a.fromWallMm - b.fromWallMm)) {
    const last = kept.at(-1)
    if (last === undefined || reading.fromWallMm - last.fromWallMm > SAME_MM) kept.push(reading)
    else if (reading.isCentre && !last.isCentre) kept[kept.length - 1] = reading
  }
  return kept
}

/** What is read off a tape along one axis: wall corners, row ends, and centrelines of rows that run across it. */
export const readingsAlong = (
  axis: 'x' | 'y',
  rows: readonly RowRun[],
  outline: House['outline'],
  zeroMm: number,
): Reading[] =>
  merged([
    ...outline.map((corner) => ({ fromWallMm: corner[axis] - zeroMm, isCentre: false })),
    ...rows.flatMap(({ runs, from, to }) =>
      runs === axis
        ? [from, to].map((end) => ({ fromWallMm: end[axis] - zeroMm, isCentre: false }))
        : [{ fromWallMm: from[axis] - zeroMm, isCentre: true }],
    ),
  ])

/** A string of readings along one wall: `at` is along the string, `out` away from the plan, both mm of floor. */
interface Stringline {
  readonly readings: readonly Reading[]
  readonly zeroMm: number
  readonly point: (at: number, out: number) => { x: number; y: number }
  readonly isUpright: boolean
}

const readingWords = ({ fromWallMm, isCentre }: Reading, write: Writer): string =>
  `${isCentre ? 'CL ' : ''}${fromWallMm === 0 ? '0' : write.length(fromWallMm)}`

/** Paper that a string of readings takes beside the plan, mm. */
export const stringRoom = (readings: readonly Reading[], write: Writer): number => {
  const widths = readings.map((reading) => textWidth(readingWords(reading, write), LETTERS.body))
  return STRING_OUT_MM + WORDS_OUT_MM + Math.max(0, ...widths) + AIR_MM
}

const readingMarks = (
  { readings, zeroMm, point, isUpright }: Stringline,
  ratio: number,
  write: Writer,
): Mark[] => {
  const places = readings.map(({ fromWallMm }) => zeroMm + fromWallMm)
  const words = spread(places, WORDS_APART_MM * ratio)
  return readings.flatMap((reading, i) => {
    const place = places[i] ?? 0
    const wordsAt = words[i] ?? place
    return [
      ruled(point(place, -TICK_MM * ratio), point(place, TICK_MM * ratio * 0.5), 'dimension'),
      ruled(point(place, TICK_MM * ratio * 0.5), point(wordsAt, WORDS_OUT_MM * ratio * 0.9), 'dimension'),
      lettered(readingWords(reading, write), point(wordsAt, WORDS_OUT_MM * ratio), LETTERS.body, {
        pen: 'dimension',
        anchor: 'end',
        upright: isUpright,
      }),
    ]
  })
}

const stringMarks = (line: Stringline, ratio: number, write: Writer): Mark[] => {
  const first = line.zeroMm + (line.readings[0]?.fromWallMm ?? 0)
  const last = line.zeroMm + (line.readings.at(-1)?.fromWallMm ?? 0)
  return [ruled(line.point(first, 0), line.point(last, 0), 'dimension'), ...readingMarks(line, ratio, write)]
}

/**
 * Running dimensions from the baseline, the inside of the west and south walls: where to hold the tape and what to read.
 * Words of the south string read from the right. In mm of floor, letters in mm of paper.
 */
export const runningDimensions = (
  { house, reach, scale: { ratio } }: Plan,
  rows: readonly RowRun[],
  outline: House['outline'],
  write: Writer,
): Mark[] => {
  const out = STRING_OUT_MM * ratio
  const south: Stringline = {
    readings: readingsAlong('x', rows, outline, house.x0),
    zeroMm: house.x0,
    point: (at, away) => ({ x: at, y: reach.y0 - out - away }),
    isUpright: true,
  }
  const west: Stringline = {
    readings: readingsAlong('y', rows, outline, house.y0),
    zeroMm: house.y0,
    point: (at, away) => ({ x: reach.x0 - out - away, y: at }),
    isUpright: false,
  }
  return [south, west].flatMap((line) => stringMarks(line, ratio, write))
}

/** Centrelines of the rows, a little past their ends. */
export const centrelines = (rows: readonly RowRun[], ratio: number): Mark[] => {
  const past = 3 * ratio
  return rows.map(({ from, to }) => {
    const run = Math.hypot(to.x - from.x, to.y - from.y) || 1
    const u = { x: ((to.x - from.x) / run) * past, y: ((to.y - from.y) / run) * past }
    return ruled({ x: from.x - u.x, y: from.y - u.y }, { x: to.x + u.x, y: to.y + u.y }, 'centre')
  })
}
