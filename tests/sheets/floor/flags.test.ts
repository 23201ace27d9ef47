import { describe, expect, test } from 'vitest'
import type { Finding } from '../../../src/model/finding'
import { clearWords } from '../../../src/sheets/clearWords'
import { flags } from '../../../src/sheets/floor/flags'

const RATIO = 100
const everywhere = { x0: -1e6, y0: -1e6, x1: 1e6, y1: 1e6 }

const finding = (x: number, more: Partial<Finding> = {}): Finding => ({
  key: `foot-shim-max:${x}`,
  rule: 'foot-shim-max',
  subject: 'fit',
  state: 'Clash',
  parts: [`row-${x}`],
  at: { x, y: 0 },
  measured: { value: 200, unit: 'mm' },
  limit: { value: 100, unit: 'mm' },
  facts: {},
  terms: [],
  ...more,
})

const numbersOf = (marks: ReturnType<typeof flags>) => marks.filter((mark) => mark.as === 'text')
const group = (...findings: readonly [Finding, ...Finding[]]) => ({
  worst: findings[0],
  others: findings.slice(1),
})

describe('flags', () => {
  test('bear the number of their group at every place of it', () => {
    const marks = flags(
      [group(finding(0), finding(5000)), group(finding(9000, { state: 'Tight' }))],
      RATIO,
      clearWords([], everywhere),
      [],
    )
    expect(numbersOf(marks).map(({ text, at }) => `${text} at ${at.x}`)).toEqual([
      '1 at 0',
      '1 at 5000',
      '2 at 9000',
    ])
  })

  test('stand beside a wall with a leader to the place, and on it only where nothing else is free', () => {
    const wall = { x0: -100, y0: -1e5, x1: 100, y1: 1e5 }
    const [leader, , number] = flags([group(finding(0))], RATIO, clearWords([], everywhere), [wall])
    if (leader?.as !== 'path' || number?.as !== 'text') throw new Error('a leader, a shape and a number')
    expect(leader.points.slice(0, 2)).toEqual(Float64Array.of(0, 0))
    // Half a flag is 2.3 mm of paper.
    expect(Math.abs(number.at.x)).toBeGreaterThan(100 + 2.3 * RATIO)
    const walled = flags([group(finding(0))], RATIO, clearWords([], everywhere), [everywhere])
    expect(numbersOf(walled)[0]!.at).toEqual({ x: 0, y: 0 })
  })

  test('of many are left out where they would hide words, all but the worst', () => {
    const many = group(finding(0), ...[1, 2, 3, 4, 5, 6].map((i) => finding(i * 5000)))
    expect(numbersOf(flags([many], RATIO, clearWords([], everywhere), []))).toHaveLength(7)
    expect(numbersOf(flags([many], RATIO, clearWords([everywhere], everywhere), []))).toHaveLength(1)
  })
})
