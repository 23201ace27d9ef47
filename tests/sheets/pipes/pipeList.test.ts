import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { emptyBay } from '../../../src/layout/empty'
import { evaluate } from '../../../src/evaluate/evaluate'
import { pipeList } from '../../../src/sheets/pipes/pipeList'
import { bagsOf } from '../../../src/sheets/pipes/bags'
import { picksOf, picksOfAll, sharesOf, waterLines } from '../../../src/sheets/pipes/pickRows'
import { tablesIn } from '../../../src/sheets/piece'
import { feet } from '../../../src/units/length'
import { arbitraryWater } from '../../support/arbitraryWater'
import { scenarios } from '../../support/scenarios'

const options = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
} as const

const kestrel = evaluate(scenarios['kestrel-bend-house-2']!())

describe('the bags', () => {
  test('together hold the take-off to the last piece, clamps too, and every foot of pipe as it is cut', () => {
    fc.assert(
      fc.property(arbitraryWater, (layout) => {
        const now = evaluate(layout)
        const shares = sharesOf(waterLines(now))
        const sums = new Map<string, number>()
        for (const bag of bagsOf(now.bay))
          for (const { item, count } of picksOf(shares, bag)) sums.set(item, (sums.get(item) ?? 0) + count)
        const bought = now.counts.filter(({ group, isWork }) => group === 'water' && !isWork)
        for (const { item, count } of bought) expect(sums.get(item), item).toBeCloseTo(count, 6)
        // Counted another way: straight off the runs of pipe and tube.
        const tubes = [...now.bay.built, ...now.bay.joinedPipes]
          .flatMap((built) => built.tubes)
          .filter(({ role }) => role !== 'drain' && role !== 'drop')
        const runMm = tubes.reduce((sum, { lengthMm }) => sum + lengthMm, 0)
        const pickedFt = [...sums].filter(([item]) => item.includes('#')).reduce((sum, [, ft]) => sum + ft, 0)
        expect(feet(pickedFt)).toBeCloseTo(runMm, 3)
      }),
      { seed: 20270501, numRuns: 25 },
    )
  })

  test('each row is in one bag', () => {
    const bags = bagsOf(kestrel.bay)
    const parts = bags.flatMap((bag) => bag.parts)
    expect(new Set(parts).size).toBe(parts.length)
    expect(parts.toSorted()).toEqual(kestrel.bay.built.map(({ part }) => part).toSorted())
  })
})

describe('the north zone of the demo bay', () => {
  // Worked example of the trade notes, hand arithmetic: straight feed, n_L = 2 laterals, 24 stations x 4 lines = 96 towers.
  // Saddle 1 a zone; one valve set; header tees n_L - 1 = 1; reducing couplings n_L = 2; flush caps and sight tubes n_L = 2.
  const row = kestrel.layout.parts.find(({ name }) => name === 'N1')!
  const bag = bagsOf(kestrel.bay).find(({ zone }) => zone === row.id)!
  const picks = new Map(picksOf(sharesOf(waterLines(kestrel)), bag).map((pick) => [pick.item, pick]))

  test.each([
    ['union-pe-1', 1],
    ['ball-valve-pe-1', 1],
    ['trim-valve-pe-1', 1],
    ['tee-pe-1', 1],
    ['reducing-coupling-pe-1-to-3/4', 2],
    ['lateral-flush-cap-pe-3/4', 2],
    ['sight-tube-tee-pe-3/4', 2],
    ['sight-tube', 2],
    ['barb-1/8', 96],
  ])('%s: %i', (item, count) => {
    expect(picks.get(item)?.count).toBe(count)
  })

  test('above ground and up to 1 in it has a clamp for each barbed end', () => {
    // Pipe maker's guide to joining polyethylene pipe, insert fittings: one clamp on small pipe is common practice.
    const all = [...picks.values()]
    const ends = all.reduce((sum, { barbedEnds }) => sum + barbedEnds, 0)
    const clamps = all
      .filter(({ item }) => item.startsWith('clamp-'))
      .reduce((sum, { count }) => sum + count, 0)
    expect(ends).toBe(clamps)
  })
})

test('zones with the same in them share a list, which stands under all their names', () => {
  const acre = evaluate(scenarios['sallow-flats-one-acre']!())
  const tables = tablesIn(pipeList.pieces({ now: acre, issued: undefined }, options))
  const zones = bagsOf(acre.bay).filter(({ zone }) => zone !== undefined)
  expect(tables.length).toBeLessThan(zones.length)
})

test('the whole bay stands last, as the take-off has it', () => {
  const tables = tablesIn(pipeList.pieces({ now: kestrel, issued: undefined }, options))
  const all = tables.find(({ id }) => id === 'all')!
  const rows = all.rows.filter(({ isSum }) => !isSum)
  expect(rows).toHaveLength(picksOfAll(waterLines(kestrel)).length)
  const clamps = rows.find(({ key }) => key === 'clamp-pe-1')!
  expect(clamps.cells[1]!.value).toBe(kestrel.counts.find(({ item }) => item === 'clamp-pe-1')!.count)
})

test('a bay without water needs no plumber', () => {
  const now = evaluate(emptyBay(feet(30), feet(96), 'Trial bay'))
  expect(pipeList.pieces({ now, issued: undefined }, options)).toEqual([])
})
