import { describe, expect, test } from 'vitest'
import { carriedWords, distancesOf } from '../../src/canvas/distances'
import { movedWords } from '../../src/canvas/spoken'
import { evaluate } from '../../src/evaluate/evaluate'
import { inches } from '../../src/units/length'
import { writerFor } from '../../src/units/writer'
import { bay, type Spot } from '../support/bay'

const writer = writerFor('feet-inches')

/** Leaves of these rows reach 33 in to both sides of their centrelines. */
const rows = (...centres: readonly number[]) =>
  centres.reduce(
    (sketch, x, index) => sketch.row(`Row ${index + 1}`, [x, 100], { racks: 1 }),
    bay('60 x 60 ft'),
  )

const around = (sketch: ReturnType<typeof rows>, id = 'rack-row-1') =>
  distancesOf(evaluate(sketch.layout()), [id], writer).map(({ words }) => words)

describe('live distances', () => {
  test('are leaf to leaf, each with its state word', () => {
    expect(around(rows(200, 302))).toContain('36" Fits')
    expect(around(rows(200, 290))).toContain('24" Tight')
    expect(around(rows(200, 276))).toContain('10" Clash')
  })

  test('say by how much two run into each other', () => {
    expect(around(rows(200, 260))).toContain('6" overlap Clash')
  })

  test('are one a side: posts along a wall make no thicket', () => {
    const posts: readonly Spot[] = [110, 140, 170, 200].map((y) => [20, y] as const)
    const sketch = posts.reduce((all, spot, index) => all.post(`Post ${index + 1}`, spot), rows(100))
    expect(around(sketch).filter((words) => words.startsWith('45"'))).toEqual(['45" Fits'])
  })

  test('among what is moved together are not told', () => {
    const evaluation = evaluate(rows(200, 290).layout())
    const words = distancesOf(evaluation, ['rack-row-1', 'rack-row-2'], writer).map(({ words: wide }) => wide)
    expect(words.filter((wide) => wide.startsWith('24"'))).toEqual([])
  })

  test('are said as they are drawn', () => {
    const evaluation = evaluate(rows(200, 290).layout())
    expect(carriedWords(evaluation, ['rack-row-1'], writer)).toMatch(/^Row 1: aisle to Row 2 24" Tight/)
    expect(carriedWords(evaluation, [], writer)).toBe('')
  })
})

describe('what a screen reader says of a move', () => {
  test('is how far, which way, and the aisle that most needs saying', () => {
    const evaluation = evaluate(rows(200, 290).layout())
    const say = (dx: number, dy: number) =>
      movedWords(evaluation, ['rack-row-1'], inches(dx), inches(dy), writer)
    expect(say(0, 1)).toBe('Row 1 moved 1" north; aisle to Row 2 24", Tight')
    expect(say(-1 / 16, 0)).toBe('Row 1 moved 1/16" west; aisle to Row 2 24", Tight')
    expect(say(2, -3)).toBe('Row 1 moved 3" south and 2" east; aisle to Row 2 24", Tight')
  })
})
