import { describe, expect, test } from 'vitest'
import type { Words } from '../../../src/checks/context'
import type { Finding } from '../../../src/model/finding'
import { findingGroups, groupWords } from '../../../src/sheets/floor/findingGroups'
import { inches } from '../../../src/units/length'
import { inTrench } from '../../../src/units/precision'
import { writerFor } from '../../../src/units/writer'

const write: Words = { ...writerFor('feet-inches', inTrench), name: (part) => part }

const shim = (part: string, high: number, more: Partial<Finding> = {}): Finding => ({
  key: `foot-shim-max:${part}`,
  rule: 'foot-shim-max',
  subject: 'fit',
  state: 'Tight',
  parts: [part],
  at: { x: 0, y: 0 },
  measured: { value: inches(high), unit: 'mm' },
  limit: { value: inches(1.5), unit: 'mm' },
  facts: {},
  terms: [],
  ...more,
})

const mend = { kind: 'move', parts: ['A'], dxMm: 0, dyMm: 10 } as const
const sizes = (findings: readonly Finding[]) => findingGroups(findings).map(({ others }) => others.length + 1)

describe('like findings', () => {
  test('are one group, the worst first', () => {
    const [group] = findingGroups([shim('S1', 1.625), shim('S3', 2.25), shim('S2', 2)])
    expect(group!.worst.parts).toEqual(['S3'])
    expect(group!.others.map(({ parts }) => parts[0])).toEqual(['S2', 'S1'])
  })

  test('stand apart where limit, state or facts differ, or where a second part has a hand in it', () => {
    const limit = { value: inches(4), unit: 'mm' } as const
    expect(sizes([shim('A', 2), shim('B', 5, { limit })])).toEqual([1, 1])
    expect(sizes([shim('A', 2), shim('B', 5, { state: 'Clash' })])).toEqual([1, 1])
    expect(sizes([shim('A', 2), shim('B', 2, { facts: { is: 'wall' } })])).toEqual([1, 1])
    expect(sizes([shim('A', 2, { parts: ['A', 'X'] }), shim('B', 2, { parts: ['B', 'X'] })])).toEqual([1, 1])
  })

  test('with a mend each are listed one by one while they are few', () => {
    const few = ['A', 'B', 'C'].map((part) => shim(part, 2, { mend }))
    expect(sizes(few)).toEqual([1, 1, 1])
    expect(sizes([...few, shim('D', 2, { mend })])).toEqual([4])
  })

  test('no finding is lost or told twice', () => {
    const all = [
      shim('A', 2),
      shim('B', 3, { state: 'Clash' }),
      shim('C', 4),
      shim('D', 2, { parts: ['D', 'A'] }),
    ]
    const told = findingGroups(all).flatMap(({ worst, others }) => [worst, ...others])
    expect(new Set(told)).toEqual(new Set(all))
    expect(told).toHaveLength(all.length)
  })
})

describe('the words of a group', () => {
  const wordsOf = (findings: readonly Finding[]) =>
    findingGroups(findings).map((group) => groupWords(group, write))

  test('name the others with their numbers while they are few', () => {
    const [words] = wordsOf([shim('S1', 1.625), shim('S3', 2.25), shim('S2', 2)])
    expect(words).toMatch(/^Tight at 3 places, worst first\. The feet of S3/)
    expect(words).toMatch(/Also S2 2"; S1 1-5\/8"\.$/)
  })

  test('count them where they are many', () => {
    const [words] = wordsOf(Array.from({ length: 36 }, (_, i) => shim(`R${i}`, 2 + i / 8)))
    expect(words).toMatch(/^Tight at 36 places/)
    expect(words).toContain('The feet of R35')
    expect(words).not.toContain('R3 ')
  })
})
