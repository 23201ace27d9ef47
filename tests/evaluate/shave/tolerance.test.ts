import { expect, test } from 'vitest'
import { toleranceSaves } from '../../../src/evaluate/shave/tolerance'
import type { CutList } from '../../../src/model/cutList'
import { inches, toTicks } from '../../../src/units/length'

/*
 * Hand arithmetic. Two pieces of 60 in and a kerf of 1/8 in are 120-1/8 in: a 10 ft board gives one. Each may come 1/8 in short:
 * two of (120 - 1/8) / 2 = 59-15/16 in, 1/16 in under. Ten pieces then take 5 boards and not 10.
 */
const listOf = (minusIn: number): CutList => {
  const pieces = [
    {
      lengthTicks: toTicks(inches(60)),
      count: 10,
      minusTicks: toTicks(inches(minusIn)),
      rule: { kind: 'exact' },
    } as const,
  ]
  const problem = {
    pieces,
    stocks: [{ lengthTicks: toTicks(inches(120)) }],
    saw: { kerfTicks: toTicks(inches(1 / 8)), trimTicks: 0 },
  }
  const line = { marks: ['BX'], lengthMm: inches(60), count: 10, cut: { kind: 'exact' } as const }
  // Only what tolerances are told from; the rest of a list has no say in it.
  return { stock: 'lumber-2x4', problem, pieces: [line] } as unknown as CutList
}

test('pieces that may come short, and do, to be two a board', () => {
  expect(toleranceSaves(listOf(1 / 8))).toEqual([
    {
      stock: 'lumber-2x4',
      marks: ['BX'],
      lengthTicks: toTicks(inches(60)),
      offTicks: toTicks(inches(1 / 16)),
      boards: 5,
    },
  ])
})

test('pieces that may not come short enough save nothing', () => {
  expect(toleranceSaves(listOf(1 / 32))).toEqual([])
  expect(toleranceSaves(listOf(0))).toEqual([])
})
