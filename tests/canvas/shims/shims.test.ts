import { describe, expect, test } from 'vitest'
import { lensOf } from '../../../src/canvas/lens'
import { shimCounts, shimLabels, shimNotes } from '../../../src/canvas/shims/shimNotes'
import { shimScale, tallestShimMm } from '../../../src/canvas/shims/shimScale'
import { shimSpots } from '../../../src/canvas/shims/shimSpots'
import { legendFacts } from '../../../src/canvas/water/legendFacts'
import { paperTheme } from '../../../src/drawing/theme'
import { evaluate } from '../../../src/evaluate/evaluate'
import { inches } from '../../../src/units/length'
import { bay } from '../../support/bay'
import { inchesOf } from '../../support/site'

const lens = lensOf({ x: 0, y: 18000, pxPerMm: 0.04 }, { width: 900, height: 700 }, paperTheme, 'feet-inches')

/** The floor falls 2 in over 480 in to the east: 1 in in 240 in. */
const sloping = (fallIn: number) =>
  evaluate(
    bay('40 x 60 ft')
      .level([0, 0], 0)
      .level([480, 0], -fallIn)
      .level([0, 720], 0)
      .row('Row 1', [100, 100], { racks: 1 })
      .row('Row 2', [340, 100], { racks: 1 })
      .layout(),
  )

describe('a map of shims', () => {
  const evaluation = sloping(2)
  const [first, second] = shimSpots(evaluation)

  test('has every foot with the shim that the levels give it', () => {
    const { feet } = evaluation.bay.levels
    expect([first!.part, second!.part]).toEqual(['rack-row-1', 'rack-row-2'])
    expect([...first!.feetMm]).toEqual(feet.get('rack-row-1')!.map(({ shimMm }) => shimMm))
    // Row 2 stands 240 in further east, where the floor is 1 in lower: every foot wants 1 in more.
    const more = first!.feetMm.map((mm, index) => second!.feetMm[index]! - mm)
    for (const mm of more) expect(inchesOf(mm)).toBeCloseTo(1, 3)
  })

  test('has every bearer across its lines, where the shim table has it', () => {
    const { rack } = evaluation.bay.builtOf.get('rack-row-1')!
    expect([...first!.bearersMm]).toEqual(rack!.bearerShims.map(({ shimMm }) => shimMm))
    rack!.bearerShims.forEach(({ fromHighMm }, index) => {
      const [x0, y0, x1, y1] = first!.bearers.slice(4 * index, 4 * index + 4)
      // The row runs north from y = 100 in, and its gutters fall to that end's other.
      expect(y0).toBeCloseTo(y1!, 6)
      expect(inchesOf(y0!)).toBeCloseTo(100 + inchesOf(fromHighMm), 2)
      // Four lines 18 in apart, troughs 5 in wide: 59 in and what is over, about the middle at 100 in.
      expect(inchesOf(Math.min(x0!, x1!))).toBeGreaterThanOrEqual(69.9)
      expect(inchesOf(Math.max(x0!, x1!))).toBeLessThanOrEqual(130.1)
    })
  })

  test('runs to a round height, and never short of the block', () => {
    expect(inchesOf(shimScale(inches(0.2), 'feet-inches').high)).toBe(2)
    expect(inchesOf(shimScale(inches(2), 'feet-inches').high)).toBe(2)
    expect(inchesOf(shimScale(inches(2.1), 'feet-inches').high)).toBe(3)
    expect(shimScale(inches(1), 'metric').high).toBe(40)
  })

  test('says under the pointer which foot it is, how high its shim is and of what pieces', () => {
    const { feet } = evaluation.bay.levels
    // Rails are 40 in apart: the eastern feet of row 2 want 1 + 40/240 in = 1.167, to the sixteenth 1-3/16.
    const foot = feet.get('rack-row-2')!.reduce((most, one) => (one.at.x > most.at.x ? one : most))
    const [words] = shimNotes(evaluation, foot.at, lens)
    expect(words).toMatch(/^Row 2, pair \d, right foot: 1-3\/16" = 1" \+ 1\/8" \+ 1\/16"$/)
    expect(shimNotes(evaluation, { x: 0, y: 0 }, lens)).toEqual([])
  })

  test('says of a bearer where it lies', () => {
    const [x0, y0, x1, y1] = first!.bearers.slice(4, 8)
    const between = { x: x0! * 0.5 + x1! * 0.5, y: y0! * 0.5 + y1! * 0.5 }
    expect(shimNotes(evaluation, between, lens)[0]).toMatch(/^Row 1, bearer 2, .* from the high end: /)
  })
})

describe('feet over a limit', () => {
  test('are counted, and each row names its tallest', () => {
    // 8 in over 480: row 2 stands 240 in further east and so 4 in lower; its eastern feet, 40 in on, 0.67 in more.
    const evaluation = sloping(8)
    const words = shimLabels(lens, evaluation).map(({ words: said }) => said)
    expect(words).toEqual([expect.stringMatching(/^Row 2: Clash 4-/)])
    const feet = evaluation.bay.levels.feet.get('rack-row-2')!.length
    expect(shimCounts(evaluation)).toEqual([
      { state: 'Clash', feet: feet / 2 },
      { state: 'Tight', feet: feet / 2 },
    ])
  })

  test('are none on a floor that is nearly level', () => {
    const evaluation = sloping(0.5)
    expect(shimLabels(lens, evaluation)).toEqual([])
    expect(shimCounts(evaluation)).toEqual([])
  })
})

describe('the legend', () => {
  test('has numbers at both ends, and the height from which a block is steadier', () => {
    const facts = legendFacts('shims', sloping(2), 'feet-inches')!
    expect(facts.ticks).toEqual(['0"', '1"', '2"'])
    expect(facts.marked.words).toBe('over 1-1/2" a block is steadier')
    expect(facts.marked.share).toBeCloseTo(0.75, 9)
  })

  test('is none in a bay without racks', () => {
    const empty = evaluate(bay('40 x 60 ft').layout())
    expect(legendFacts('shims', empty, 'feet-inches')).toBeUndefined()
    expect(tallestShimMm(empty)).toBe(0)
  })
})
