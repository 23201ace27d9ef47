import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Evaluation } from '../../../src/evaluate/evaluation'
import type { Layout } from '../../../src/layout/schema'
import type { Stick } from '../../../src/model/built'
import { baseKinds, rackKinds } from '../../../src/sheets/assembly/kinds'
import type { Assembled } from '../../../src/sheets/assembly/members'
import { toTicks } from '../../../src/units/length'
import { arbitraryBay } from '../../support/arbitraryBay'
import { bay } from '../../support/bay'
import { scenarios } from '../../support/scenarios'

const assembled = (now: Evaluation): readonly Assembled[] =>
  [...rackKinds(now), ...baseKinds(now)].flatMap(({ first, all }) => all.map((): Assembled => first))

const pieceOf = ({ mark, stock, lengthMm }: Stick) => `${mark} ${stock} ${toTicks(lengthMm)}`

const tally = (keys: readonly string[]): Record<string, number> => {
  const counts: Record<string, number> = {}
  for (const key of keys) counts[key] = (counts[key] ?? 0) + 1
  return counts
}

/** What the cards make the crew build: the first of each kind as often as the kind has racks. */
const onCards = (now: Evaluation) =>
  tally(assembled(now).flatMap(({ members }) => members.map(({ stick }) => pieceOf(stick))))

const inBay = ({ bay: { built } }: Evaluation) =>
  tally(
    built
      .filter(({ rack }) => rack)
      .flatMap(({ sticks }) => sticks.filter(({ mark }) => mark !== 'GT').map(pieceOf)),
  )

const FIXED = [
  'screw',
  'sleeve-screw',
  'end-cap-1/2',
  'end-cap-3/4',
  'end-cap-1',
  'end-cap-1-1/4',
  'foot-plate',
]

const fixedOnCards = (now: Evaluation, item: string): number =>
  assembled(now)
    .flatMap(({ fixings }) => [...fixings.values()])
    .reduce((sum, items) => sum + (items.get(item) ?? 0), 0)

/** The take-off counts another way: by what parts bring. */
const takenOff = ({ counts }: Evaluation, item: string): number =>
  counts.find((line) => line.item === item)?.count ?? 0

const agrees = (layout: Layout): void => {
  const now = evaluate(layout)
  expect(onCards(now)).toEqual(inBay(now))
  for (const item of FIXED) expect([item, fixedOnCards(now, item)]).toEqual([item, takenOff(now, item)])
}

describe('pieces and fixings of all cards are those of the bay, to the last one', () => {
  test.each(Object.entries(scenarios))('in %s', (_, layout) => agrees(layout()))

  test('in any bay', () => {
    fc.assert(fc.property(arbitraryBay, agrees), { numRuns: 60, seed: 20270501 })
  })

  test('of low racks on short runners, in J3', () => {
    agrees(
      bay('40 x 60 ft')
        .row('Low', [200, 60], { racks: 3, joint: 'J3', base: 'short-runners', footPlate: 0, riser: 66 })
        .layout(),
    )
  })
})

describe('racks of one kind', () => {
  // Three rows of three racks that fall south and three of two that fall north: worked example of the trade notes. A row of
  // three has a high end, a middle and a low end; the runners under a row of two are of other lengths, not its racks.
  test('stand apart as high end, middle and low end, whatever the row', () => {
    const kinds = rackKinds(evaluate(scenarios['kestrel-bend-house-2']!()))
    expect(kinds.map(({ all }) => all.length)).toEqual([6, 3, 6])
    expect(kinds.map(({ first }) => [first.isHighEnd, first.isLowEnd])).toEqual([
      [true, false],
      [false, false],
      [false, true],
    ])
  })

  test('a row of 20 racks has few kinds, though its runners end where boards do', () => {
    const now = evaluate(bay('40 x 300 ft').row('Long', [200, 60], { racks: 20 }).layout())
    expect(rackKinds(now).length).toBeLessThanOrEqual(6)
    expect(baseKinds(now)).toHaveLength(1)
  })

  test('a row turned about on the floor is the same row to its builders', () => {
    const now = evaluate(
      bay('60 x 60 ft')
        .row('A', [100, 100], { racks: 2 })
        .row('B', [600, 300], { racks: 2, heading: 180 })
        .row('C', [300, 600], { racks: 2, heading: 270, fallsTo: 'start' })
        .layout(),
    )
    expect(rackKinds(now).map(({ all }) => all.length)).toEqual([3, 3])
    expect(baseKinds(now).map(({ all }) => all.length)).toEqual([3])
  })
})

describe('a row of three default racks', () => {
  const now = evaluate(bay('40 x 60 ft').row('N1', [200, 60], { racks: 3 }).layout())
  const count = (mark: string) =>
    rackKinds(now).map(({ first }) => first.members.filter(({ stick }) => stick.mark.startsWith(mark)).length)

  // 13 riser pairs: 4, 4 and 5, since a pair that two racks share goes up with the lower one. Worked example of the trade notes.
  test('has 26 risers, 24 bars, 4 sleeves and 6 rails, each in the rack that it is put up with', () => {
    expect(count('RS')).toEqual([8, 8, 10])
    expect(count('BX')).toEqual([4, 4, 5])
    expect(count('HB')).toEqual([8, 8, 8])
    expect(count('SV')).toEqual([0, 2, 2])
    expect(count('RL')).toEqual([2, 2, 2])
    expect(count('SB')).toEqual([2, 0, 2])
    expect(count('XB')).toEqual([1, 1, 2])
  })
})
