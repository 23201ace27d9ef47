import { describe, expect, test } from 'vitest'
import {
  acceptFinding,
  renameBay,
  setBench,
  setHouse,
  setSettings,
  unaccept,
} from '../../src/layout/bayEdits'
import type { Edited } from '../../src/layout/edited'
import { emptyBay } from '../../src/layout/empty'
import type { Layout } from '../../src/layout/schema'
import { gph } from '../../src/units/flow'
import { feet, inches } from '../../src/units/length'
import { expectEditLaws } from '../support/laws'

const bay = (): Layout => emptyBay(feet(30), feet(96), 'Test bay')

const layoutOf = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

const sentenceOf = (edited: Edited): string => (edited.ok ? 'done' : edited.sentence)

test('a new bay is four walls and nothing in it', () => {
  const { house, parts, title } = bay()
  expect([title, parts]).toEqual(['Test bay', []])
  expect(house.outline).toEqual([
    { x: 0, y: 0 },
    { x: 9144, y: 0 },
    { x: 9144, y: 29260.8 },
    { x: 0, y: 29260.8 },
  ])
})

describe('renameBay', () => {
  test('takes a title without the blanks around it', () => {
    expect(expectEditLaws(bay(), (l) => layoutOf(renameBay(l, '  House 3 '))).title).toBe('House 3')
  })

  test('refuses an empty one', () => {
    expect(sentenceOf(renameBay(bay(), '  '))).toBe('Title is ""; it can be a text of 1 to 120 letters.')
  })
})

describe('setHouse', () => {
  test('takes a new outline, on the tick', () => {
    const after = expectEditLaws(bay(), (l) =>
      layoutOf(
        setHouse(l, {
          ...l.house,
          outline: [
            { x: 0, y: 0 },
            { x: 5000.0001, y: 0 },
            { x: 0, y: 5000 },
          ],
        }),
      ),
    )
    expect(after.house.outline[1]).toEqual({ x: 5000, y: 0 })
  })

  test.each([
    [
      (l: Layout) => l.house.outline.toReversed(),
      "The house's outline runs clockwise; its corners must be listed anticlockwise.",
    ],
    [(l: Layout) => l.house.outline.slice(0, 2), 'Outline is a list of 2; it can be a list of 3 to 200.'],
    [(l: Layout) => l.house.outline.map(({ x }) => ({ x, y: 0 })), "The house's outline has no area."],
  ])('refuses an outline that no file could hold', (outline, sentence) => {
    const layout = bay()
    expect(sentenceOf(setHouse(layout, { ...layout.house, outline: outline(layout) }))).toBe(sentence)
  })
})

describe('setSettings', () => {
  test('changes what it is told', () => {
    const after = expectEditLaws(bay(), (l) =>
      layoutOf(setSettings(l, { cartMm: inches(30), units: 'metric' })),
    )
    expect([after.settings.cartMm, after.settings.units, after.settings.kerfMm]).toEqual([
      762,
      'metric',
      3.175,
    ])
  })

  test('refuses in words', () => {
    expect(sentenceOf(setSettings(bay(), { cartMm: inches(100) }))).toBe(
      `Cart width is 8' 4"; it can be 10" to 8' 0".`,
    )
  })

  // 40 gph are 151.4165 L/h, 0.5 are 1.8927 and 30 are 113.5624; 1 °C is 33.8 °F, 2 are 35.6 and 40 are 104.
  test.each([
    [
      { targetLph: gph(40) },
      'Flow wanted at each tower is 40.00 gph; it can be 0.50 gph to 30.00 gph.',
      'Flow wanted at each tower is 151.416 L/h; it can be 1.893 L/h to 113.562 L/h.',
    ],
    [
      { waterC: 1 },
      'Water temperature is 33.8 °F; it can be 35.6 °F to 104.0 °F.',
      'Water temperature is 1.0 °C; it can be 2.0 °C to 40.0 °C.',
    ],
    [
      { tubeScatter: 0.4 },
      'Scatter of the tubes themselves is 40.00 %; it can be 0.00 % to 30.00 %.',
      'Scatter of the tubes themselves is 40.00 %; it can be 0.00 % to 30.00 %.',
    ],
  ])('refuses %j in the units of the reader', (change, inFeet, metric) => {
    expect(sentenceOf(setSettings(bay(), change))).toBe(inFeet)
    const inMetric = layoutOf(setSettings(bay(), { units: 'metric' }))
    expect(sentenceOf(setSettings(inMetric, change))).toBe(metric)
  })

  test('keeps a bucket test, and refuses one that no tube ran', () => {
    const test = { stock: 'tube-1/8', lengthMm: 914.4, headMm: 180.34, flowLph: 15, waterC: 20 } as const
    const after = expectEditLaws(bay(), (l) => layoutOf(setSettings(l, { bucket: test })))
    expect(after.settings.bucket).toEqual({ ...test, headMm: 180.340625 }) // on the tick, 57709 / 320
    expect(sentenceOf(setSettings(bay(), { bucket: { ...test, flowLph: 0 } }))).toMatch(
      /^Bucket: Flow into the bucket is 0\.00 gph; it can be 0\.10 gph to 60\.00 gph\.$/,
    )
  })
})

describe('acceptFinding and unaccept', () => {
  const key = 'aisle-width-min rack-row-1 rack-row-2'

  test('keeps one reason for one finding, and forgets it again', () => {
    const first = expectEditLaws(bay(), (l) => layoutOf(acceptFinding(l, key, ' Only scouting ', 'Foreman')))
    expect(first.settings.accepted).toEqual([{ key, reason: 'Only scouting', by: 'Foreman' }])
    const second = expectEditLaws(first, (l) => layoutOf(acceptFinding(l, key, 'Narrow carts', '')))
    expect(second.settings.accepted).toEqual([{ key, reason: 'Narrow carts', by: '' }])
    expect(expectEditLaws(second, (l) => unaccept(l, key)).settings.accepted).toEqual([])
  })

  test('asks for a reason', () => {
    expect(sentenceOf(acceptFinding(bay(), key, '  ', ''))).toBe(
      'An accepted warning needs a reason, which prints on the sheet.',
    )
  })

  test('forgetting what was never accepted changes nothing', () => {
    const layout = bay()
    expect(unaccept(layout, key)).toBe(layout)
  })
})

test('what an edit leaves as it is stays the very same thing', () => {
  const before = bay()
  const cut = [{ stock: 'lumber-2x4', lengthMm: inches(16), count: 2, marks: ['SP'] }]
  const after = expectEditLaws(before, (l) => layoutOf(setBench(l, { cut })))
  expect(after.bench.cut).toEqual(cut)
  expect(after.bench.measured).toBe(before.bench.measured)
  expect(after.bench.leftovers).toBe(before.bench.leftovers)
  expect(layoutOf(setSettings(before, { kerfMm: inches(3 / 32) })).settings.lumberMm).toBe(
    before.settings.lumberMm,
  )
})
