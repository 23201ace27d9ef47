import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Layout } from '../../src/layout/schema'
import { bearerRows, pairRows } from '../../src/sheets/shims'
import { writerFor } from '../../src/units/writer'
import { bay, type Sketch } from '../support/bay'
import { facts, row } from '../support/rackRows'

const atSaw = writerFor('feet-inches')

describe('gutter shims', () => {
  // 2.0996 in at the first bearer, 0.2754 in at the last: worked example of the trade notes, hand arithmetic.
  test('of three racks go from 2-1/8 in to 1/4 in, in pieces', () => {
    const rows = bearerRows(facts(row()), atSaw)
    expect(rows).toHaveLength(16)
    expect(rows[0]).toEqual({ bearer: 1, fromHigh: '4-7/8"', height: '2-1/8"', pieces: ['2 x 1"', '1/8"'] })
    expect(rows[5]).toEqual({
      bearer: 6,
      fromHigh: `10' 2-3/4"`,
      height: '1-1/2"',
      pieces: ['1"', '1/2"'],
    })
    expect(rows[15]).toEqual({ bearer: 16, fromHigh: `29' 7-1/8"`, height: '1/4"', pieces: ['1/4"'] })
  })

  test('are written in mm for a metric reader', () => {
    const [first] = bearerRows(facts(row()), writerFor('metric'))
    // 4-7/8 in and 2.0996 in.
    expect(first).toEqual({
      bearer: 1,
      fromHigh: '124 mm',
      height: '53 mm',
      pieces: ['2 x 25 mm', '3 mm'],
    })
  })
})

const pairsOf = (layout: Layout) => {
  const { bay: judged } = evaluate(layout)
  const [part] = layout.parts
  return pairRows(judged.builtOf.get(part!.id)!.rack!, judged.levels.feet.get(part!.id)!, atSaw)
}

/** A floor that rises 2 in from the south wall to the north wall, 40 ft away. */
const rising = (): Sketch =>
  bay('40 x 40 ft').level([0, 0], 0).level([480, 0], 0).level([0, 480], 2).level([480, 480], 2)

describe('foot shims', () => {
  // The floor rises 1/240 in an inch: feet 2-1/4, 30, 60, 90 and 117-3/4 in along stand 0.481, 0.366, 0.241, 0.116
  // and 0 in below the highest. Hand arithmetic.
  const shims = ['1/2"', '3/8"', '1/4"', '1/8"', '0"']

  test('count riser pairs from the start of the row, whichever way its gutters fall', () => {
    for (const fallsTo of ['end', 'start'] as const) {
      const pairs = pairsOf(rising().row('Row', [240, 100], { racks: 1, fallsTo }).layout())
      expect(pairs.map(({ pair }) => pair)).toEqual([1, 2, 3, 4, 5])
      expect(pairs.map(({ left }) => left.height)).toEqual(shims)
      expect(pairs.map(({ right }) => right.height)).toEqual(shims)
      expect(pairs[1]!.left.pieces).toEqual(['1/4"', '1/8"'])
      expect(pairs[4]!.left.pieces).toEqual([])
    }
  })

  test('turned about, a row counts its pairs from the north', () => {
    const pairs = pairsOf(rising().row('Row', [240, 220], { racks: 1, heading: 270 }).layout())
    expect(pairs.map(({ left }) => left.height)).toEqual([...shims].reverse())
  })

  // Rails 40 in apart: the southern feet stand 40 / 240 in lower, 0.167 in.
  test.each([
    [0, '0"', '3/16"'],
    [180, '3/16"', '0"'],
  ] as const)('heading %d the left foot is told from the right one', (heading, left, right) => {
    for (const fallsTo of ['end', 'start'] as const) {
      const pairs = pairsOf(rising().row('Row', [240, 240], { racks: 1, heading, fallsTo }).layout())
      for (const pair of pairs) expect([pair.left.height, pair.right.height]).toEqual([left, right])
    }
  })
})
