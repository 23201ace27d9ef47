import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cutLists } from '../../../src/evaluate/6-cutting'
import { evaluate } from '../../../src/evaluate/evaluate'
import { membersOf } from '../../../src/evaluate/shave/members'
import { nearMissesOf, offTicks, shavenPieces } from '../../../src/evaluate/shave/nearMisses'
import { shavesOf, type Shaves } from '../../../src/evaluate/shave/shaves'
import type { Layout } from '../../../src/layout/schema'
import { setFields } from '../../../src/layout/setFields'
import type { CutList } from '../../../src/model/cutList'
import { firstPlan } from '../../../src/solvers/cutting/firstPlan'
import { fromTicks, inches, toInches } from '../../../src/units/length'
import { arbitraryBay } from '../../support/arbitraryBay'
import { bay } from '../../support/bay'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { kestrelBendNear } from '../../support/scenarios/kestrelBendNear'
import { inchesOf } from '../../support/site'

const ended = <T>(steps: Generator<undefined, T>): T => {
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}

const shavesIn = (layout: Layout): Shaves => ended(shavesOf(evaluate(layout)))

const shaved = (layout: Layout, [first]: Shaves['allowed']): Layout => {
  const edited = setFields(layout, first?.changes ?? [])
  if (!edited.ok) throw new Error(edited.sentence)
  return edited.layout
}

const boardsIn = (cuts: readonly CutList[]): number =>
  cuts.reduce((sum, { bought }) => sum + bought.reduce((all, { count }) => all + count, 0), 0)

const lumberOf = (cuts: readonly CutList[]): CutList => cuts.find(({ stock }) => stock === 'lumber-2x4')!

/*
 * Worked example of the trade notes, hand arithmetic. A 10 ft board with its last kerf is 120.125 in: it gives
 * floor(120.125 / 61.125) = 1 bearer of 61 in, so 81 bearers take 81 boards. Two come from 120.125 / 2 - 0.125 = 59.9375 in each,
 * and 81 of those take ceil(81 / 2) = 41. Off each 61 - 59.9375 = 1.0625 in; a bearer is 54 + 5 + 2 e long, so that e goes from
 * 1 in to (59.9375 - 59) / 2 = 0.46875 = 15/32 in.
 */
describe('bearers of 61 in against 59-15/16 in', () => {
  const near = kestrelBendNear().layout()
  const { bay: asBuilt } = evaluate(near)
  const bearers = asBuilt.built.map((built) => ({
    ...built,
    tubes: [],
    sticks: built.sticks.filter(({ mark }) => mark === 'GB'),
  }))
  const list = lumberOf(cutLists(bearers, near))

  test('of 10 ft boards alone they take 81, and would take 41', () => {
    expect(list.bought).toEqual([{ stockMm: inches(120), count: 81 }])
    const [miss, ...others] = nearMissesOf(list, membersOf(near, bearers))
    expect(others).toEqual([])
    expect(miss!.near.fromABoard).toBe(1)
    expect(inchesOf(fromTicks(miss!.near.targetTicks))).toBe(59.938)
    const then = firstPlan({ ...list.problem, pieces: shavenPieces(list, miss!.near) })
    expect(then.boards.reduce((sum, { count }) => sum + count, 0)).toBe(41)
  })

  test('one shave mends the sample, by what the bearers stick out past the troughs', () => {
    const found = shavesIn(near)
    expect(found.blocked).toEqual([])
    expect(found.allowed.map(({ field }) => field)).toEqual(['bearerEndMm'])
    const [shave] = found.allowed
    expect(toInches(fromTicks(offTicks(shave!.near)))).toBeCloseTo(1.0625, 6)
    expect(shave!.near.members).toMatchObject({ count: 81, marks: ['GB'] })
    expect(shave!.changes).toHaveLength(6)
    for (const { values } of shave!.changes)
      expect(toInches(Number(values['bearerEndMm']))).toBeCloseTo(15 / 32, 6)
  })

  test('and makes it the house as it should be, with what the shave said it saves', () => {
    const found = shavesIn(near)
    const after = shaved(near, found.allowed)
    expect(after.parts).toEqual(kestrelBend().layout().parts)
    const [before, then] = [evaluate(near), evaluate(after)]
    const [shave] = found.allowed
    expect(shave!.saved.boards).toBe(boardsIn(before.cuts) - boardsIn(then.cuts))
    expect(shave!.saved.boards).toBeGreaterThan(0)
    expect(shave!.saved.cents).toBe((lumberOf(before.cuts).cents ?? 0) - (lumberOf(then.cuts).cents ?? 0))
    expect(shave!.boughtThen).toEqual(lumberOf(then.cuts).bought)
  })

  test('a plan that none of the shaven bay can beat leaves nothing to save', () => {
    const known = ended(shavesOf(evaluate(near), () => 0))
    expect(known.allowed).toEqual([])
    expect(known.blocked[0]?.hindrances.every(({ kind }) => kind !== 'breaks')).toBe(true)
  })
})

