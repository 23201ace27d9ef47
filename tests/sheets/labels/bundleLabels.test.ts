import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { emptyBay } from '../../../src/layout/empty'
import type { Layout } from '../../../src/layout/schema'
import { bundleLabels } from '../../../src/sheets/labels/bundleLabels'
import { pagesOf } from '../../../src/sheets/pagesOf'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { feet } from '../../../src/units/length'
import { arbitraryBay } from '../../support/arbitraryBay'
import { pageText } from '../../support/pageText'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
}

const countIn = (counts: Map<string, number>, key: string, count: number): void => {
  counts.set(key, count + (counts.get(key) ?? 0))
}

/** Pieces by mark as the printed labels say them: `4 x RS-p 71-15/16"`. */
const onLabels = (layout: Layout): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  const pages = pagesOf(bundleLabels, { now: evaluate(layout), issued: undefined }, options)
  for (const page of pages) {
    const said = pageText(page)
    if (!/Labels? \d/.test(said)) continue
    for (const line of said.split('\n')) {
      const [, count, mark] = /^(\d+) x (\S+) [\d-]/.exec(line) ?? []
      if (mark !== undefined) countIn(counts, mark, Number(count))
    }
  }
  return counts
}

/** What the saw list is to make of sticks, by mark, told from what is drawn. */
const drawn = (layout: Layout): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>()
  for (const { sticks } of evaluate(layout).bay.built) for (const { mark } of sticks) countIn(counts, mark, 1)
  return counts
}

describe.each(Object.keys(scenarios))('the labels of %s', (name) => {
  test('together have every stick once', () => {
    const layout = scenarios[name]!()
    expect(onLabels(layout)).toEqual(drawn(layout))
  })
})

test('the labels of the sample have the 132 risers that the saw list halves boards for', () => {
  // Worked example of the trade notes, hand arithmetic: 114 with a plain hole and 18 with a sleeve's.
  const counts = onLabels(scenarios['kestrel-bend-house-2']!())
  expect([counts.get('RS-p'), counts.get('RS-s')]).toEqual([114, 18])
})

test('so it is with any bay', () => {
  fc.assert(
    fc.property(arbitraryBay, (layout) => {
      expect(onLabels(layout)).toEqual(drawn(layout))
    }),
    { seed: 20_271_126, numRuns: 12 },
  )
})

test('a bay with nothing to saw has no labels', () => {
  const now = evaluate(emptyBay(feet(30), feet(96), 'New bay'))
  expect(bundleLabels.pieces({ now, issued: undefined }, options)).toEqual([])
})
