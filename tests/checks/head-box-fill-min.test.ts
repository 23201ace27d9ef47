import { expect, test } from 'vitest'
import { layoutSchema } from '../../src/layout/schema'
import { judged, told } from '../support/judged'
import { fedRow } from '../support/fedRow'

const boxed = (pumps: number) => {
  const layout = fedRow({}, { pumps, pump: 'middle' }).layout()
  const box = {
    kind: 'head-box',
    id: 'head-box-1',
    name: 'Box',
    at: { x: 60 * 25.4, y: 130 * 25.4 },
    waterAboveFloorMm: 88 * 25.4,
  }
  return layoutSchema.parse({ ...layout, parts: [...layout.parts, box] })
}

// What goes out and does not come in empties the box: geometry.
test('a box that nothing fills runs dry', () => {
  expect(judged('head-box-fill-min', boxed(0))[0]).toMatch(/^Starved, 0 of \d+/)
  expect(told('head-box-fill-min', boxed(0))[0]).toMatch(
    /^Box gets 0\.0 gpm and gives \d+\.\d gpm: it runs dry\.$/,
  )
})

test('a box that a pump overfeeds does not', () => {
  expect(judged('head-box-fill-min', boxed(1))).toEqual([])
})
