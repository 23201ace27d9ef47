import { describe, expect, test } from 'vitest'
import {
  alikeRows,
  governing,
  governsWords,
  liftWords,
  namedSpans,
  reactionCells,
  reactionColumns,
  runsWords,
  spanCells,
} from '../../../../../src/app/drawer/rack/rail/railWords'
import { conduitsUsed } from '../../../../../src/evaluate/loads/conduitUsed'
import { evenLoad, spacingRows } from '../../../../../src/app/drawer/rack/rail/spacing'
import { settingsSchema } from '../../../../../src/layout/settings'
import { inchPounds, ksi, poundsForce, poundsPerInch } from '../../../../../src/units/force'
import { inches } from '../../../../../src/units/length'
import { writerFor } from '../../../../../src/units/writer'
import { railLine, railSpan } from '../../../../support/handStrength'

const settings = settingsSchema.parse({})
const write = writerFor('feet-inches')
const metric = writerFor('metric')

// Worked racks, hand arithmetic: 60 in of 1 in conduit with two 25 lb towers a bar, 984 lb-in, 18,848 psi, 0.419 in (L/143).
const marginal = railSpan({
  fromU: inches(60),
  toU: inches(120),
  stock: 'conduit-1',
  momentNmm: inchPounds(984),
  stressMpa: ksi(18.848),
  sagMm: inches(0.419),
  state: 'Proof-load',
  used: 180 / 143.2,
})
// 120 in of the same with one tower a bar: 39,485 psi, past any yield that is assumed.
const folds = railSpan({
  toU: inches(120),
  stressMpa: ksi(39.485),
  sagMm: inches(3.51),
  state: 'Too long',
  used: 5.3,
})
const within = railSpan({ toU: inches(60), stressMpa: ksi(9.871), sagMm: inches(0.22), used: 0.66 })

describe('what governs a rail', () => {
  const says = (...spans: Parameters<typeof railLine>[0]['spans'] & object) =>
    governsWords(railLine({ spans }), settings, write)

  test('the worst by its state, named from the start of the row', () => {
    const line = railLine({ spans: [railSpan({ toU: 50, isOverhang: true }), within, marginal] })
    expect(governing(line)).toMatchObject({ name: '2', span: marginal })
    expect(namedSpans(line).map(({ name }) => name)).toEqual(['start', '1', '2'])
  })

  test('of a row that the house carries, straps are put closer and no riser is spoken of', () => {
    const bent = railSpan({ toU: 120, state: 'Too long', used: 7, stressMpa: ksi(120) })
    const words = governsWords(railLine({ spans: [bent] }), settings, write, 'strap')
    expect(words).toContain('Put straps closer')
    expect(words).not.toContain('riser')
    expect(liftWords.strap).not.toContain('hole')
    expect(reactionColumns('strap')[0]).toBe('Strap')
  })

  test('by sag, with what there is to do about it', () => {
    expect(says(within, marginal)).toBe(
      `Sag governs in span 2, 5' 0" to 10' 0" along, with all hung: 27/64" or L/143, where L/180 is allowed. Hang 1.5 times its towers on it for 24 hours before anyone relies on it.`,
    )
  })

  test('by stress, with nothing to do', () => {
    const stressed = { ...within, stressMpa: ksi(15.1), sagMm: inches(0.0786), used: 0.84 }
    expect(says(stressed)).toBe(
      `Stress governs in span 1, 0" to 5' 0" along, with all hung: 15.1 ksi, where 18.0 ksi is allowed.`,
    )
  })

  test('past its yield it is not said to sag', () => {
    expect(says(folds)).toBe(
      `Stress governs in span 1, 0" to 10' 0" along, with all hung: 39.5 ksi, over the 30.0 ksi that is assumed of its yield. It folds or stays bent. Put risers closer, take a bigger conduit, or hang less.`,
    )
  })

  test('resting on too little', () => {
    const loose = railSpan({
      used: Infinity,
      stressMpa: Infinity,
      sagMm: Infinity,
      state: 'Too long',
      isOverhang: true,
    })
    expect(says(loose)).toMatch(/^Nothing holds the overhang at the start, .* it rests on too little/)
  })
})

describe('the table of spans', () => {
  test('has length, conduit, load, moment, stress, sag and share', () => {
    expect(spanCells({ name: '2', span: marginal }, settings, write)).toEqual([
      '60"',
      '1 in',
      'all hung',
      '984 lb-in',
      '18.8 ksi',
      '27/64" (L/143)',
      '126 %',
    ])
    expect(spanCells({ name: '2', span: marginal }, settings, metric)).toEqual([
      '1524 mm',
      '1 in',
      'all hung',
      '111.2 N·m',
      '130.0 MPa',
      '10.6 mm (L/143)',
      '126 %',
    ])
  })

  test('a sag that no tape finds is told by its share, one past yield not at all', () => {
    const [small, none] = [{ ...within, sagMm: 0.3 }, folds].map(
      (span) => spanCells({ name: '1', span }, settings, write)[5],
    )
    expect(small).toBe('under L/5000')
    expect(none).toBe('folds or stays bent')
  })

  test('lines that say the same are one line', () => {
    const rows = alikeRows(
      ['a', 'b', 'a', 'a'].map((cell, k) => ({ cell, name: String(k + 1) })),
      ({ name }) => name,
      ({ cell }) => [cell],
    )
    expect(rows.map(({ names }) => runsWords(names))).toEqual(['1, 3 and 4', '2'])
    expect(runsWords(['1', '2', '3', '6', 'end'])).toBe('1 to 3, 6 and end')
  })

  test('what lifts is marked; a hair is nothing', () => {
    const at = { u: 0, fullN: poundsForce(25.6), mostN: poundsForce(30), leastN: -poundsForce(2.9) }
    expect(reactionCells(at, write)).toEqual(['26 lb', '30 lb', '−3 lb', 'lifts'])
    expect(reactionCells({ ...at, leastN: -0.01 }, write)).toEqual(['26 lb', '30 lb', '0 lb', ''])
  })
})

// Table of longest riser spacings of the trade notes, hand arithmetic: bars every 15 in, 4 x 25 lb and a bar: 51 lb a rail: 34, 47, 65 in;
// the last by stress 65.4 in, by sag 65.2.
test('how far apart risers may stand for what hangs', () => {
  const hangers = [7.5, 22.5, 37.5].map((at) => ({ u: inches(at), fullN: poundsForce(51) }))
  const load = evenLoad(railLine({ hangers }))!
  expect(load).toBeCloseTo(poundsPerInch(51 / 15), 9)
  const rows = spacingRows(load, conduitsUsed([]), settings, write)
  expect(rows.map(([stock]) => stock)).toEqual(['3/4 in', '1 in', '1-1/4 in'])
  const found = rows.map(([, at]) => parseFloat(at!))
  ;[34, 47, 65].forEach((known, k) => expect(Math.abs(found[k]! - known)).toBeLessThanOrEqual(1))
  expect(rows.map(([, , by]) => by)).toEqual(['18.0 ksi', '18.0 ksi', 'sag of L/180'])
  expect(evenLoad(railLine({ hangers: hangers.slice(0, 1) }))).toBeUndefined()
})
