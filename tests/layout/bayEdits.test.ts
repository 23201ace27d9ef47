import { describe, expect, test } from 'vitest'
import { acceptFinding, renameBay, setHouse, setSettings, unaccept } from '../../src/layout/bayEdits'
import type { Edited } from '../../src/layout/edited'
import { emptyBay } from '../../src/layout/empty'
import type { Layout } from '../../src/layout/schema'
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
