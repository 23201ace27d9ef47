import fc from 'fast-check'
import { expect, test } from 'vitest'
import { stockKey, stockOf } from '../../src/catalogue/stock'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { withProof } from '../../src/evaluate/withProof'
import type { Bench } from '../../src/layout/bench'
import type { Layout } from '../../src/layout/schema'
import type { Board, CutLine, CutList } from '../../src/model/cutList'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import { prove } from '../../src/solvers/cutting/prove/prove'
import { inches, toTicks } from '../../src/units/length'
import { arbitraryBay } from '../support/arbitraryBay'
import { lumberQuote } from '../support/quotes'

/*
 * The boards that a person is shown, with whatever a proof made of them, gone over with a tape: it shares no code with the cutter.
 * Kerf, trim, what boards measure and what they cost are taken from what was put in, not from the problem that was made of it.
 */

const SEED = 20_261_127

/** Some dozen bays with a search of every list. */
const SLOW = 240_000

/** Enough to find better plans of some lists, not enough to prove all. */
const BUDGET = 2e6

const sum = <T>(things: readonly T[], of: (thing: T) => number): number =>
  things.reduce((total, thing) => total + of(thing), 0)

const LUMBER = 'lumber-2x4'

/** A price for every length of lumber on offer, which need not go with the length. */
const quotesOf = ({ settings }: Layout, prices: readonly number[]): Layout['counter']['quotes'] =>
  settings.lumberMm.map((lengthMm, index) =>
    lumberQuote(stockKey(LUMBER, lengthMm), prices[index % prices.length]!),
  )

/** Long boards, leftovers from a hand's breadth up, and pieces cut of lines of the bay, some of them too many or a little off. */
const benchFor = (lists: readonly CutList[]): fc.Arbitrary<Bench> => {
  const lines = lists.flatMap(({ stock, pieces }) => pieces.map((line) => ({ stock, ...line })))
  if (lines.length === 0) return fc.constant({ measured: [], leftovers: [], cut: [], sawn: [] })
  const stock = fc.constantFrom(...lines.map((line) => line.stock))
  const over = fc.record({ stock, in32nds: fc.integer({ min: -4, max: 20 }) })
  const left = fc.record({
    stock,
    in8ths: fc.integer({ min: 1, max: 1100 }),
    count: fc.integer({ min: 1, max: 6 }),
  })
  const done = fc.record({
    line: fc.constantFrom(...lines),
    count: fc.integer({ min: 1, max: 40 }),
    in32nds: fc.integer({ min: -3, max: 3 }),
  })
  return fc.record({
    measured: fc.uniqueArray(over, { selector: (each) => each.stock, maxLength: 3 }).map((all) =>
      all.map((each) => ({
        stock: each.stock,
        overMm: inches(each.in32nds / 32),
        thickMm: null,
        wideMm: null,
        odMm: null,
        wallMm: null,
      })),
    ),
    leftovers: fc
      .array(left, { maxLength: 5 })
      .map((all) =>
        all.map(({ stock: of, in8ths, count }) => ({ stock: of, lengthMm: inches(in8ths / 8), count })),
      ),
    cut: fc.array(done, { maxLength: 5 }).map((all) =>
      all.map(({ line, count, in32nds }) => ({
        stock: line.stock,
        lengthMm: line.lengthMm + inches(in32nds / 32),
        count,
        marks: [...line.marks],
      })),
    ),
    sawn: fc.constant([]),
  })
}

const benched: fc.Arbitrary<Layout> = arbitraryBay.chain((bay) =>
  fc
    .record({
      bench: benchFor(beforeChecks(bay).cuts),
      kerfIn16ths: fc.integer({ min: 1, max: 3 }),
      trimIn8ths: fc.constantFrom(0, 0, 4),
      prices: fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 4 }),
    })
    .map(({ bench, kerfIn16ths, trimIn8ths, prices }): Layout => ({
      ...bay,
      bench,
      settings: { ...bay.settings, kerfMm: inches(kerfIn16ths / 16), trimMm: inches(trimIn8ths / 8) },
      counter: { ...bay.counter, quotes: quotesOf(bay, prices) },
    })),
)

