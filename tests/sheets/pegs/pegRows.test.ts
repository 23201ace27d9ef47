import { describe, expect, test } from 'vitest'
import { drainFigures } from '../../../src/sheets/pegs/drainFigures'
import { endWords, pegRows } from '../../../src/sheets/pegs/pegRows'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { DrainRun, Peg } from '../../../src/model/levels'
import { wordsFor } from '../../../src/sidebar/words'
import { inches } from '../../../src/units/length'
import { inTrench } from '../../../src/units/precision'
import { writerFor } from '../../../src/units/writer'
import { scenarios } from '../../support/scenarios'

const layout = scenarios['kestrel-bend-house-2']!()
const evaluation = evaluate(layout)
const words = { ...wordsFor(layout.parts, 'feet-inches'), ...writerFor('feet-inches', inTrench) }
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id
const drainN = evaluation.bay.levels.drains.get(idOf('Drain N'))!

const peg = (values: Partial<Peg>): Peg => ({
  at: { x: 0, y: 0 },
  alongMm: 0,
  groundMm: 0,
  invertMm: inches(-9),
  crownMm: inches(-5),
  coverMm: inches(5),
  digMm: inches(11.125),
  number: 1,
  fromLowMm: inches(64),
  why: ['step'],
  outlets: 0,
  holeMm: 0,
  pegTopMm: inches(6),
  cutMm: inches(17.125),
  ...values,
})

const drawn = (...pegs: readonly Peg[]): DrainRun => ({ ...drainN, pegs })
const rowOf = (one: Peg) => pegRows(drawn(one), { joins: [] }, words)[0]!

describe('a peg in words', () => {
  test('is read to an eighth, and its cut is written, never left to be subtracted', () => {
    expect(rowOf(peg({}))).toEqual({
      number: '1',
      fromLow: `5' 4"`,
      why: `Every 10' 0"`,
      cut: '17-1/8"',
      hole: '',
      invert: '-9"',
      floor: '0"',
      pegTop: '6"',
      dig: '11-1/8"',
    })
  })

  test('says how many holes, and a tee where none is cut', () => {
    const outlet = { why: ['outlet'], holeMm: inches(2.5) } as const
    expect(rowOf(peg({ ...outlet, outlets: 1 })).hole).toBe('2-1/2"')
    expect(rowOf(peg({ ...outlet, outlets: 2 })).hole).toBe('2 x 2-1/2"')
    expect(rowOf(peg({ ...outlet, outlets: 1, holeMm: 0 })).hole).toBe('tee')
    expect(rowOf(peg({ ...outlet, outlets: 3, holeMm: 0 })).hole).toBe('3 tees')
  })

  test('gives every reason that it stands there for', () => {
    expect(rowOf(peg({ why: ['bend', 'outlet'], outlets: 1 })).why).toBe('Bend, cleanout; outlet')
    expect(rowOf(peg({ why: ['start'] })).why).toBe('High end, cleanout')
  })
})

describe('the north drain of the sample', () => {
  const rows = pegRows(drainN, evaluation.bay, words)

  // Worked example of the trade notes, hand arithmetic: stations 10, 28, 46, 64 in from the pit's wall dig 11-1/4, 11-1/8, 11,
  // 10-3/4; the peg stands 6 in over the floor, so that the cut is 6 in more.
  test('has the digs of its stake-out at its outlets, and 6 in more under the peg', () => {
    const outlets = rows.filter(({ why }) => why.startsWith('Outlet')).slice(0, 4)
    expect(outlets.map(({ dig }) => dig)).toEqual(['11-1/4"', '11-1/8"', '11"', '10-3/4"'])
    expect(outlets.map(({ cut }) => cut)).toEqual(['17-1/4"', '17-1/8"', '17"', '16-3/4"'])
    expect(outlets.map(({ fromLow }) => fromLow)).toEqual(['10"', `2' 4"`, `3' 10"`, `5' 4"`])
  })

  test('names the line of each outlet, and measures from its pit', () => {
    expect(rows[1]!.why).toMatch(/^Outlet of N3 line \d$/)
    expect(endWords(drainN, evaluation.bay)).toBe('the pit')
    expect(endWords(drainN, { joins: [] })).toBe('the low end')
  })

  // Worked example of the trade notes: 3 in of cover, met at the high end of a floor that falls less than the drain.
  test('names its tightest cover with where it is', () => {
    const facts = evaluation.bay.builtOf.get(drainN.part)!.drain!
    const cover = drainFigures(drainN, facts, undefined, words).find(({ name }) => name === 'Tightest cover')!
    expect(cover.value).toBe('3"')
    expect(cover.note).toContain(`22' 10" from the low end`)
  })
})
