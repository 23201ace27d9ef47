import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cutLists } from '../../src/evaluate/6-cutting'
import type { CuttingGiven } from '../../src/evaluate/6-cutting'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { withProof } from '../../src/evaluate/withProof'
import type { Bench } from '../../src/layout/bench'
import { movePartsBy } from '../../src/layout/edits'
import type { Layout } from '../../src/layout/schema'
import type { Built, CutRule, Stick } from '../../src/model/built'
import type { CutLine, CutList } from '../../src/model/cutList'
import type { PriceRow } from '../../src/model/priceRow'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import { inches, toInches, toTicks } from '../../src/units/length'
import { arbitraryBay } from '../support/arbitraryBay'
import { lumberQuote } from '../support/quotes'
import { scenarios } from '../support/scenarios'

const SEED = 20_261_126

/** Hundreds of bays are evaluated in one test. */
const SLOW = 120_000

const given = (bench: Partial<Bench> = {}, quotes: readonly PriceRow[] = []): CuttingGiven => ({
  settings: { kerfMm: inches(1 / 8), trimMm: 0, lumberMm: [inches(120), inches(144)] },
  bench: { measured: [], leftovers: [], cut: [], sawn: [], ...bench },
  counter: { book: [], quotes },
})

const stick = (lengthIn: number, cut: CutRule = { kind: 'exact' }, minusIn = 0): Stick => ({
  mark: 'BX',
  stock: 'lumber-2x4',
  lengthMm: inches(lengthIn),
  from: { x: 0, y: 0, z: 0 },
  to: { x: inches(lengthIn), y: 0, z: 0 },
  widthMm: inches(1.5),
  heightMm: inches(3.5),
  cut,
  minusMm: inches(minusIn),
  holes: [],
  rack: 0,
})

const many = (count: number, one: Stick): Stick[] => Array.from({ length: count }, () => one)

const part = (sticks: readonly Stick[], tubes: Built['tubes'] = []): Built => ({
  part: 'rack-row-1',
  zFrom: 'rack-datum',
  sticks,
  tubes,
  fittings: [],
  bodies: [],
  mouths: [],
  supports: [],
})

const lumberOf = (sticks: readonly Stick[], from: CuttingGiven): CutList => cutLists([part(sticks)], from)[0]!

const inchCounts = (counts: CutList['bought']) =>
  counts.map(({ stockMm, count }) => [count, Math.round(toInches(stockMm) * 16) / 16])

const lineCounts = (lines: readonly CutLine[]) =>
  lines.map(({ count, lengthMm }) => [count, Math.round(toInches(lengthMm) * 16) / 16])

const cutPiece = (count: number, lengthIn: number) => ({
  stock: 'lumber-2x4',
  lengthMm: inches(lengthIn),
  count,
  marks: ['BX'],
})

describe('pieces that are cut already', () => {
  test('are not planned again, and boards that are sawn stand beside the plan', () => {
    const list = lumberOf(
      many(10, stick(43.5)),
      given({ cut: [cutPiece(4, 43.5)], sawn: [{ stock: 'lumber-2x4', stockMm: inches(144), count: 2 }] }),
    )
    expect([lineCounts(list.lines), lineCounts(list.cutAlready)]).toEqual([[[6, 43.5]], [[4, 43.5]]])
    // Three 43-1/2 from a 12 ft board, hand arithmetic: six are two boards.
    expect([inchCounts(list.bought), inchCounts(list.sawn)]).toEqual([[[2, 144]], [[2, 144]]])
  })

  test('count no further than the bay wants, and not for another stock or length', () => {
    const list = lumberOf(
      many(3, stick(43.5)),
      given({ cut: [cutPiece(5, 43.5), cutPiece(2, 44), { ...cutPiece(2, 43.5), stock: 'conduit-3/4' }] }),
    )
    expect([list.lines, lineCounts(list.cutAlready), list.bought, list.cost]).toEqual([
      [],
      [[3, 43.5]],
      [],
      0,
    ])
    expect(list.standing.kind).toBe('proven')
  })

  test('do for a piece that may be so much shorter, the nearest line first', () => {
    const list = lumberOf(
      [...many(2, stick(60, { kind: 'exact' }, 0.5)), ...many(2, stick(59.75))],
      given({ cut: [cutPiece(3, 59.75)] }),
    )
    expect(lineCounts(list.cutAlready)).toEqual([
      [1, 60],
      [2, 59.75],
    ])
  })

  test('the same problem has the same key, whatever is done already; the list is another', () => {
    const fresh = lumberOf(many(6, stick(43.5)), given())
    const part4 = lumberOf(many(10, stick(43.5)), given({ cut: [cutPiece(4, 43.5)] }))
    expect([part4.key === fresh.key, part4 === fresh]).toEqual([true, false])
  })
})

