import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { shimsMm, shimKey } from '../../../src/catalogue/shims'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Judged } from '../../../src/evaluate/evaluation'
import type { Layout } from '../../../src/layout/schema'
import { gutterCard } from '../../../src/sheets/gutters/gutterCard'
import { gutterKinds } from '../../../src/sheets/gutters/gutterRuns'
import { tablesIn } from '../../../src/sheets/piece'
import { arbitraryBay } from '../../support/arbitraryBay'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const tablesOf = (now: Judged) => tablesIn(gutterCard.pieces({ now, issued: undefined }, options))

/** Pieces of a stack as the card spells them, counted by thickness: `2 x 1" + 1/8"`. */
const piecesIn = (words: string): readonly (readonly [inches: string, count: number])[] =>
  words === 'none'
    ? []
    : words.split(' + ').map((piece) => {
        const [, count, thick] = /^(?:(\d+) x )?(\S+)"$/.exec(piece)!
        return [thick!, Number(count ?? 1)] as const
      })

const sizes = ['1', '1/2', '1/4', '1/8', '1/16']

/** Shims by their catalogue key, as they are spelled on the card: under every line of every row alike, and under each foot. */
const onTheCard = (now: Judged): ReadonlyMap<string, number> => {
  const found = new Map<string, number>()
  const add = (noun: string, words: string, times: number) => {
    for (const [thick, count] of piecesIn(words)) {
      const key = shimKey(noun, shimsMm[sizes.indexOf(thick)]!)
      found.set(key, (found.get(key) ?? 0) + count * times)
    }
  }
  const lines = new Map(
    gutterKinds(now).map((kind) => [`shims-${kind[0].part}`, kind.reduce((sum, run) => sum + run.lines, 0)]),
  )
  for (const { id, rows } of tablesOf(now))
    for (const { cells } of rows) {
      if (id.startsWith('shims-')) add('gutter-shim', cells[3]!.text, lines.get(id)!)
      if (!id.startsWith('feet-')) continue
      for (const cell of cells.slice(1)) add('foot-shim', cell.text.split(' = ').at(-1)!, 1)
    }
  return found
}

const counted = ({ counts }: Judged): ReadonlyMap<string, number> =>
  new Map(
    counts
      .filter(({ item }) => /^(gutter|foot)-shim-/.test(item))
      .map(({ item, count }) => [item, count] as const),
  )

const sorted = (counts: ReadonlyMap<string, number>) => [...counts].sort(([a], [b]) => a.localeCompare(b))

const holds = (layout: Layout): void => {
  const now = evaluate(layout)
  expect(sorted(onTheCard(now))).toEqual(sorted(counted(now)))
}

describe.each(Object.keys(scenarios))('the gutter card of %s', (name) => {
  test('spells out the very shims that are counted, piece by piece', () => {
    holds(scenarios[name]!())
  })
})

test('so it does for any bay', () => {
  fc.assert(fc.property(arbitraryBay, holds), { seed: 20_271_127, numRuns: 12 })
})

describe('the gutter card of the sample', () => {
  const now = evaluate(scenarios['kestrel-bend-house-2']!())
  const tables = tablesOf(now)

  test('says alike rows once', () => {
    expect(gutterKinds(now).map((kind) => kind.length)).toEqual([3, 3])
  })

  test('has 132 feet, none on more than 2-1/4 in of shim', () => {
    // Worked example of the trade notes, hand arithmetic: the floor falls so much under the furthest foot.
    const feet = tables.filter(({ id }) => id.startsWith('feet-')).flatMap(({ rows }) => rows)
    expect(feet.length * 2).toBe(132)
    const heights = feet.flatMap(({ cells }) => cells.slice(1).map(({ value }) => Number(value)))
    expect(Math.max(...heights) / 25.4).toBeCloseTo(2.25, 1)
  })

  test('cuts a line of gutter from three whole lengths', () => {
    const lengths = tables.find(({ id }) => id.startsWith('gutters-'))!
    expect(lengths.rows.map(({ cells }) => cells[1]!.text)).toEqual(['120"', '120"', '120"'])
    expect(lengths.rows.map(({ cells }) => cells[4]!.text)).toEqual([
      'joiner, sealed',
      'joiner, sealed',
      'end cap, sealed',
    ])
  })
})
