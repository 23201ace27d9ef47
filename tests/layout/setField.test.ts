import { describe, expect, test } from 'vitest'
import { toggleTower } from '../../src/layout/edits'
import type { Layout } from '../../src/layout/schema'
import { setField } from '../../src/layout/setField'
import { derivedTowers } from '../support/derivedTowers'
import { bay } from '../support/bay'
import { expectEditLaws } from '../support/laws'
import { inches } from '../../src/units/length'

const sketch = (units: 'feet-inches' | 'metric' = 'feet-inches'): Layout =>
  bay('30 x 96 ft')
    .settings({ units })
    .row('Row 1', [60, 100], { racks: 2 })
    .drain('Drain 1', [
      [20, 450],
      [340, 450],
    ])
    .layout()

const set = (layout: Layout, id: string, field: string, value: unknown): Layout => {
  const edited = setField(layout, id, field, value)
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

const sentence = (layout: Layout, id: string, field: string, value: unknown): string => {
  const edited = setField(layout, id, field, value)
  return edited.ok ? 'done' : edited.sentence
}

describe('setField', () => {
  test.each([
    ['rack-row-1', 'racks', 5],
    ['rack-row-1', 'riserMm', null],
    ['rack-row-1', 'name', 'N1'],
    ['rack-row-1', 'joint', 'J3'],
    ['rack-row-1', 'at', { x: 10, y: 20 }],
    ['drain-line-1', 'startInvertMm', -203.2],
    [
      'drain-line-1',
      'points',
      [
        { x: 0, y: 0 },
        { x: 0, y: 1000 },
        { x: 500, y: 1000 },
      ],
    ],
  ])('%s: %s becomes %j', (id, field, value) => {
    const after = expectEditLaws(sketch(), (layout) => set(layout, id, field, value))
    expect(after.parts.find((part) => part.id === id)).toMatchObject({ [field]: value })
  })

  test('puts a length on the tick', () => {
    const after = set(sketch(), 'rack-row-1', 'towerMm', inches(60) + 0.001)
    expect(after.parts[0]).toMatchObject({ towerMm: 1524 })
  })

  test.each([
    ['racks', 4000, 'Racks chained is 4000; it can be 1 to 20.'],
    ['rackLengthMm', inches(144), `Rack length is 12' 0"; it can be 4' 0" to 10' 0".`],
    ['gutterFall', 900, 'Gutter fall is 10.8 in/ft; it can be 1/32 in/ft to 1/2 in/ft.'],
    ['joint', 'J9', 'Rail joint is "J9"; it can be J1, J2, J3, J4 or J5.'],
    ['locked', 1, 'Locked in place is 1; it can be true or false.'],
    ['at', { x: 'west', y: 0 }, `At: x is "west"; it can be -2000000 to 2000000.`],
    ['raks', 3, 'A rack row has no field "raks" that can be set.'],
    ['id', 'rack-row-9', 'A rack row has no field "id" that can be set.'],
    ['kind', 'main', 'A rack row has no field "kind" that can be set.'],
    ['__proto__', {}, 'A rack row has no field "__proto__" that can be set.'],
  ])('%s: %j is refused', (field, value, words) => {
    expect(sentence(sketch(), 'rack-row-1', field, value)).toBe(words)
  })

  test('refuses in the units that the builder reads', () => {
    expect(sentence(sketch('metric'), 'rack-row-1', 'rackLengthMm', 4000)).toBe(
      'Rack length is 4000 mm; it can be 1219.2 mm to 3048 mm.',
    )
  })

  test('refuses a part that is not there', () => {
    expect(sentence(sketch(), 'rack-row-7', 'racks', 2)).toBe('No part of this bay has the id "rack-row-7".')
  })
})

describe('towers taken out stay where they are when a row changes', () => {
  const gaps = [
    [1, 1],
    [5, 4],
    [16, 2],
  ] as const
  const withGaps = (layout: Layout): Layout =>
    gaps.reduce((at, [station, line]) => toggleTower(at, 'rack-row-1', station, line), layout)

  test.each([
    ['fallsTo', 'start'],
    ['racks', 3],
  ])('%s becomes %j', (field, value) => {
    const before = withGaps(sketch())
    const after = expectEditLaws(before, (layout) => set(layout, 'rack-row-1', field, value))
    const filled = set(sketch(), 'rack-row-1', field, value)
    const gapsOf = (layout: Layout, whole: Layout) => {
      const hung = derivedTowers(layout)
      return [...derivedTowers(whole)].filter((spot) => !hung.has(spot)).sort()
    }
    expect(gapsOf(after, filled)).toEqual(gapsOf(before, sketch()))
  })

  test('with fewer lines the gaps of lines that are gone are forgotten, and no other tower goes', () => {
    const after = set(withGaps(sketch()), 'rack-row-1', 'lines', 3)
    // Station 1 line 1 and station 16 line 2, counted by three.
    expect(after.parts[0]).toMatchObject({ takenOut: [0, 46] })
  })
})
