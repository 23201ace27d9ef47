import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { DrainRun } from '../../../src/model/levels'
import { pegTable } from '../../../src/sheets/pegs/pegTable'
import { tablesIn } from '../../../src/sheets/piece'
import type { PlanOnPaper, SheetOptions } from '../../../src/sheets/sheet'
import { toInches } from '../../../src/units/length'
import { arbitraryBay } from '../../support/arbitraryBay'
import { PEGS_N } from '../../support/pegs'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '3',
}

const planOf = (layout: Parameters<typeof evaluate>[0]): PlanOnPaper => ({
  now: evaluate(layout),
  issued: undefined,
})

const tablesOf = (plan: PlanOnPaper) => tablesIn(pegTable.pieces(plan, options))
const valuesIn = (table: ReturnType<typeof tablesOf>[number], key: string) => {
  const at = table.columns.findIndex((column) => column.key === key)
  return table.rows.map(({ cells }) => cells[at]!.value)
}
const textsIn = (table: ReturnType<typeof tablesOf>[number], key: string) => {
  const at = table.columns.findIndex((column) => column.key === key)
  return table.rows.map(({ cells }) => cells[at]!.text)
}

describe('the peg table of the sample', () => {
  const plan = planOf(scenarios['kestrel-bend-house-2']!())
  const [north] = tablesOf(plan)

  // Worked example of the trade notes, hand arithmetic: station, invert, floor and dig; the peg stands 6 in over the floor.
  test.each(PEGS_N)('has the peg at station %d of its stake-out', (station, invert, ground, dig) => {
    const row = valuesIn(north!, 'alongMm').findIndex((mm) => Math.abs(toInches(Number(mm)) - station) < 0.01)
    const inch = (key: string) => toInches(Number(valuesIn(north!, key)[row]))
    expect(inch('invertMm')).toBeCloseTo(invert, 1)
    expect(inch('groundMm')).toBeCloseTo(ground, 1)
    expect(Math.abs(inch('digMm') - dig)).toBeLessThanOrEqual(1 / 8)
    expect(Math.abs(inch('cutMm') - (dig + 6))).toBeLessThanOrEqual(1 / 8)
  })

  test('says what is measured, and in which words the crew reads it', () => {
    expect(textsIn(north!, 'cutMm').slice(0, 3)).toEqual(['17-1/4"', '17-1/4"', '17-1/8"'])
    expect(north!.columns.filter(({ isMain }) => isMain).map(({ key }) => key)).toEqual(['cutMm'])
  })

  test('gives the place of the line from the walls, and that pegs stand clear of the dig', () => {
    // Worked example of the trade notes: drain N lies at y = 425 in and begins at the pit's wall, x = 304 in.
    expect(toInches(Number(valuesIn(north!, 'southMm')[0]))).toBeCloseTo(425, 6)
    expect(toInches(Number(valuesIn(north!, 'westMm')[0]))).toBeCloseTo(304, 6)
    const words = pegTable.pieces(plan, options).map((piece) => ('text' in piece ? piece.text : ''))
    // A trench 10 in wide: 5 in to its edge, and 24 in clear of it.
    expect(words.some((text) => text.includes('Pegs stand 29" across'))).toBe(true)
  })

  test('warns of the dig and of the buried line by its name, and of nothing that is not there', () => {
    const cautions = (name: string) =>
      pegTable
        .pieces(planOf(scenarios[name]!()), options)
        .flatMap((piece) => (piece.as === 'words' && piece.tone === 'caution' ? [piece.text] : []))
    expect(cautions('kestrel-bend-house-2').some((text) => text.includes('Old lighting feed'))).toBe(true)
    expect(cautions('lintel-lane-lean-to')).toEqual([])
  })

  test('tells a line over the floor as one that nobody digs', () => {
    const lean = planOf(scenarios['lintel-lane-lean-to']!())
    const [table] = tablesOf(lean)
    expect(new Set(textsIn(table!, 'digMm'))).toEqual(new Set(['none']))
    expect(textsIn(table!, 'cutMm').every((text) => text.startsWith('up '))).toBe(true)
  })
})

const bottomOf = ({ wallMm, bedMm }: DrainRun, invertMm: number): number => invertMm - wallMm - bedMm

describe('any bay', () => {
  test('has exactly its own pegs in the table, and each cut reaches from the peg’s top to the bottom of the dig', () => {
    fc.assert(
      fc.property(arbitraryBay, (layout) => {
        const plan = planOf(layout)
        const drains = [...plan.now.bay.levels.drains.values()].filter(({ pegs }) => pegs.length > 0)
        const tables = tablesOf(plan).filter(({ id }) => id.startsWith('pegs-'))
        expect(tables.map(({ id }) => id)).toEqual(drains.map(({ part }) => `pegs-${part}`))
        tables.forEach((table, i) => {
          const run = drains[i]!
          expect(table.rows.map(({ key }) => key)).toEqual(
            run.pegs.map(({ number }) => `${run.part} ${number}`),
          )
          const [cuts, tops, inverts] = ['cutMm', 'pegTopMm', 'invertMm'].map((key) =>
            valuesIn(table, key).map(Number),
          )
          cuts!.forEach((cut, at) => {
            expect(cut).toBe(run.pegs[at]!.cutMm)
            expect(cut).toBeCloseTo(tops![at]! - bottomOf(run, inverts![at]!), 6)
          })
        })
      }),
      { seed: 6201, numRuns: 60 },
    )
  })
})
