import { describe, expect, test } from 'vitest'
import { cutLists } from '../../src/evaluate/6-cutting'
import type { CuttingGiven } from '../../src/evaluate/6-cutting'
import type { Bench } from '../../src/layout/bench'
import type { Built, CutRule, Stick, Tube } from '../../src/model/built'
import type { CutList } from '../../src/model/cutList'
import type { PriceRow } from '../../src/model/priceRow'
import { feet, inches, toInches } from '../../src/units/length'

const SETTINGS = { kerfMm: inches(1 / 8), trimMm: 0, lumberMm: [inches(120), inches(144)] }

const NOTHING = { measured: [], leftovers: [], cut: [], sawn: [] }

/** What cutting depends on beside the pieces: a plain saw, an empty bench, the prices that come with the program. */
const given = (
  settings: Partial<typeof SETTINGS> = {},
  bench: Partial<Bench> = {},
  quotes: readonly PriceRow[] = [],
): CuttingGiven => ({
  settings: { ...SETTINGS, ...settings },
  bench: { ...NOTHING, ...bench },
  counter: { book: [], quotes },
})

const saw = given()

const stick = (stock: string, mark: string, lengthIn: number, cut: CutRule = { kind: 'exact' }): Stick => ({
  mark,
  stock,
  lengthMm: inches(lengthIn),
  from: { x: 0, y: 0, z: 0 },
  to: { x: inches(lengthIn), y: 0, z: 0 },
  widthMm: inches(1.5),
  heightMm: inches(3.5),
  cut,
  minusMm: 0,
  holes: [],
  rack: 0,
})

const many = (count: number, one: Stick): Stick[] => Array.from({ length: count }, () => one)

const tube = (role: Tube['role'], stock: string, lengthIn: number, turnAtIn?: number): Tube => {
  const start = { x: 0, y: 0, z: 0 }
  const bend = { x: inches(turnAtIn ?? lengthIn), y: 0, z: 0 }
  const end = { x: bend.x, y: inches(lengthIn - (turnAtIn ?? 0)), z: 0 }
  const path = turnAtIn === undefined ? [start, bend] : [start, bend, end]
  return { role, stock, path, lengthMm: inches(lengthIn) }
}

const part = (sticks: readonly Stick[], tubes: readonly Tube[] = [], name = 'rack-row-1'): Built => ({
  part: name,
  zFrom: 'rack-datum',
  sticks,
  tubes,
  fittings: [],
  bodies: [],
  mouths: [],
  supports: [],
})

/** Lines as a saw hand reads them: count, inches, marks. */
const linesOf = (list: CutList | undefined) =>
  list?.lines.map(({ count, lengthMm, marks }) => [
    count,
    Number(toInches(lengthMm).toFixed(4)),
    marks.join(' '),
  ])

const boughtOf = (list: CutList | undefined) =>
  list?.bought.map(({ stockMm, count }) => [count, Math.round(toInches(stockMm))])

const halve = (stockIn: number): CutRule => ({ kind: 'equal-parts', parts: 2, stockMm: inches(stockIn) })

describe('lines of a cut list', () => {
  test('pieces of one stop setting are one line with all their marks, longest first, over all parts', () => {
    const [list] = cutLists(
      [
        part([stick('lumber-2x4', 'BX', 43.5), stick('lumber-2x4', 'RS', 71.9375, halve(144))]),
        part([stick('lumber-2x4', 'TT', 43.5), stick('lumber-2x4', 'BX', 43.5)], [], 'rack-row-2'),
      ],
      saw,
    )
    expect(linesOf(list)).toEqual([
      [1, 71.9375, 'RS'],
      [3, 43.5, 'BX TT'],
    ])
    expect(list?.title).toBe('2x4 lumber')
  })

  test('like lengths under different rules stay apart', () => {
    const [list] = cutLists(
      [part([stick('lumber-2x4', 'A', 59.9375, halve(120)), stick('lumber-2x4', 'B', 59.9375)])],
      saw,
    )
    expect(list?.lines.map((line) => line.cut.kind).sort()).toEqual(['equal-parts', 'exact'])
    // The odd half of the one is the other.
    expect(boughtOf(list)).toEqual([[1, 120]])
  })

  test('one list for each material, in the order of the catalogue', () => {
    const built = [
      part([
        stick('gutter-5in', 'G', 120),
        stick('conduit-3/4', 'RL', 119.75),
        stick('lumber-2x4', 'BX', 43.5),
      ]),
    ]
    expect(cutLists(built, saw).map((list) => list.stock)).toEqual([
      'lumber-2x4',
      'conduit-3/4',
      'gutter-5in',
    ])
    expect(cutLists([], saw)).toEqual([])
  })

  test('pieces longer than any board stand apart and are not counted as made', () => {
    const [list] = cutLists([part(many(2, stick('lumber-2x4', 'BR', 150)))], saw)
    expect(list?.tooLong.map((line) => [line.count, line.marks])).toEqual([[2, ['BR']]])
    expect([list?.lines, list?.boards, list?.netMm, list?.boughtMm]).toEqual([[], [], 0, 0])
  })
})

