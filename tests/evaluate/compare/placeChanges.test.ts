import { expect, test } from 'vitest'
import { placeChanges } from '../../../src/evaluate/compare/placeChanges'
import { evaluate } from '../../../src/evaluate/evaluate'
import { copyParts, movePartsBy, removeParts } from '../../../src/layout/edits'
import { setField } from '../../../src/layout/setField'
import { boxOf } from '../../../src/geometry/box'
import { inches } from '../../../src/units/length'
import { scenarios } from '../../support/scenarios'

const bay = scenarios['kestrel-bend-house-2']!()
const was = evaluate(bay)
const n1 = bay.parts.find(({ name }) => name === 'N1')!.id

test('what has moved has both its places, as far apart as it has moved, and an arrow from one to the other', () => {
  const [change, ...others] = placeChanges(was, evaluate(movePartsBy(bay, [n1], inches(-8), inches(12))))
  expect(others).toEqual([])
  expect(change).toMatchObject({ part: n1, what: 'moved' })
  const [from, to] = [boxOf(change!.from.flat()), boxOf(change!.to.flat())]
  // 8 in are 203.2 mm, 12 in are 304.8 mm.
  expect(to.x0 - from.x0).toBeCloseTo(-203.2, 3)
  expect(to.y0 - from.y0).toBeCloseTo(304.8, 3)
  const [tail, head] = change!.arrow!
  expect(head.x - tail.x).toBeCloseTo(-203.2, 3)
  expect(head.y - tail.y).toBeCloseTo(304.8, 3)
})

test('a new part has one place and one that is gone has the other', () => {
  const more = evaluate(removeParts(copyParts(bay, [n1], inches(600), 0), [n1]))
  expect(placeChanges(was, more).map(({ what, from, to }) => [what, from.length, to.length])).toEqual([
    ['added', 0, 1],
    ['removed', 1, 0],
  ])
})

test('a shorter row shows the room that it took; one with another valve takes the same', () => {
  const edited = (field: string, value: number | string) => {
    const changed = setField(bay, n1, field, value)
    if (!changed.ok) throw new Error(changed.sentence)
    return placeChanges(was, evaluate(changed.layout))
  }
  expect(edited('racks', 2)).toMatchObject([{ what: 'changed', from: [{ length: 4 }] }])
  expect(edited('trimTurns', 2)).toMatchObject([{ what: 'changed', from: [] }])
})
