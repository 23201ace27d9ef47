import { describe, expect, test } from 'vitest'
import type { Built, Tube } from '../../../src/model/built'
import { toInches } from '../../../src/units/length'
import { build, countOf, joineryOf, row } from '../../support/rackRows'

const tubes = (built: Built, role: Tube['role']): readonly Tube[] =>
  built.tubes.filter((tube) => tube.role === role)

const inlet = (built: Built) => built.mouths.find(({ role }) => role === 'zone-inlet')!

describe('laterals', () => {
  const built = build(row())

  test('two, each between the two lines that it feeds', () => {
    // Worked example of the trade notes: v = -18 and 18.
    const across = tubes(built, 'lateral').map(({ path }) => toInches(path[0]!.x) - 100)
    expect(across).toEqual([expect.closeTo(-18, 6), expect.closeTo(18, 6)])
  })

  test('one for each line at most', () => {
    expect(tubes(build(row({ lines: 2, laterals: 4 })), 'lateral')).toHaveLength(2)
  })

  test('with a hundredth of slack and a foot at each end', () => {
    // 360 x 1.01 + 24.
    expect(toInches(tubes(built, 'lateral')[0]!.lengthMm)).toBeCloseTo(387.6, 6)
  })
})

describe('a zone', () => {
  test('takes its water in where the row says', () => {
    const at = (values: Parameters<typeof row>[0]) => toInches(inlet(build(row(values))).at.y) - 50
    expect(at({ inlet: 'start', fallsTo: 'end' })).toBeCloseTo(0, 6)
    expect(at({ inlet: 'start', fallsTo: 'start' })).toBeCloseTo(0, 6)
    expect(at({ inlet: 'end', fallsTo: 'end' })).toBeCloseTo(360, 6)
    expect(at({ inlet: 'end', fallsTo: 'start' })).toBeCloseTo(360, 6)
  })

  // Take-off rules of a straight feed, common practice, no source: elbows at foot, head and header end.
  test('of two laterals has one tee and three elbows, of three two tees', () => {
    const counts = (laterals: number) => {
      const built = build(row({ laterals }))
      return ['tee', 'elbow', 'reducing-coupling', 'lateral-flush-cap', 'sight-tube-tee'].map((noun) =>
        joineryOf(built, noun),
      )
    }
    expect(counts(1)).toEqual([0, 3, 1, 1, 1])
    expect(counts(2)).toEqual([1, 3, 2, 2, 2])
    expect(counts(3)).toEqual([2, 3, 3, 3, 3])
  })

  test('has one set of valves', () => {
    const built = build(row())
    const set = ['union-pe-1', 'ball-valve-pe-1', 'trim-valve-pe-1']
    expect(set.map((item) => countOf(built, item))).toEqual([1, 1, 1])
  })
})

describe('microtubes', () => {
  test('are all cut alike, from the barb above to the top of the tower', () => {
    const built = build(row())
    const lengths = new Set(tubes(built, 'microtube').map(({ lengthMm }) => toInches(lengthMm)))
    expect(lengths).toEqual(new Set([36]))
    expect(new Set(tubes(built, 'microtube').map(({ path }) => path[0]!.z))).toEqual(
      new Set([tubes(built, 'lateral')[0]!.path[0]!.z]),
    )
  })

  test('are longer where one lateral feeds lines further away than they reach', () => {
    const far = build(row({ laterals: 1, lines: 4, lineSpacingMm: 762 }))
    expect(Math.max(...tubes(far, 'microtube').map(({ lengthMm }) => toInches(lengthMm)))).toBeGreaterThan(45)
  })
})

test('a tower that is taken out leaves its number to no other', () => {
  const heads = build(row({ takenOut: [5] })).mouths.filter(({ role }) => role === 'tower-head')
  const second = heads.filter(({ station }) => station === 2)
  expect(second.map(({ line }) => line)).toEqual([1, 3, 4])
})