describe('stock', () => {
  test('lumber comes in the lengths of the settings, and loses kerf and trim', () => {
    const two = [part(many(2, stick('lumber-2x4', 'GB', 60)))]
    expect(boughtOf(cutLists(two, given({ lumberMm: [inches(120)] }))[0])).toEqual([[2, 120]])
    expect(boughtOf(cutLists(two, given({ kerfMm: 0, lumberMm: [inches(120)] }))[0])).toEqual([[1, 120]])
    expect(boughtOf(cutLists(two, given({ kerfMm: 0, trimMm: 1, lumberMm: [inches(120)] }))[0])).toEqual([
      [2, 120],
    ])
  })

  test('conduit is parted without loss: two 60 in bars from a stick, trim or not', () => {
    const bars = [part(many(2, stick('conduit-3/4', 'HB', 60)))]
    expect(boughtOf(cutLists(bars, given({ trimMm: inches(0.5) }))[0])).toEqual([[1, 120]])
  })

  test('a board tells its pieces, their marks and its offcut', () => {
    const [list] = cutLists(
      [part([stick('lumber-2x4', 'BX', 66), stick('lumber-2x4', 'RS', 66)])],
      given({ lumberMm: [inches(144)] }),
    )
    const [board] = list?.boards ?? []
    expect(board?.pieces.map(({ count, marks }) => [count, marks])).toEqual([[2, ['BX', 'RS']]])
    // 144 - 2 x 66 - 2 x 1/8, hand arithmetic.
    expect(toInches(board?.offcutMm ?? 0)).toBeCloseTo(11.75, 6)
  })
})

describe('tubes', () => {
  test('come off coils, a line for each length', () => {
    const microtubes = Array.from({ length: 40 }, () => tube('microtube', 'tube-1/8', 36))
    const [list] = cutLists([part([], [...microtubes, tube('lateral', 'tube-1/8', 360)])], saw)
    expect(linesOf(list)).toEqual([
      [1, 360, 'lateral'],
      [40, 36, 'microtube'],
    ])
    // 30 ft + 40 x 3 ft = 150 ft: two coils of 100 ft.
    expect(boughtOf(list)).toEqual([[2, 1200]])
  })

  test('a main longer than a coil is whole coils and a rest', () => {
    const [list] = cutLists([part([], [tube('main', 'pe-2', 2500)])], saw)
    expect(linesOf(list)).toEqual([
      [2, 1200, 'main'],
      [1, 100, 'main'],
    ])
  })

  test('a drain is jointed from 10 ft sticks', () => {
    // The sample bay's north drain: 274 in = 2 sticks and 34 in.
    const [list] = cutLists([part([], [tube('drain', 'drain-4in', 274)])], saw)
    expect(linesOf(list)).toEqual([
      [2, 120, 'drain'],
      [1, 34, 'drain'],
    ])
    expect(boughtOf(list)).toEqual([[3, 120]])
  })

  test('a drain that turns is cut at the turn', () => {
    const [list] = cutLists([part([], [tube('drain', 'drain-4in', 300, 150)])], saw)
    expect(linesOf(list)).toEqual([
      [2, 120, 'drain'],
      [2, 30, 'drain'],
    ])
  })

  test('a run of whole sticks leaves no rest', () => {
    const [list] = cutLists([part([], [tube('drain', 'drain-4in', 360)])], saw)
    expect(linesOf(list)).toEqual([[3, 120, 'drain']])
  })
})

describe('sums', () => {
  test('length drawn is length cut, and the bound lies between the pieces and the boards', () => {
    const built = part([
      ...many(132, stick('lumber-2x4', 'RS', 71.9375, halve(144))),
      ...many(177, stick('lumber-2x4', 'BX', 43.5)),
    ])
    const [list] = cutLists([built], saw)
    const drawn = built.sticks.reduce((sum, each) => sum + each.lengthMm, 0)
    const sawn = list?.boards.reduce(
      (sum, board) =>
        sum + board.count * board.pieces.reduce((all, piece) => all + piece.count * piece.lengthMm, 0),
      0,
    )
    expect(list?.netMm).toBeCloseTo(drawn, 3)
    expect(sawn).toBeCloseTo(drawn, 3)
    // 62 cents a foot in the shipped book, of either length.
    expect(list?.bound).toBeGreaterThanOrEqual(((list?.netMm ?? Infinity) / feet(1)) * 62)
    expect(list?.bound).toBeLessThanOrEqual(list?.cost ?? 0)
    expect(list?.boughtMm).toBeCloseTo(feet(66 * 12 + 59 * 12), 6)
  })
})

describe('what has not changed', () => {
  const row = (name: string, lengthIn: number) =>
    part([stick('lumber-2x4', 'BX', lengthIn), stick('conduit-3/4', 'HB', 57)], [], name)

  test('a part that is only moved leaves every list the very same object', () => {
    const still = row('rack-row-1', 43.5)
    const before = cutLists([still, row('rack-row-2', 43.5)], saw)
    const after = cutLists([still, row('rack-row-2', 43.5)], saw)
    expect(after.every((list, i) => list === before[i])).toBe(true)
  })

  test('a change of lumber leaves the conduit list the very same object', () => {
    const before = cutLists([row('rack-row-1', 43.5)], saw)
    const after = cutLists([row('rack-row-1', 44)], saw)
    expect(after[0]).not.toBe(before[0])
    expect(after[1]).toBe(before[1])
    expect(linesOf(after[0])).toEqual([[1, 44, 'BX']])
  })

  test('another kerf or other lumber is another list', () => {
    const built = [row('rack-row-1', 43.5)]
    const [before] = cutLists(built, saw)
    expect(cutLists(built, given({ kerfMm: inches(1 / 4) }))[0]).not.toBe(before)
    expect(cutLists(built, given({ lumberMm: [inches(96)] }))[0]).not.toBe(before)
  })

  test('pieces of a part are counted once, however often the bay is', () => {
    let read = 0
    const counted: Built = {
      ...part([]),
      get sticks() {
        read += 1
        return [stick('lumber-2x4', 'BX', 43.5)]
      },
    }
    cutLists([counted], saw)
    cutLists([counted, row('rack-row-2', 43.5)], saw)
    expect(read).toBe(1)
  })
})
