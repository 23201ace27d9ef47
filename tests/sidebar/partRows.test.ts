import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { acceptFinding } from '../../src/layout/bayEdits'
import { partRows } from '../../src/sidebar/partRows'
import { placeWords } from '../../src/sidebar/placeWords'
import { writerFor } from '../../src/units/writer'
import { bay } from '../support/bay'
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
  const before = firstTry()
  const aboutPit = evaluate(before).findings.filter(({ parts }) => parts.includes('sump-1'))
  expect(aboutPit.length).toBeGreaterThan(0)
  const accepted = aboutPit.reduce((layout, { key }) => {
    const edited = acceptFinding(layout, key, 'Moved on Monday', 'Foreman')
    return edited.ok ? edited.layout : layout
  }, before)
  expect(rowNamed(before, 'Pit').rank).toBe(2)
  expect(rowNamed(accepted, 'Pit')).toMatchObject({
    word: 'Fits',
    rank: 0,
    water: { word: 'Holds', rank: 0 },
  })
})

test('a row says what it carries and how it stands, and no other part does', () => {
  const layout = bay('40 x 60 ft').row('A', [100, 100], { racks: 1, midPairs: 0 }).post('Post', [300, 300])
  const { strength, ...row } = rowNamed(layout.layout(), 'A')
  // Rails of 120 in with nothing under them fold, and two bare pairs weigh too little to stand a push: words of their own, beside how the row fits.
  expect(strength!.map(({ word, rank }) => [word, rank])).toEqual([
    ['Too long', 2],
    ['Tips', 2],
  ])
  expect(strength![0]!.words).toMatch(/^\d+\.\d %$/)
  expect(row.word).not.toBe('Too long')
  expect(rowNamed(layout.layout(), 'Post').strength).toBeUndefined()
})
