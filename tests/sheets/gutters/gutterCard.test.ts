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
      if (id.startsWith('shims-')) add('gutter-shim', cells[4]!.text, lines.get(id)!)
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

/** Joiners, caps, outlets, straps and blocks: on the card for one row of a kind and for all, in the take-off for the bay. */
const putOn = (now: Judged): ReadonlyMap<string, number> => {
  const found = new Map<string, number>()
  for (const { id, rows } of tablesOf(now))
    if (id.startsWith('gutter-fittings-'))
      for (const { key, cells } of rows) found.set(key, (found.get(key) ?? 0) + Number(cells[3]!.value))
  return found
}

const takenOff = ({ counts }: Judged): ReadonlyMap<string, number> =>
  new Map(
    counts
      .filter(({ item }) => /^(gutter-(joiner|end-cap|outlet|strap)|trough-block)/.test(item))
      .map(({ item, count }) => [item, count] as const),
  )

const holds = (layout: Layout): void => {
  const now = evaluate(layout)
  expect(sorted(putOn(now))).toEqual(sorted(takenOff(now)))
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

// Bars 16 in apart: gutters begin 4 in from the row's high end, and the first bearer clears the risers there by 2-3/4 in. Hand
// arithmetic.
test('a bearer that the gutter does not reach is said to be moved', () => {
  const now = evaluate(scenarios['lintel-lane-lean-to']!())
  const words = gutterCard
    .pieces({ now, issued: undefined }, options)
    .flatMap((piece) => (piece.as === 'words' && piece.tone !== 'caution' ? [piece.text] : []))
  expect(words.join(' ')).toContain('The middle of bearer 1 lies 1-1/4" uphill of the gutter’s end')
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

  const [shims] = tables.filter(({ id }) => id.startsWith('shims-'))
  const words = gutterCard
    .pieces({ now, issued: undefined }, options)
    .flatMap((piece) => (piece.as === 'words' && piece.tone !== 'caution' ? [piece.text] : []))

  // Gutters begin half a pitch of 15 in less 4 in past the row's high end, 3-1/2 in; its first risers stand 2-1/8 in from there,
  // and the first bearer 2-3/4 in downhill of them, at 4-7/8 in: 1-3/8 in from the gutter's end. Worked example of the trade notes.
  test('tells the gutter’s end from the row’s', () => {
    expect(words[0]).toContain(
      'Each begins 1-3/8" downhill of the middle of the row’s first risers, 3-1/2" from',
    )
    expect(shims!.rows[0]!.cells.slice(1, 3).map(({ text }) => text)).toEqual(['4-7/8"', '1-3/8"'])
  })

  // Invert 7-1/4 in over the datum at the low end, 1-7/8 in more at the high end; a gutter of 3-3/8 in, a foot plate of 2 in:
  // lips 10-1/2 and 8-5/8 in over the feet. Worked example of the trade notes.
  test('tells the lips and the fall', () => {
    expect(words[0]).toContain('falling 1/16 in/ft, 1-7/8" in all')
    expect(words[0]).toContain('lips 10-1/2" over the risers’ feet')
    expect(words[0]).toContain('and 8-5/8" at its low end')
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