describe('what stands in the way', () => {
  const row = (values = {}, racks = 3): Layout =>
    bay('40 x 60 ft')
      .row('A', [165, 100], { racks, ...values })
      .layout()

  test('a rule: sleeves of 7.65 in would be 16 a stick at 7.5, but then rails go 3.625 in in, under 4 x 0.922', () => {
    // 2 x 3.7 + 0.25 = 7.65; 120 / 7.65 = 15.7, 120 / 16 = 7.5. Eight such rows have 2 x 2 x 8 = 32 sleeves: 3 sticks, then 2.
    const eight = Array.from({ length: 8 }, (_, k) => k).reduce(
      (sketch, k) => sketch.row(`R${k}`, [63 + 102 * k, 60], { racks: 3, insertion: 3.7 }),
      bay('900 x 500 in'),
    )
    const found = shavesIn(eight.layout())
    const sleeves = found.blocked.find(({ near }) => near.members.marks.includes('SV'))
    const breaks = sleeves!.hindrances.find(({ kind, field }) => kind === 'breaks' && field === 'insertionMm')
    expect(breaks).toBeDefined()
    expect(breaks!.kind === 'breaks' && breaks!.findings[0].rule).toBe('rail-insertion-min')
    expect(
      found.allowed.filter(({ near, field }) => near.members.marks.includes('SV') && field === 'insertionMm'),
    ).toEqual([])
  })

  test('the bounds of a field: bearers that end at their troughs can only be shaved by what stands closer', () => {
    // 3 x 18.5 + 5 = 60.5, nothing past the trough; 59.9375 is 0.5625 less.
    const found = shavesIn(row({ lineSpacing: 18.5, bearerEnd: 0 }))
    const bearer = [...found.allowed, ...found.blocked].find(({ near }) => near.members.marks.includes('GB'))
    expect(bearer).toBeDefined()
    expect(found.allowed.some(({ field }) => field === 'bearerEndMm')).toBe(false)
  })

  test('a bay without racks has nothing to shave', () => {
    expect(shavesIn(bay('40 x 60 ft').layout())).toEqual({ allowed: [], blocked: [], tolerances: [] })
  })
})

test('whatever the bay, a shave that is offered buys no more boards, costs less, and finds nothing new', () => {
  let tried = 0
  fc.assert(
    fc.property(arbitraryBay, fc.double({ min: 0, max: 1.2, noNaN: true }), (drawn, endIn) => {
      const layout: Layout = {
        ...drawn,
        parts: drawn.parts.map((part) =>
          part.kind === 'rack-row' ? { ...part, bearerEndMm: inches(Math.round(endIn * 64) / 64) } : part,
        ),
      }
      const before = evaluate(layout)
      for (const { changes, near } of ended(shavesOf(before)).allowed) {
        tried += 1
        const edited = setFields(layout, changes)
        if (!edited.ok) throw new Error(edited.sentence)
        const after = evaluate(edited.layout)
        expect(boardsIn(after.cuts)).toBeLessThanOrEqual(boardsIn(before.cuts))
        const cost = (cuts: readonly CutList[]) => cuts.reduce((sum, list) => sum + (list.cents ?? 0), 0)
        expect(cost(after.cuts)).toBeLessThan(cost(before.cuts))
        const known = new Set(before.findings.map(({ key }) => key))
        expect(after.findings.filter(({ key }) => !known.has(key))).toEqual([])
        // All of its pieces are short enough.
        const longest = after.bay.built
          .filter(({ part }) => near.members.parts.includes(part))
          .flatMap(({ sticks }) => sticks.filter(({ mark }) => near.members.marks.includes(mark)))
          .filter(({ lengthMm }) => inchesOf(lengthMm) === inchesOf(fromTicks(near.members.lengthTicks)))
        expect(longest).toEqual([])
      }
    }),
    { seed: 20_261_126, numRuns: 60 },
  )
  expect(tried).toBeGreaterThan(5)
}, 120_000)

/*
 * Hand arithmetic: bars of 3 x 18 + 2 x 3.25 = 60.5 in come one from a 10 ft stick, parted without a kerf; two of 60 in from one.
 * So 0.5 in off, the bar 3 in past its outer tower: eight bars are 4 sticks and not 8.
 */
test('hanger bars are shaved by what they reach past the outer tower', () => {
  const one = bay('40 x 40 ft').row('A', [165, 100], { racks: 1, barEnd: 3.25 }).layout()
  const bars = shavesIn(one).allowed.find(({ near }) => near.members.marks.includes('HB'))
  expect(bars).toMatchObject({ field: 'barEndMm', saved: { boards: 4 } })
  expect(toInches(Number(bars?.changes[0]?.values['barEndMm']))).toBeCloseTo(3, 6)
})