describe('stock as it measures', () => {
  const over = (stock: string, overIn: number) => [
    { stock, overMm: inches(overIn), thickMm: null, wideMm: null, odMm: null, wallMm: null },
  ]

  test('two 72 in pieces come from a 12 ft board that is 1/4 in over, which is still bought as 12 ft', () => {
    const two = many(2, stick(72))
    expect(inchCounts(lumberOf(two, given()).bought)).toEqual([[2, 120]])
    const list = lumberOf(two, given({ measured: over('lumber-2x4', 0.25) }))
    expect(inchCounts(list.bought)).toEqual([[1, 144]])
    const [board] = list.boards
    // 144-1/4 - 2 x 72 - 1/8: the kerf of the one cut leaves 1/8, which the second cut eats.
    expect([toInches(board!.stockMm), toInches(board!.measuredMm), board!.offcutMm]).toEqual([144, 144.25, 0])
  })

  test('a board that is short no longer makes its halves; they are cut like any other piece', () => {
    const halves = many(2, stick(71.9375, { kind: 'equal-parts', parts: 2, stockMm: inches(144) }))
    expect(inchCounts(lumberOf(halves, given()).bought)).toEqual([[1, 144]])
    const short = lumberOf(halves, given({ measured: over('lumber-2x4', -0.5) }))
    expect(short.bought.reduce((sum, { count }) => sum + count, 0)).toBe(2)
  })

  test('a run of drain is jointed where its pipes really end', () => {
    const place = (x: number) => ({ x: inches(x), y: 0, z: 0 })
    const tube = {
      role: 'drain',
      stock: 'drain-4in',
      path: [place(0), place(250)],
      lengthMm: inches(250),
    } as const
    const [named] = cutLists([part([], [tube])], given())
    expect([lineCounts(named!.lines), named!.joints]).toEqual([
      [
        [2, 120],
        [1, 10],
      ],
      2,
    ])
    const [real] = cutLists([part([], [tube])], given({ measured: over('drain-4in', 1) }))
    expect([lineCounts(real!.lines), real!.joints]).toEqual([
      [
        [2, 121],
        [1, 8],
      ],
      2,
    ])
  })
})

describe('leftovers', () => {
  const leftover = (count: number, lengthIn: number) => ({
    stock: 'lumber-2x4',
    lengthMm: inches(lengthIn),
    count,
  })

  test('cost nothing and are used first, as many as there are', () => {
    const list = lumberOf(many(3, stick(50)), given({ leftovers: [leftover(1, 60)] }))
    // One from the leftover, two from a 10 ft board.
    expect([inchCounts(list.leftovers), inchCounts(list.bought)]).toEqual([[[1, 60]], [[1, 120]]])
    expect(list.cents).toBe(list.stocks.find(({ stockMm }) => toInches(stockMm) === 120)?.cents)
    expect(list.boards.map(({ isLeftover, count }) => [isLeftover, count])).toEqual([
      [false, 1],
      [true, 1],
    ])
  })

  test('of one length are one stock, and those of another material are left alone', () => {
    const list = lumberOf(
      many(2, stick(50)),
      given({ leftovers: [leftover(1, 60), leftover(1, 60), { ...leftover(9, 55), stock: 'lumber-2x6' }] }),
    )
    expect([inchCounts(list.leftovers), list.bought, list.cents]).toEqual([[[2, 60]], [], 0])
  })
})

