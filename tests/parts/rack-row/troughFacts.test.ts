import { describe, expect, test } from 'vitest'
import { trough } from '../../../src/parts/trough/kind'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { troughSchema } from '../../../src/parts/trough/schema'
import type { TroughFacts } from '../../../src/model/troughFacts'
import { inches, toInches } from '../../../src/units/length'
import { at, flatSite } from '../../support/site'
import { build, row } from '../../support/rackRows'

const factsOf = (more: Partial<RackRow> = {}): TroughFacts => build(row(more)).trough!

// Three racks as they come: hand arithmetic of the trade notes. The gutters start 3-1/2 in past the rack line and are 360 in
// long, the outlet stands at 345, the first station at 7-1/2 and each 15 in on; the tip 1.125 in over the invert at the rack line.
describe('the troughs of a row of three racks', () => {
  const facts = factsOf()

  test('an outlet 341-1/2 in from the high end, with 18-1/2 in of tail that fall 0.1 in', () => {
    expect(toInches(facts.outletFromHighMm)).toBeCloseTo(341.5, 9)
    const tail = toInches(facts.runMm - facts.outletFromHighMm)
    expect(tail).toBeCloseTo(18.5, 1)
    expect((tail / 12) * (1 / 16)).toBeCloseTo(0.096, 3)
  })

  test('24 stations from 4 in on, one gutter a line, two joiners, a 2 in outlet', () => {
    expect(facts.stationFromHighMm).toHaveLength(24)
    expect(toInches(facts.stationFromHighMm[0]!)).toBeCloseTo(4, 9)
    expect(toInches(facts.stationFromHighMm[23]!)).toBeCloseTo(4 + 23 * 15, 9)
    expect(facts).toMatchObject({ lines: 4, joiners: 2, gutter: 'gutter-5in', outletBoreMm: inches(2) })
  })

  test('tips 1.125 in over the invert at the rack line, 3-1/2 in of fall more at the high end', () => {
    expect(toInches(facts.tipOverHighInvertMm!)).toBeCloseTo(1.125 + 3.5 / 12 / 16, 6)
  })
})

test('stations count from the start of the row, whichever way its gutters fall', () => {
  const { stationFromHighMm } = factsOf({ fallsTo: 'start' })
  expect(toInches(stationFromHighMm[0]!)).toBeCloseTo(4 + 23 * 15, 9)
  expect(toInches(stationFromHighMm[23]!)).toBeCloseTo(4, 9)
})

test('a lone trough has an outlet, joiners, and nothing over it', () => {
  const part = troughSchema.parse({ kind: 'trough', id: 'trough-1', at: at(0, 0), lengthMm: inches(250) })
  const facts = trough.derive(part, flatSite()).trough!
  expect(facts).toMatchObject({ lines: 1, joiners: 2, stationFromHighMm: [], outletBoreMm: inches(2) })
  expect(facts.tipOverHighInvertMm).toBeUndefined()
  expect(toInches(facts.outletFromHighMm)).toBeCloseTo(235, 2)
})

test('a lone trough counts the outlet that it has', () => {
  const part = troughSchema.parse({ kind: 'trough', id: 'trough-1', at: at(0, 0), outletBore: '1' })
  const items = trough.derive(part, flatSite()).fittings.map(({ item }) => item)
  expect(items.filter((item) => item.startsWith('gutter-outlet'))).toEqual(['gutter-outlet-1'])
})
