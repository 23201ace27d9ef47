import { describe, expect, test } from 'vitest'
import { bay, type Sketch, type Spot } from '../support/bay'
import { evaluate } from '../../src/evaluate/evaluate'
import { findingsOf, judged, mended, sentenceIn } from '../support/judged'
import { ruleTable } from '../support/ruleTable'

// 3 in of cover under foot traffic, 6 in under carts, 12 in where vehicles go. Common practice, no source.

/** From the pipe's invert up to its crown: 4.215 in outside less a wall of 5/64 in, by the worked example of the trade notes. */
const INVERT_TO_CROWN = 4.1375

const LINE: readonly Spot[] = [
  [60, 100],
  [300, 100],
]

const on = (crown: number | null, values = {}): Sketch =>
  bay('40 x 60 ft').drain('D', LINE, {
    startInvert: crown === null ? null : crown - INVERT_TO_CROWN,
    ...values,
  })

/** Level floor but for a dip in the middle of the line, 120 in along. */
const overDip = (dip: number, crown: number | null): Sketch =>
  [
    [60, 100],
    [300, 100],
    [60, 300],
    [300, 300],
    [120, 100],
    [240, 100],
  ].reduce<Sketch>((sketch, [x = 0, y = 0]) => sketch.level([x, y], 0), on(crown).level([180, 100], dip))

const mend = 'Start D as high as its cover allows.'

ruleTable('drain-cover-min', {
  passes: [
    ['3 in at the high end, and more from there', on(-3)],
    ['a line that starts as high as its cover allows, whatever the dip', overDip(-6, null)],
    ['a line over the floor to a tote, which asks for no cover', on(5, { cover: 0 })],
  ],
  fails: [
    [
      '2-15/16 in at the high end',
      on(-2.9375),
      'Flat, 2.938 of 3',
      `D has 2-15/16" of cover at its high end; it wants 3". ${mend}`,
    ],
    [
      '3 in under carts, which want 6',
      on(-3, { cover: 6 }),
      'Flat, 3 of 6',
      `D has 3" of cover at its high end; it wants 6". ${mend}`,
    ],
    [
      'a pipe that comes out of the floor',
      on(0.75),
      'Backs up, -0.75 of 3',
      `D comes 3/4" out of the floor at its high end; it wants 3" of cover. ${mend}`,
    ],
  ],
})

describe('a dip in the middle of the line', () => {
  const layout = overDip(-4, -3).layout()
  const [finding] = findingsOf('drain-cover-min', layout)
  const { groundAt } = evaluate(layout).bay.site

  test('is where cover is tightest, as walking along it inch by inch finds', () => {
    // The crown starts at -3 and falls 1/8 in a foot.
    const walked = Array.from({ length: 241 }, (_, along) => ({
      along,
      cover: groundAt((60 + along) * 25.4, 100 * 25.4) / 25.4 + 3 + along / 96,
    }))
    const least = walked.reduce((tightest, place) => (place.cover < tightest.cover ? place : tightest))
    expect(Math.abs(finding!.measured.value / 25.4 - least.cover)).toBeLessThan(1 / 16)
    expect(Math.abs(Number(finding!.facts['alongMm']) / 25.4 - least.along)).toBeLessThanOrEqual(12)
    expect(least.along).toBeGreaterThan(100)
  })

  test('is named by how far it is from the high end, and pointed at', () => {
    expect(sentenceIn(layout, finding!)).toMatch(
      /^D has .*" of cover (9|10)' 0" from its high end; it wants 3"\./,
    )
    expect(finding!.at.x).toBeCloseTo(60 * 25.4 + Number(finding!.facts['alongMm']), 6)
  })

  test('is mended by starting the line lower', () => {
    expect(judged('drain-cover-min', mended('drain-cover-min', layout))).toEqual([])
  })
})
