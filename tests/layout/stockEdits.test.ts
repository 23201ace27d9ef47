import { describe, expect, test } from 'vitest'
import { readLayout, writeLayout } from '../../src/layout/file'
import type { Edited } from '../../src/layout/edited'
import type { Layout } from '../../src/layout/schema'
import {
  addLeftover,
  removeLeftover,
  setLeftover,
  setLumberLengths,
  setMeasure,
} from '../../src/layout/stockEdits'
import { inches, toInches } from '../../src/units/length'
import { bay } from '../support/bay'
import { expectFileRoundTrip } from '../support/laws'
import { measuredBay, measuring } from '../support/measuring'

const empty = bay('30 x 40 ft').layout()

const taken = (edited: Edited): Layout => {
  if (!edited.ok) throw new Error(edited.sentence)
  expectFileRoundTrip(edited.layout)
  return edited.layout
}

const sentence = (edited: Edited): string => (edited.ok ? '' : edited.sentence)

describe('stock as it measures', () => {
  test('is kept one line a stock, and is gone once it is as the catalogue has it', () => {
    const fat = taken(setMeasure(empty, 'lumber-2x4', 'thickMm', inches(1.5625)))
    const long = taken(setMeasure(fat, 'lumber-2x4', 'overMm', inches(1 / 4)))
    expect(long.bench.measured).toEqual([measuring('lumber-2x4', { thick: 1.5625, over: 1 / 4 })])
    const thin = taken(setMeasure(long, 'lumber-2x4', 'thickMm', null))
    expect(taken(setMeasure(thin, 'lumber-2x4', 'overMm', null)).bench.measured).toEqual([])
  })

  test('a wall that fills its conduit is refused: two of 0.470 in 0.922 in', () => {
    expect(sentence(setMeasure(empty, 'conduit-3/4', 'wallMm', inches(0.47)))).toBe(
      '3/4 in thin-wall conduit can\'t have a wall of 0.470" in an outside diameter of 0.922": nothing is left inside.',
    )
    expect(setMeasure(empty, 'conduit-3/4', 'wallMm', inches(0.46)).ok).toBe(true)
  })

  test('what no stock is like is refused in the words of its field', () => {
    expect(sentence(setMeasure(empty, 'conduit-3/4', 'odMm', inches(5)))).toBe(
      'Measured stock 1, 3/4 in thin-wall conduit: Outside diameter is 5"; it can be 1/4" to 4".',
    )
  })

  test('a board is no thicker than it is wide', () => {
    expect(sentence(setMeasure(empty, 'lumber-2x4', 'thickMm', inches(4)))).toBe(
      '2x4 lumber can\'t be 4" thick and 3-1/2" wide: the thickness is the lesser side.',
    )
  })

  test('that cannot be is refused from a file too', () => {
    const bad = measuredBay(empty, measuring('conduit-1', { od: 1, wall: 0.5 }))
    const read = readLayout(writeLayout(bad))
    expect(read.ok ? '' : read.sentence).toContain('nothing is left inside')
    const twice = measuredBay(empty, measuring('conduit-1', { od: 1.1 }), measuring('conduit-1', { od: 1.2 }))
    const readTwice = readLayout(writeLayout(twice))
    expect(readTwice.ok ? '' : readTwice.sentence).toContain('1 in thin-wall conduit is measured twice')
  })
})

test('lengths of lumber are each there once, shortest first, and one at least', () => {
  const { settings } = taken(setLumberLengths(empty, [inches(192), inches(96), inches(192)]))
  expect(settings.lumberMm.map((mm) => Math.round(toInches(mm)))).toEqual([96, 192])
  expect(sentence(setLumberLengths(empty, [inches(13)]))).toBe(
    `A length of lumber is 1' 1"; it can be 2' 0" to 40' 0".`,
  )
  expect(sentence(setLumberLengths(empty, []))).toBe(
    'The yard must have one length of lumber at least, or nothing can be cut.',
  )
})

describe('leftovers', () => {
  const board = { stock: 'lumber-2x4', lengthMm: inches(40), count: 2 }

  test('of one stock and length are counted together', () => {
    const twice = taken(addLeftover(taken(addLeftover(empty, board)), { ...board, count: 3 }))
    expect(twice.bench.leftovers).toEqual([{ ...board, count: 5 }])
    const other = taken(addLeftover(twice, { ...board, lengthMm: inches(41) }))
    expect(other.bench.leftovers.map(({ count }) => count)).toEqual([5, 2])
  })

  test('are changed and taken away line by line', () => {
    const one = taken(addLeftover(empty, board))
    expect(taken(setLeftover(one, 0, { count: 7 })).bench.leftovers).toEqual([{ ...board, count: 7 }])
    expect(taken(removeLeftover(one, 0)).bench.leftovers).toEqual([])
  })

  test('of no length or no number are refused in words', () => {
    expect(sentence(addLeftover(empty, { ...board, lengthMm: inches(1 / 2) }))).toBe(
      'A leftover of 2x4 lumber is 1" long at least, not 1/2".',
    )
    expect(sentence(addLeftover(empty, { ...board, count: 0 }))).toBe(
      'How many of it lie about is a whole number from 1.',
    )
  })
})
