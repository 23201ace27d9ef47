import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { acceptFinding } from '../../src/layout/bayEdits'
import { partRows } from '../../src/sidebar/partRows'
import { placeWords } from '../../src/sidebar/placeWords'
import { writerFor } from '../../src/units/writer'
import { firstTry } from '../support/firstTry'
import { scenarios } from '../support/scenarios'
import { at } from '../support/site'

const writer = writerFor('feet-inches')

const rowsOf = (layout: ReturnType<typeof firstTry>) => partRows(evaluate(layout), writer)

const rowNamed = (layout: ReturnType<typeof firstTry>, name: string) =>
  rowsOf(layout)
    .flatMap(({ rows }) => rows)
    .find((row) => row.name === name)!

test('a place is said from the two strings', () => {
  expect(placeWords(at(63, 410), writer)).toBe(`5' 3" east, 34' 2" north`)
  expect(placeWords(at(-6, -12), writer)).toBe(`6" west, 1' 0" south`)
})

test.each(Object.entries(scenarios))('the list of %s has every part once, under its kind', (_, build) => {
  const layout = build()
  const groups = rowsOf(layout)
  expect(groups.flatMap(({ rows }) => rows.map(({ id }) => id)).sort()).toEqual(
    layout.parts.map(({ id }) => id).sort(),
  )
  for (const { kind, rows } of groups)
    for (const { id } of rows) expect(layout.parts.find((part) => part.id === id)?.kind).toBe(kind)
})

test('a part shows the worst that is said of it, and its good word where nothing is', () => {
  expect(rowNamed(firstTry(), 'N1')).toMatchObject({ rank: 2 })
  expect(rowNamed(firstTry(), 'Post')).toMatchObject({ word: 'Tight', rank: 1 })
  expect(rowNamed(firstTry(), 'Drain S')).toMatchObject({ word: 'Falls', rank: 0 })
})

test('what was accepted counts no more', () => {
  const bay = firstTry()
  const aboutPit = evaluate(bay).findings.filter(({ parts }) => parts.includes('sump-1'))
  expect(aboutPit.length).toBeGreaterThan(0)
  const accepted = aboutPit.reduce((layout, { key }) => {
    const edited = acceptFinding(layout, key, 'Moved on Monday', 'Foreman')
    return edited.ok ? edited.layout : layout
  }, bay)
  expect(rowNamed(bay, 'Pit').rank).toBe(2)
  expect(rowNamed(accepted, 'Pit')).toMatchObject({
    word: 'Fits',
    rank: 0,
    water: { word: 'Holds', rank: 0 },
  })
})
