import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pegRows } from '../../src/sheets/pegs/pegRows'
import { quantityWords } from '../../src/checks/measuredWords'
import { sentence } from '../../src/checks/words'
import { evaluate } from '../../src/evaluate/evaluate'
import { setHouse, setSettings } from '../../src/layout/bayEdits'
import type { Edited } from '../../src/layout/edited'
import { levelReading } from '../../src/layout/levelReading'
import type { Layout } from '../../src/layout/schema'
import { wordsFor } from '../../src/sidebar/words'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { scenarios } from '../support/scenarios'

const layoutOf = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

/** The bay with its levels counted from a benchmark of this value, read decimally. */
const readFrom = (layout: Layout, valueMm: number, levelsIn: 'feet' | 'mm'): Layout => {
  const { benchmark } = layout.house
  const house = { ...layout.house, benchmark: { ...benchmark, valueMm } }
  return layoutOf(setSettings(layoutOf(setHouse(layout, house)), { levelsFrom: 'benchmark', levelsIn }))
}

const wordsOf = ({ parts, settings, house }: Layout) =>
  wordsFor(parts, 'feet-inches', levelReading(settings, house.benchmark))

describe('a finding in a bay whose levels are counted from its benchmark', () => {
  // The benchmark at -3 in is called 100 ft: 0 in the file is 1203 in on paper.
  const layout = readFrom(
    bay('40 x 60 ft')
      .benchmark('Nail', [10, 10], -3)
      .drain(
        'D',
        [
          [160, 100],
          [400, 100],
        ],
        { startInvert: -8 },
      )
      .pit('Pit', { x: [400, 436], y: [50, 164] }, { overflow: -8.5 })
      .layout(),
    inches(1200),
    'feet',
  )
  const words = wordsOf(layout)
  const finding = evaluate(layout).findings.find(({ rule }) => rule === 'pit-inlet-level')!

  test('says its level from there, and its gap as a gap', () => {
    // The mend wants the overflow at -11.5 in: 1203 - 11.5 = 1191.5 in = 99.29 ft.
    expect(sentence(finding, words)).toBe(
      'D comes into Pit 2" under the overflow; it wants 1" over it. Set the overflow of Pit to 99.29 ft.',
    )
  })

  test('has the levels of its arithmetic from there too', () => {
    // Inlet -10.5 in: 1192.5 in = 99.375 ft, to hundredths 99.38. Overflow -8.5 in: 1194.5 in = 99.54 ft.
    expect(finding.terms.map(({ quantity }) => quantityWords(quantity, words))).toEqual([
      '99.38 ft',
      '99.54 ft',
    ])
  })

  test('a refused level is told as it was typed', () => {
    const refused = setHouse(layout, {
      ...layout.house,
      spotLevels: [{ at: { x: 0, y: 0 }, levelMm: 3_000_000 }],
    })
    // By hand: 3 000 000 + 30 556.2 mm = 3 030 556.2 mm; / 304.8 = 9942.77 ft.
    expect(!refused.ok && refused.sentence).toMatch(/Level is 9942\.\d+ ft/)
  })
})

describe('raising the value of the benchmark', () => {
  const sample = scenarios['kestrel-bend-house-2']!()

  /** In whole mm, as all levels and cuts are read then; what is no number stays words. */
  const told = (valueMm: number) => {
    const layout = readFrom(sample, valueMm, 'mm')
    const words = wordsOf(layout)
    const { bay: built, findings } = evaluate(layout)
    const pegs = [...built.levels.drains.values()].flatMap((run) => pegRows(run, built, words))
    const terms = findings.flatMap((finding) => finding.terms.map(({ quantity }) => quantity))
    const mm = (text: string) => Number(/^(-?\d+) mm$/.exec(text)?.[1])
    return {
      levels: [
        ...pegs.flatMap(({ invert, floor, pegTop }) => [invert, floor, pegTop]),
        ...terms.filter(({ isLevel }) => isLevel).map((each) => quantityWords(each, words)),
      ].map(mm),
      others: [
        ...pegs.map(({ invert: _invert, floor: _floor, pegTop: _pegTop, ...rest }) => JSON.stringify(rest)),
        ...terms.filter(({ isLevel }) => !isLevel).map((each) => quantityWords(each, words)),
      ],
    }
  }

  test('raises every written level by as much, and changes no cut, cover, gap or fall', () => {
    const before = told(30_480)
    expect(before.levels.length).toBeGreaterThan(20)
    expect(before.levels).not.toContain(NaN)
    fc.assert(
      fc.property(fc.integer({ min: -30_000, max: 300_000 }), (byMm) => {
        const after = told(30_480 + byMm)
        expect(after.levels).toEqual(before.levels.map((level) => level + byMm))
        expect(after.others).toEqual(before.others)
      }),
      { seed: 9033, numRuns: 5 },
    )
  })
})