/** Ticks that a saw leaves of a board, cut after cut; undefined where the board runs out. */
const restOf = ({ measuredMm, pieces }: Board, list: CutList, { settings }: Layout): number | undefined => {
  const kerf = stockOf(list.stock).kerf === 'saw' ? toTicks(settings.kerfMm) : 0
  const trim = list.stock === LUMBER ? toTicks(settings.trimMm) : 0
  const board = toTicks(measuredMm)
  const [first] = pieces
  if (pieces.length === 1 && first?.count === 1 && toTicks(first.lengthMm) === board) return 0
  let at = trim > 0 ? trim + kerf : 0
  for (const { lengthMm, count } of pieces)
    for (let i = 0; i < count; i += 1) {
      const end = at + toTicks(lengthMm)
      if (end > board) return undefined
      at = end + kerf
    }
  return Math.max(0, board - at)
}

const overOf = (stock: string, { bench }: Layout): number =>
  bench.measured.find((each) => each.stock === stock)?.overMm ?? 0

const byMarks = (things: readonly { readonly marks: readonly string[]; readonly count: number }[]) => {
  const counts = new Map<string, number>()
  for (const { marks, count } of things) counts.set(marks.join(), count + (counts.get(marks.join()) ?? 0))
  return new Map([...counts].sort(([a], [b]) => (a < b ? -1 : 1)))
}

/** Every piece that is wanted is on a board, cut already, or told that it can't be made. */
const expectEachOnce = (list: CutList): void => {
  const onBoards = list.boards.flatMap(({ count, pieces }) =>
    pieces.map((piece) => ({ ...piece, count: piece.count * count })),
  )
  const told: readonly CutLine[] = [...list.tooLong, ...list.ranOut]
  expect(byMarks([...onBoards, ...told])).toEqual(byMarks(list.pieces))
  expect(byMarks(onBoards)).toEqual(byMarks(list.lines))
}

/** What the yard's boards are called and what leftovers there are, and that no more are used. */
const expectStock = (list: CutList, layout: Layout): void => {
  for (const { stockMm, measuredMm, isLeftover } of list.boards)
    expect(toTicks(measuredMm)).toBe(toTicks(stockMm + (isLeftover ? 0 : overOf(list.stock, layout))))
  for (const { stockMm, count } of list.leftovers) {
    const onHand = layout.bench.leftovers.filter(
      ({ stock, lengthMm }) => stock === list.stock && toTicks(lengthMm) === toTicks(stockMm),
    )
    expect(count).toBeLessThanOrEqual(sum(onHand, (each) => each.count))
  }
  expect(sum(list.bought, ({ count }) => count) + sum(list.leftovers, ({ count }) => count)).toBe(
    sum(list.boards, ({ count }) => count),
  )
}

/** Lumber has a quote for each length: its cents are the boards times their quotes. */
const expectCents = (list: CutList, { counter }: Layout): void => {
  if (list.stock !== LUMBER) return
  const cents = sum(list.boards, ({ stockMm, count, isLeftover }) =>
    isLeftover ? 0 : count * counter.quotes.find(({ key }) => key === stockKey(LUMBER, stockMm))!.cents!,
  )
  expect([list.cents, list.cost, list.costIs]).toEqual([cents, cents, 'cents'])
}

const expectSound = (list: CutList, layout: Layout): void => {
  for (const board of list.boards) expect(restOf(board, list, layout)).toBe(toTicks(board.offcutMm))
  expectEachOnce(list)
  expectStock(list, layout)
  expectCents(list, layout)
  expect(list.bound).toBeLessThanOrEqual(list.cost)
}

/** Pieces wanted by the bay, straight from its sticks, of stock that no tube is of. */
const drawnOf = (layout: Layout, stock: string): number =>
  sum(beforeChecks(layout).bay.built, ({ sticks }) => sticks.filter((one) => one.stock === stock).length)

test(
  'boards that are shown can be sawn, make what is wanted, and cost what they say, before a proof and after',
  async () => {
    await fc.assert(
      fc.asyncProperty(benched, async (layout) => {
        for (const list of beforeChecks(layout).cuts) {
          expectSound(list, layout)
          const proof = await prove(list.problem, firstPlan(list.problem), { budget: BUDGET })
          const shown = withProof(list, proof)
          expectSound(shown, layout)
          expect(sum([...shown.tooLong, ...shown.ranOut], ({ count }) => count)).toBeLessThanOrEqual(
            sum([...list.tooLong, ...list.ranOut], ({ count }) => count),
          )
          if (list.stock === LUMBER)
            expect(sum([...shown.pieces, ...shown.cutAlready], ({ count }) => count)).toBe(
              drawnOf(layout, LUMBER),
            )
        }
      }),
      { seed: SEED, numRuns: 40 },
    )
  },
  SLOW,
)