describe('prices', () => {
  test('a longer board that costs less is bought for a shorter piece', () => {
    const one = [stick(110)]
    expect(inchCounts(lumberOf(one, given()).bought)).toEqual([[1, 120]])
    const list = lumberOf(
      one,
      given({}, [lumberQuote('lumber-2x4@10ft', 900), lumberQuote('lumber-2x4@12ft', 700)]),
    )
    expect([inchCounts(list.bought), list.cents, list.cost, list.costIs]).toEqual([
      [[1, 144]],
      700,
      700,
      'cents',
    ])
    expect(list.stocks.map(({ isPlaceholder }) => isPlaceholder)).toEqual([false, false])
  })

  test('where one length has no price, plans are weighed by length, and only what has a price adds up', () => {
    const blank = [lumberQuote('lumber-2x4@10ft', 900), lumberQuote('lumber-2x4@12ft', undefined)]
    const short = lumberOf([stick(110)], given({}, blank))
    expect([inchCounts(short.bought), short.cents, short.costIs]).toEqual([[[1, 120]], 900, 'ticks'])
    const long = lumberOf([stick(130)], given({}, blank))
    expect([inchCounts(long.bought), long.cents]).toEqual([[[1, 144]], undefined])
  })
})

describe('a proof', () => {
  const list = lumberOf([...many(7, stick(43.5)), ...many(5, stick(59.9375))], given())
  const plan = firstPlan(list.problem)
  const proof = (bound: number, cost = false) => ({
    plan,
    bound,
    proven: { cost, boards: false, waste: false },
  })

  test('says how near the plan is, by the better of two bounds', () => {
    expect(withProof(list, undefined)).toBe(list)
    expect(withProof(list, proof(list.cost, true)).standing).toEqual({ kind: 'proven' })
    expect(withProof(list, proof(list.cost)).standing).toEqual({ kind: 'proven' })
    expect(withProof(list, proof(0)).bound).toBe(list.bound)
  })

  test('the same list and proof are the same object, with the same boards as the plan', () => {
    const known = proof(0)
    expect(withProof(list, known)).toBe(withProof(list, known))
    expect(withProof(list, known).boards).toEqual(list.boards)
  })
})

/** Lines by length, for sums. */
const countByTicks = (lines: readonly CutLine[]): Map<number, number> => {
  const counts = new Map<number, number>()
  for (const { lengthMm, count } of lines)
    counts.set(toTicks(lengthMm), count + (counts.get(toTicks(lengthMm)) ?? 0))
  return counts
}

const piecesOnBoards = (list: CutList): number =>
  list.boards.reduce(
    (sum, { count, pieces }) => sum + count * pieces.reduce((n, piece) => n + piece.count, 0),
    0,
  )

const sumCounts = (lines: readonly { readonly count: number }[]): number =>
  lines.reduce((sum, { count }) => sum + count, 0)

/** What a list must be, whatever it is of. */
const expectSound = (list: CutList): void => {
  expect(piecesOnBoards(list)).toBe(sumCounts(list.lines))
  expect(list.cost).toBeGreaterThanOrEqual(list.bound)
  for (const { measuredMm, pieces, offcutMm } of list.boards) {
    const taken = pieces.reduce((sum, { lengthMm, count }) => sum + lengthMm * count, 0)
    expect(toTicks(taken + offcutMm)).toBeLessThanOrEqual(toTicks(measuredMm))
  }
}

/** Some of what a bay wants is cut, some of its stock lies about, and boards are not as long as their names. */
const benchFor = (lists: readonly CutList[]): fc.Arbitrary<Bench> => {
  const lines = lists.flatMap(({ stock, pieces }) => pieces.map((line) => ({ stock, ...line })))
  const stocks = lists.map(({ stock }) => stock)
  if (lines.length === 0) return fc.constant({ measured: [], leftovers: [], cut: [], sawn: [] })
  return fc.record({
    measured: fc.uniqueArray(
      fc.tuple(fc.constantFrom(...stocks), fc.integer({ min: 0, max: 8 })).map(([stock, in16ths]) => ({
        stock,
        overMm: inches(in16ths / 16),
        thickMm: null,
        wideMm: null,
        odMm: null,
        wallMm: null,
      })),
      { selector: ({ stock }) => stock, maxLength: 2 },
    ),
    leftovers: fc.array(
      fc
        .tuple(fc.constantFrom(...stocks), fc.integer({ min: 16, max: 100 }), fc.integer({ min: 1, max: 9 }))
        .map(([stock, lengthIn, count]) => ({ stock, lengthMm: inches(lengthIn), count })),
      { maxLength: 4 },
    ),
    cut: fc.array(
      fc
        .tuple(fc.constantFrom(...lines), fc.integer({ min: 1, max: 30 }), fc.integer({ min: -2, max: 2 }))
        .map(([{ stock, lengthMm, marks }, count, in16ths]) => ({
          stock,
          lengthMm: lengthMm + inches(in16ths / 16),
          count,
          marks: [...marks],
        })),
      { maxLength: 4 },
    ),
    sawn: fc.constant([]),
  })
}

