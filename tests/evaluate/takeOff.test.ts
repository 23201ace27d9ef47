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
    expect(countOf(branch(250), 'drain-wye')).toBe(1)
    expect(countOf(withDrain(300), 'drain-wye')).toBe(0)
  })
})

describe('what goes under the feet', () => {
  test('nothing on a level floor', () => {
    expect(countOf(row(), 'foot-shim')).toBe(0)
  })

  test('a stack under every foot that lies lower than the highest by a sixteenth or so', () => {
    // 1 in of fall in 480 in along the row: pairs 30 in apart lie 1/16 in apart, so 24 of 26 feet are shimmed.
    const sloping = row().level([0, 0], 0).level([0, 480], -1).level([480, 0], 0)
    expect(countOf(sloping, 'foot-shim')).toBe(24)
  })
})

test('every hook is shut with a tie, and each rail stopped at its first riser', () => {
  expect(['tower', 'hook', 'hook-tie', 'rail-stop'].map((item) => countOf(row(), item))).toEqual([
    96, 96, 96, 2,
  ])
})
