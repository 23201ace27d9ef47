import { describe, expect, test } from 'vitest'
import { benchmarkMarks, houseMarks, serviceMarks } from '../../src/drawing/houseMarks'
import { isShape, markReach } from '../../src/drawing/markReach'
import { joined } from '../../src/geometry/box'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'

const { house } = bay('20 x 30 ft')
  .benchmark('Nail', [240, 0], 0)
  .buried(
    'gas',
    'Gas line',
    [
      [10, 10],
      [10, 300],
      [40, 300],
    ],
    18,
  )
  .layout()

describe('the house', () => {
  test('is washed inside its walls', () => {
    const [walls] = houseMarks(house)
    expect(walls).toMatchObject({ pen: 'wall', wash: 'house', closed: true })
    expect(markReach(walls as never)).toEqual({ x0: 0, y0: 0, x1: inches(240), y1: inches(360) })
  })

  test('shows what is buried as a hidden line, named along its longest leg', () => {
    const [line, name] = serviceMarks(house)
    expect(line).toMatchObject({ as: 'path', pen: 'hidden', wash: 'none' })
    expect(name).toMatchObject({ text: 'Gas line', upright: true, at: { x: inches(10), y: inches(155) } })
  })

  test('has a benchmark of the size asked for, about its place', () => {
    const { x0, y0, x1, y1 } = benchmarkMarks(house, 50).filter(isShape).map(markReach).reduce(joined)
    for (const [found, wanted] of [
      [x0, inches(240) - 50],
      [x1, inches(240) + 50],
      [y0, -50],
      [y1, 50],
    ] as const)
      expect(found).toBeCloseTo(wanted)
  })
})