/** Pieces of straight stock that the parts of a bay have, counted from the sticks themselves. */
const drawnSticks = (layout: Layout): Map<string, number> => {
  const counts = new Map<string, number>()
  const { bay } = beforeChecks(layout)
  for (const { sticks } of bay.built)
    for (const { stock, lengthMm } of sticks) {
      const key = `${stock} ${toTicks(lengthMm)}`
      counts.set(key, 1 + (counts.get(key) ?? 0))
    }
  return counts
}

const listedSticks = (lists: readonly CutList[], stocks: ReadonlySet<string>): Map<string, number> => {
  const counts = new Map<string, number>()
  for (const { stock, lines, cutAlready, tooLong, ranOut } of lists.filter((list) => stocks.has(list.stock)))
    for (const [ticks, count] of countByTicks([...lines, ...cutAlready, ...tooLong, ...ranOut]))
      counts.set(`${stock} ${ticks}`, count)
  return counts
}

/** Stock that no tube is of, so that its sticks are all there is. */
const STICK_STOCK = new Set(['lumber-2x4', 'conduit-3/4', 'conduit-1', 'gutter-5in'])

describe('whatever stands in a bay and lies on its bench', () => {
  test(
    'pieces drawn are pieces cut, cut already and unmade; no plan costs less than its bound',
    () => {
      const benched = arbitraryBay.chain((layout) =>
        benchFor(beforeChecks(layout).cuts).map((bench): Layout => ({ ...layout, bench })),
      )
      fc.assert(
        fc.property(benched, (layout) => {
          const { cuts } = beforeChecks(layout)
          cuts.forEach(expectSound)
          const drawn = [...drawnSticks(layout)].filter(([key]) => STICK_STOCK.has(key.split(' ')[0]!))
          expect(new Map(drawn)).toEqual(listedSticks(cuts, STICK_STOCK))
        }),
        { seed: SEED, numRuns: 150 },
      )
    },
    SLOW,
  )

  test(
    'a bench changes no piece that the bay wants, only whether it is cut',
    () => {
      const pairs = arbitraryBay.chain((layout) =>
        fc.tuple(fc.constant(layout), benchFor(beforeChecks(layout).cuts)),
      )
      fc.assert(
        fc.property(pairs, ([layout, bench]) => {
          const wanted = ({ lines, cutAlready, tooLong, ranOut }: CutList) =>
            sumCounts([...lines, ...cutAlready, ...tooLong, ...ranOut])
          const before = beforeChecks(layout).cuts
          // Measured stock moves the joints of runs, and so their pieces.
          const after = beforeChecks({ ...layout, bench: { ...bench, measured: [] } }).cuts
          expect(after.map(wanted)).toEqual(before.map(wanted))
          after.forEach(expectSound)
        }),
        { seed: SEED, numRuns: 60 },
      )
    },
    SLOW,
  )

  test.each(Object.keys(scenarios))(
    '%s: a row that is moved leaves every list of its own the very same object',
    (id) => {
      const layout = scenarios[id]!()
      const row = layout.parts.find(({ kind }) => kind === 'rack-row')!
      const before = beforeChecks(layout).cuts
      const after = beforeChecks(movePartsBy(layout, [row.id], inches(7), inches(-3))).cuts
      const own = (lists: readonly CutList[]) =>
        lists.filter(({ stock }) => STICK_STOCK.has(stock) || stock === 'tube-1/8')
      expect(own(after).length).toBeGreaterThan(2)
      expect(own(after).every((list, i) => list === own(before)[i])).toBe(true)
    },
  )
})
