import { expect, test } from 'vitest'
import { layoutSchema, type Layout } from '../../src/layout/schema'
import { judged, mended, told } from '../support/judged'
import { fedRow } from '../support/fedRow'

/** A head box on the main with its water so high over the floor, inches, and the pit without a pump. */
const boxed = (waterIn: number): Layout => {
  const layout = fedRow({}, { pumps: 0 }).layout()
  const box = {
    kind: 'head-box',
    id: 'head-box-1',
    name: 'Box',
    at: { x: 38 * 25.4, y: 130 * 25.4 },
    waterAboveFloorMm: waterIn * 25.4,
  }
  return layoutSchema.parse({ ...layout, parts: [...layout.parts, box] })
}

// Laterals lie at 75-3/8 in. Ten inches over them: common practice, no source.
test('10 in over the laterals will do', () => {
  expect(judged('head-box-level-min', boxed(85.375))).toEqual([])
})

test('less is told of, and the box set higher', () => {
  expect(judged('head-box-level-min', boxed(80))).toEqual(['Drifting, 4.625 of 10'])
  expect(told('head-box-level-min', boxed(80))[0]).toBe(
    'The water of Box stands 4-5/8" over the highest lateral that it feeds; it wants 10" over it. Set the water of Box to 7\' 1-3/8" over the floor.',
  )
  expect(judged('head-box-level-min', mended('head-box-level-min', boxed(80)))).toEqual([])
})

test('a box that no pump fills runs dry', () => {
  expect(judged('head-box-fill-min', boxed(88))[0]).toMatch(/^Starved, 0 of \d+/)
})
