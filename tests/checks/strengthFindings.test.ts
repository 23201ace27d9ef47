import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { strengthOf } from '../../src/evaluate/5-loads'
import { evaluate } from '../../src/evaluate/evaluate'
import type { Layout } from '../../src/layout/schema'
import { type Finding, rankOf } from '../../src/model/finding'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { rackRowSchema } from '../../src/parts/rack-row/schema'
import { bay } from '../support/bay'
import { scenarios } from '../support/scenarios'

const worst = (findings: readonly Finding[]): number => Math.max(0, ...findings.map(rankOf))

/** A row's own words are the worst of what is found of it, so that plan, list and warnings never differ. */
const expectAlike = (layout: Layout): void => {
  const { bay: its, findings } = evaluate(layout)
  for (const [part, { state, stance }] of strengthOf(its)) {
    // Whether a person can climb is no matter of what hangs on the row.
    const of = findings.filter(({ parts, rule }) => parts.includes(part) && rule !== 'climb-guard')
    const about = (subject: Finding['subject']) => of.filter((finding) => finding.subject === subject)
    expect(worst(about('strength')), part).toBe(rankOf({ subject: 'strength', state }))
    expect(worst(about('stance')), part).toBe(rankOf({ subject: 'stance', state: stance.state }))
  }
}

describe('what is found of a row is what it says of itself', () => {
  test.each(Object.entries(scenarios))('in %s', (_, build) => expectAlike(build()))

  // Nothing grows: its two faces are one, and say nothing of where its right is.
  test('in a row of one bare line', () => {
    const layout = bay('40 x 60 ft').settings({ growth: 0 }).row('A', [165, 100], { lines: 1 }).layout()
    const { rails, at } = strengthOf(evaluate(layout).bay).get('rack-row-1')!
    expect(rails.map(({ v }) => Math.sign(v))).toEqual([-1, 1])
    expect([at.x, at.y].every(Number.isFinite)).toBe(true)
    expectAlike(layout)
  })

  const values: fc.Arbitrary<Partial<RackRow>> = fc.record({
    racks: fc.integer({ min: 1, max: 3 }),
    midPairs: fc.integer({ min: 0, max: 4 }),
    lines: fc.integer({ min: 1, max: 4 }),
    bracing: fc.constantFrom('both', 'along', 'across', 'none'),
    hold: fc.constantFrom('free', 'anchored', 'tied'),
    base: fc.constantFrom('long-runners', 'short-runners'),
    carriedBy: fc.constantFrom('floor', 'floor', 'floor', 'house'),
    joint: fc.constantFrom('J1', 'J2', 'J3', 'J4', 'J5'),
    rail: fc.constantFrom('1/2', '3/4', '1'),
    bar: fc.constantFrom('1/2', '3/4', '1'),
  })

  test('in rows of any make', () => {
    const { parts, ...rest } = bay('40 x 60 ft').row('A', [165, 100]).layout()
    fc.assert(
      fc.property(values, (given) => {
        const row = rackRowSchema.parse({ ...parts[0], ...given })
        expectAlike({ ...rest, parts: [row] })
      }),
      { seed: 20_261_126, numRuns: 150 },
    )
  }, 60_000)
})
