import { describe, expect, test } from 'vitest'
import { footWords, holesWords, kindWords, misfitWords, recutWords } from '../../src/sheets/sawnWords'
import { cutLists, wantedByStock } from '../../src/evaluate/6-cutting'
import { evaluate } from '../../src/evaluate/evaluate'
import { holeHeights } from '../../src/evaluate/sawn/holeHeights'
import { whatsCut, type CutOfStock } from '../../src/evaluate/sawn/whatsCut'
import type { CutPiece } from '../../src/layout/bench'
import type { Layout } from '../../src/layout/schema'
import { fromTicks, inches, toInches } from '../../src/units/length'
import { bay } from '../support/bay'

const LUMBER = 'lumber-2x4'

/** One row of three racks with towers of so many inches: 13 pairs of risers. */
const row = (tower: number): Layout => bay('30 x 96 ft').row('N1', [63, 410], { racks: 3, tower }).layout()

const holesOf = (layout: Layout) => holeHeights(evaluate(layout).bay.built)

const lumber = (layout: Layout, cut: readonly CutPiece[]): CutOfStock => {
  const { built } = evaluate(layout).bay
  const found = whatsCut(wantedByStock(built, layout), cut, holesOf(layout)).find(
    ({ stock }) => stock === LUMBER,
  )
  if (!found) throw new Error('No lumber is wanted.')
  return found
}

/** All risers of a bay, ticked as they are now. */
const risersOf = (layout: Layout): CutPiece[] =>
  lumber(layout, []).lines.flatMap(({ line }) => {
    const lengthMm = fromTicks(line.lengthTicks)
    const marks = [...line.marks]
    return marks.includes('RS-p')
      ? [
          {
            stock: LUMBER,
            lengthMm,
            count: line.count,
            marks,
            holes: [...holesOf(layout)(LUMBER, marks, lengthMm)],
          },
        ]
      : []
  })

const words = (state: CutOfStock) => ({
  misfit: misfitWords(state, 'feet-inches'),
  recut: state.recut.map((each) => recutWords(each, 'feet-inches')),
  foot: state.recut.map((each) => footWords(each, 'feet-inches')),
})

describe('26 risers of a row of three racks are cut', () => {
  const cut = risersOf(row(60))

  test('as the worked example of the trade notes has them: 71-15/16, holes at 69-3/8 and 69-7/16', () => {
    expect(cut.map(({ lengthMm, count }) => [Number(toInches(lengthMm).toFixed(4)), count])).toEqual([
      [71.9375, 26],
    ])
    const holes = cut[0]?.holes?.map(({ mark, centreMm }) => [mark, Number(toInches(centreMm).toFixed(2))])
    expect(holes).toEqual([
      ['RS-p', 69.37],
      ['RS-s', 69.44],
    ])
  })

  test('and the bay is as it was: all are right, with their holes', () => {
    const state = lumber(row(60), cut)
    expect(state.right.map(({ count, drilled }) => [count, drilled])).toEqual([[26, 'same']])
    expect(words(state)).toEqual({ misfit: [], recut: [], foot: [] })
    expect(holesWords(state.right[0]!, 'feet-inches')).toBe('Holes stand where they did.')
  })

  test('then towers 2 in shorter: 2-1/16 come off each, 2 of them at the foot', () => {
    // The hole comes down by 2 in to 67-3/8, the least riser to 69-7/8; a halved 12 ft board is over an inch longer, so 69-7/8 is cut.
    expect(words(lumber(row(58), cut))).toEqual({
      misfit: ['26 cut risers are 2-1/16" too long for the bay as it is now: they can be re-cut.'],
      recut: ['26 x 71-15/16" to 69-7/8" (RS-p, RS-s): 2-1/16" comes off each.'],
      foot: ['Take 2" off the foot, and 1/16" off the top: holes that are drilled then stand right.'],
    })
  })

  test('then towers 2 in longer: no riser comes of them, but cross-pieces do', () => {
    // 73-7/8 are wanted now. 26 pieces of 71-15/16 give one bearer of 59-15/16 each: 16 bearers (30 ft / 24 in + 1); the other ten
    // give one cross-piece of 43-1/2 each, since two take 87-1/8.
    const state = lumber(row(62), cut)
    expect(state.lines.find(({ line }) => line.marks.includes('RS-p'))).toMatchObject({
      right: 0,
      recut: 0,
      toCut: 26,
    })
    expect(words(state).misfit[0]).toMatch(
      /^16 cut risers of 71-15\/16" fit nowhere in the bay as it is now, but can be cut into other pieces\.$/,
    )
    expect(state.scrap).toEqual([])
  })

  test('then towers half an inch shorter: the halves still fit, their holes do not', () => {
    // 69-3/8 - 1/2 = 68-7/8; least riser 71-3/8, and 71-15/16 is within an inch of it, so boards are halved as before.
    const [right] = lumber(row(59.5), cut).right
    expect(right && holesWords(right, 'feet-inches')).toBe(
      'If they are drilled, check them: the holes were to be at RS-p 69-3/8", RS-s 69-7/16" from the foot, and now belong at RS-p 68-7/8", RS-s 68-15/16".',
    )
  })

  test('the cut lists take off what is right and nothing else', () => {
    const countOf = (layout: Layout): number | undefined => {
      const given = { ...layout, bench: { ...layout.bench, cut } }
      const list = cutLists(evaluate(layout).bay.built, given).find(({ stock }) => stock === LUMBER)
      return list?.lines
        .filter(({ marks }) => marks.includes('RS-p'))
        .reduce((sum, { count }) => sum + count, 0)
    }
    expect([countOf(row(60)), countOf(row(58))]).toEqual([0, 26])
  })
})

test('what all members of some marks are', () => {
  expect([
    kindWords(['RS-p', 'RS-s']),
    kindWords(['BX', 'TT']),
    kindWords(['HB']),
    kindWords(['lateral']),
  ]).toEqual(['riser', 'piece', 'hanger bar', 'piece'])
})

test('of a single piece it is said in the singular', () => {
  const state = lumber(row(58), [{ stock: LUMBER, lengthMm: inches(71.9375), count: 1, marks: ['RS-p'] }])
  expect(misfitWords(state, 'feet-inches')).toEqual([
    '1 cut riser is 2-1/16" too long for the bay as it is now: it can be re-cut.',
  ])
  expect(
    misfitWords(
      lumber(row(60), [{ stock: LUMBER, lengthMm: inches(9), count: 1, marks: ['BX'] }]),
      'feet-inches',
    ),
  ).toEqual(['1 cut base cross-piece of 9" fits nowhere in the bay as it is now.'])
})
