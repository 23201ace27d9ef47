import { expect, test } from 'vitest'
import { headBox } from '../../../src/parts/head-box/kind'
import { headBoxSchema } from '../../../src/parts/head-box/schema'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf } from '../../support/site'

const box = headBoxSchema.parse({ kind: 'head-box', id: 'head-box-1', at: at(100, 200) })

test('its water stands 88 in over the floor, 12 in over laterals at 76, and leaves by the bottom 12 in lower', () => {
  const { headBox: facts, mouths } = headBox.derive(box, flatSite(-3))
  expect([facts!.waterMm, facts!.at.z].map(inchesOf)).toEqual([85, 73])
  expect(mouths.map(({ role, at: place }) => [role, inchesOf(place.z)])).toEqual([['head-box', 73]])
})

test('it takes up its floor from the feet of its stand to its rim', () => {
  // 24 in runs north: 18 in wide, rim 3 in over the overflow.
  const [body] = bodiesOf(headBox.derive(box, flatSite(-3)), 'equipment')
  expect(extentOf(body!)).toEqual([91, 188, 109, 212, 0, 91])
})

test('it is a box, its stand and the tee of its overflow', () => {
  expect(headBox.derive(box, flatSite()).fittings.map(({ item }) => item)).toEqual([
    'head-box',
    'head-box-stand',
    'overflow-tee',
  ])
})
