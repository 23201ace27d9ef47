import { describe, expect, test } from 'vitest'
import { straightLegs } from '../../src/geometry/legs'

const at = (x: number, y: number, z = 0) => ({ x, y, z })

describe('straight legs of a path', () => {
  test.each([
    ['no points', [], []],
    ['one point', [at(1, 1)], []],
    ['a line', [at(0, 0), at(3, 4)], [5]],
    ['a corner', [at(0, 0), at(300, 0), at(300, 400)], [300, 400]],
    ['points on the way', [at(0, 0), at(100, 0), at(250, 0), at(250, 100), at(250, 300)], [250, 300]],
    ['a point given twice', [at(0, 0), at(100, 0), at(100, 0), at(200, 0)], [200]],
    ['a way there and back', [at(0, 0), at(100, 0), at(40, 0)], [100, 60]],
    ['a fall that stays the same', [at(0, 0, 20), at(100, 0, 10), at(200, 0, 0)], [Math.hypot(200, 20)]],
  ])('%s', (_, path, legs) => {
    expect(straightLegs(path)).toEqual(legs)
  })

  test('a turn of one degree is a bend', () => {
    const turned = at(1000 + 1000 * Math.cos(Math.PI / 180), 1000 * Math.sin(Math.PI / 180))
    expect(straightLegs([at(0, 0), at(1000, 0), turned])).toHaveLength(2)
  })
})
