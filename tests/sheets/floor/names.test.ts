import { describe, expect, test } from 'vitest'
import { overlaps } from '../../../src/geometry/box'
import type { TextMark } from '../../../src/model/drawing'
import { evaluate } from '../../../src/evaluate/evaluate'
import { clearWords, textBox } from '../../../src/sheets/clearWords'
import { besideRun } from '../../../src/sheets/floor/namePlaces'
import { nameMarks, shared } from '../../../src/sheets/floor/names'
import { scenarios } from '../../support/scenarios'

const RATIO = 64
const mark: TextMark = {
  as: 'text',
  pen: 'note',
  text: 'Drain N',
  at: { x: 0, y: 0 },
  paperMm: 2.5,
  anchor: 'middle',
  upright: false,
}
const everywhere = { x0: -1e6, y0: -1e6, x1: 1e6, y1: 1e6 }

describe('a name beside a run', () => {
  const run = [
    { x: 0, y: 0 },
    { x: 9000, y: 0 },
    { x: 9000, y: 4000 },
  ]
  const places = besideRun(mark, run, RATIO)

  test('never lies on it', () => {
    const line = { x0: 0, y0: -1, x1: 9001, y1: 1 }
    for (const place of places.filter(({ upright }) => !upright))
      expect(overlaps(textBox(place, RATIO), line)).toBe(false)
  })

  test('is tried at the middle of the longest leg first, and reads from the right along one that runs north', () => {
    expect(places[0]!.at.x).toBe(4500)
    const upright = places.filter((place) => place.upright)
    expect(upright.length).toBeGreaterThan(0)
    for (const { at } of upright) expect(Math.abs(at.x - 9000)).toBeLessThan(10 * RATIO)
  })

  test('has no place beside a run of one point', () => {
    expect(besideRun(mark, run.slice(0, 1), RATIO)).toEqual([])
  })
})

test('words are shared by more than four that say the same', () => {
  const of = (count: number) => Array.from({ length: count }, () => '4 in drain pipe')
  expect(shared(of(4))).toBeUndefined()
  expect(shared([...of(5), '6 in drain pipe'])).toBe('4 in drain pipe')
  expect(shared(['', '', '', '', '', ''])).toBeUndefined()
})

describe('names of the one-acre bay', () => {
  const { marks, notes } = nameMarks(
    evaluate(scenarios['sallow-flats-one-acre']!()),
    360,
    clearWords([], everywhere),
  )

  test('leave the size of 36 drains and 18 mains to one note each', () => {
    expect(notes).toEqual([
      'Drain lines: 4 in drain pipe, unless it is written beside them.',
      'Mains: 2 in poly pipe, unless it is written beside them.',
    ])
    expect(marks.filter(({ text }) => text.includes('in drain pipe'))).toEqual([])
    expect(marks.some(({ text }) => text === 'Drain 1AN')).toBe(true)
  })

  test('stand clear of each other', () => {
    const boxes = marks.map((name) => textBox(name, 360))
    boxes.forEach((box, i) => {
      for (const other of boxes.slice(i + 1)) expect(overlaps(box, other)).toBe(false)
    })
  })
})
