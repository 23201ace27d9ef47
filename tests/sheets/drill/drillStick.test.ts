import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { PageItem } from '../../../src/drawing/page'
import { evaluate } from '../../../src/evaluate/evaluate'
import { emptyBay } from '../../../src/layout/empty'
import type { Layout } from '../../../src/layout/schema'
import type { Mark } from '../../../src/model/drawing'
import { drilledKinds } from '../../../src/sheets/drill/drilledKinds'
import { drillStick } from '../../../src/sheets/drill/drillStick'
import { tileFigure } from '../../../src/sheets/drill/stripFigure'
import { stripOf } from '../../../src/sheets/drill/stripTiles'
import { pagesOf } from '../../../src/sheets/pagesOf'
import { tablesIn } from '../../../src/sheets/piece'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { feet, inches, toInches } from '../../../src/units/length'
import { atDrill } from '../../../src/units/precision'
import { writerFor } from '../../../src/units/writer'
import { arbitraryBay } from '../../support/arbitraryBay'
import { scenarios } from '../../support/scenarios'

const inFeet: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
}
const inMm: SheetOptions = { ...inFeet, paper: 'A4', units: 'metric' }

/** Worked example of the trade notes for a row of 3 racks, hand arithmetic: heights of hole centres from the foot, in. */
const PLAIN = 69.3748
const SLEEVE = 69.4428
/** What a drill hand can hold, in. Common practice, no source. */
const HOLE_STEP = 1 / 32

const kestrel = evaluate(scenarios['kestrel-bend-house-2']!())
const piecesOf = (layout: Layout) => drillStick.pieces({ now: evaluate(layout), issued: undefined }, inFeet)

const rowsOf = (layout: Layout) =>
  tablesIn(piecesOf(layout))
    .find(({ id }) => id === 'holes')
    ?.rows.map(({ cells }) => cells) ?? []

/** Where marks come to lie across the paper, mm. */
const onPaperX = ({ placement }: PageItem, x: number): number => placement.xMm + x * placement.scale

const isText = (mark: Mark) => mark.as === 'text'

const holeX = (item: PageItem): number | undefined => {
  const disc = item.marks.find((mark) => mark.as === 'discs')
  return disc && onPaperX(item, disc.discs[0]!)
}

describe('the sample', () => {
  const rows = rowsOf(kestrel.layout)

  test('tells centre and bottom of both holes as the trade notes reckon them, and counts 132 risers', () => {
    // Bottoms: 69.3748 - 0.9375 / 2 = 68.9061, 69.4428 - 1.1875 / 2 = 68.8491. Hand arithmetic.
    expect(rows.map((cells) => cells.slice(0, 5).map(({ text }) => text))).toEqual([
      ['RS-p', '114', '69-3/8"', '68-29/32"', '15/16"'],
      ['RS-s', '18', '69-7/16"', '68-27/32"', '1-3/16"'],
    ])
    expect(rows.map((cells) => toInches(Number(cells[2]!.value)))).toEqual([
      expect.closeTo(PLAIN, 2),
      expect.closeTo(SLEEVE, 2),
    ])
    expect(toInches(Number(rows[1]![2]!.value) - Number(rows[0]![2]!.value))).toBeCloseTo(0.068, 2)
  })

  test('says why the two differ, and by how much', () => {
    const said = piecesOf(kestrel.layout).flatMap((piece) => (piece.as === 'words' ? [piece.text] : []))
    expect(said.some((text) => /centre 1\/16" higher .* bottom 1\/16" lower/.test(text))).toBe(true)
  })

  test('minds the bit that grabs', () => {
    const minds = piecesOf(kestrel.layout).filter((piece) => piece.as === 'words' && piece.tone === 'caution')
    expect(minds).toHaveLength(1)
  })
})

/** The height of every hole, in, as the tape that is printed on its own tile tells it. */
const heightsOnTape = (options: SheetOptions, perNumberMm: number): readonly number[] =>
  pagesOf(drillStick, { now: kestrel, issued: undefined }, options)
    .flatMap(({ items }) => items)
    .flatMap((item) => {
      const x = holeX(item)
      const numbers = item.marks.filter(isText).filter(({ text }) => /^\d+$/.test(text))
      const number = numbers.at(0)
      if (x === undefined || number === undefined) return []
      const spans = numbers.slice(1).map((next, i) => next.at.x - numbers[i]!.at.x)
      for (const span of spans) expect(span * item.placement.scale).toBeCloseTo(perNumberMm, 6)
      const tape = Number(number.text) * (options.units === 'metric' ? 1 : perNumberMm)
      return [toInches(tape + x - onPaperX(item, number.at.x))]
    })

describe('the strip at full size', () => {
  test('has each hole where the tape printed beside it says, within what a drill hand can hold', () => {
    for (const heights of [heightsOnTape(inFeet, 25.4), heightsOnTape(inMm, 10)]) {
      expect(heights).toHaveLength(2)
      expect(Math.abs(heights[0]! - PLAIN)).toBeLessThan(HOLE_STEP)
      expect(Math.abs(heights[1]! - SLEEVE)).toBeLessThan(HOLE_STEP)
    }
  })

  test('has the hole as far from the foot when all tiles are laid letter on letter', () => {
    const [kind] = drilledKinds(kestrel)
    const units = 'feet-inches'
    const strip = stripOf(kind!.lengthMm, { widthMm: 189.9, largestMm: inches(1.1875), units })
    const printed = new Set(strip.tiles.map(({ number }) => number))
    const write = writerFor(units, atDrill)
    const items = strip.tiles.map((tile) => {
      const { draw } = tileFigure({ kind: kind!, strip, tile, printed, units, write })
      return draw({ widthMm: 189.9, heightMm: 200 }).items[0]!
    })
    const letterX = (item: PageItem, letter: string): number =>
      onPaperX(item, item.marks.filter(isText).find(({ text }) => text === letter)!.at.x)
    const foot = items[0]!.marks.find((mark) => mark.as === 'path' && mark.pen === 'wall')!
    let along = -onPaperX(items[0]!, foot.as === 'path' ? foot.points[0]! : Number.NaN)
    for (const [index, next] of items.slice(1).entries()) {
      const letter = String.fromCodePoint('A'.charCodeAt(0) + index)
      along += letterX(items[index]!, letter) - letterX(next, letter)
    }
    expect(Math.abs(toInches(along + holeX(items.at(-1)!)!) - PLAIN)).toBeLessThan(HOLE_STEP)
  })

  test('is printed to size: a page says so, and how to lay what follows bare wood', () => {
    const said = JSON.stringify(piecesOf(kestrel.layout))
    expect(said).toContain('Print at 100 %')
    expect(said).toContain('tile 14 begins 65\\" from the foot')
  })
})

test('any bay has as many on the sheet as it has drilled members', () => {
  fc.assert(
    fc.property(arbitraryBay, (layout) => {
      const drilled = evaluate(layout)
        .bay.built.flatMap(({ sticks }) => sticks)
        .filter(({ holes }) => holes.length > 0)
      const counts = rowsOf(layout).map((cells) => Number(cells[1]!.value))
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe(drilled.length)
    }),
    { seed: 20_271_126, numRuns: 12 },
  )
})

test('a bay without racks has no drill stick', () => {
  expect(piecesOf(emptyBay(feet(30), feet(96), 'New bay'))).toEqual([])
})
