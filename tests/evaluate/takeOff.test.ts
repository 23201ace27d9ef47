import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { bay, type Sketch } from '../support/bay'

const countOf = (sketch: Sketch, item: string): number =>
  evaluate(sketch.layout()).counts.find((line) => line.item === item)?.count ?? 0

/** Three racks from 100 to 460 in north; the outlets of their four lines stand at 100 + 345 = 445 in. */
const row = (): Sketch => bay('40 x 60 ft').row('A', [200, 100])

const withDrain = (y: number): Sketch =>
  row().drain('D', [
    [100, y],
    [400, y],
  ])

describe('where water passes from one part into another', () => {
  test('each outlet over a drain takes a drop tube and a hole in the crown', () => {
    expect(['drop', 'drain-hole'].map((item) => countOf(withDrain(445), item))).toEqual([4, 4])
  })

  test('an outlet out of reach takes neither', () => {
    expect(['drop', 'drain-hole'].map((item) => countOf(withDrain(460), item))).toEqual([0, 0])
  })

  test('a line that ends on another takes a wye, a line that ends nowhere does not', () => {
    const branch = (x: number) =>
      withDrain(300).drain('Branch', [
        [150, 500],
        [x, 300],
      ])
    expect(countOf(branch(250), 'drain-wye-4in')).toBe(1)
    expect(countOf(withDrain(300), 'drain-wye-4in')).toBe(0)
  })
})

describe('what goes under the feet', () => {
  test('nothing on a level floor', () => {
    expect(countOf(row(), 'foot-shim-1/16')).toBe(0)
  })

  test('shims by the piece under every foot that lies lower than the highest by a sixteenth or so', () => {
    // 1 in of fall in 480 in along the row: pairs 30 in apart lie 1/16 in apart, so that the 13 pairs of feet want 0, 1, 2 ...
    // 12 sixteenths. Of each pair's stack, largest first: 1/2 in 8 to 12, so 5; 1/4 in 4, 5, 6, 7 and 12, so 5; 1/8 in 2, 3,
    // 6, 7, 10, 11, so 6; 1/16 in the odd ones to 11, so 6. Two feet a pair.
    const sloping = row().level([0, 0], 0).level([0, 480], -1).level([480, 0], 0)
    const sizes = ['1', '1/2', '1/4', '1/8', '1/16']
    expect(sizes.map((size) => countOf(sloping, `foot-shim-${size}`))).toEqual([0, 10, 10, 12, 12])
  })
})

test('every hook is shut with a tie, and each rail stopped at its first riser', () => {
  expect(['tower', 'hook', 'hook-tie', 'rail-stop-3/4'].map((item) => countOf(row(), item))).toEqual([
    96, 96, 96, 2,
  ])
})
