import { describe, expect, test } from 'vitest'
import { lensOf } from '../../../src/canvas/lens'
import { paintStrength } from '../../../src/canvas/strength/paintStrength'
import { strengthSpans, type RowSpans } from '../../../src/canvas/strength/strengthSpans'
import { strengthCounts, strengthMarks, strengthNotes } from '../../../src/canvas/strength/strengthWords'
import { legendFacts } from '../../../src/canvas/water/legendFacts'
import { rowMarks } from '../../../src/canvas/water/rowMarks'
import { stateColour } from '../../../src/canvas/stateInk'
import { paperTheme } from '../../../src/drawing/theme'
import { strengthOf } from '../../../src/evaluate/5-loads'
import { evaluate } from '../../../src/evaluate/evaluate'
import { inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { bay } from '../../support/bay'
import { inchesOf } from '../../support/site'
import { railOf, rowStrength, span } from '../../support/strength'

const lens = lensOf({ x: 0, y: 18000, pxPerMm: 0.04 }, { width: 900, height: 700 }, paperTheme, 'feet-inches')
const writer = writerFor('feet-inches')

/** Two rows that run north, the second without riser pairs between its rack ends. */
const evaluation = evaluate(
  bay('40 x 60 ft')
    .row('Row 1', [100, 100], { racks: 1 })
    .row('Row 2', [300, 100], { racks: 1, midPairs: 0 })
    .layout(),
)
const strengths = strengthOf(evaluation.bay)

describe('a map of strength', () => {
  test('has every span of every rail where the rail lies', () => {
    const [first] = strengthSpans(evaluation)
    const rails = strengths.get('rack-row-1')!.rails
    expect(first!.spans.length).toBe(rails.reduce((sum, { spans }) => sum + spans.length, 0))
    // Rails lie 40 in apart about the row at x = 100 in; looking north the left one lies west.
    for (const { rail, from, to, span: its } of first!.spans) {
      expect(inchesOf(from.x)).toBeCloseTo(rail === 'left' ? 80 : 120, 3)
      expect(to.y - from.y).toBeCloseTo(its.toU - its.fromU, 6)
    }
  })

  test('is remembered for rows that carry what they did', () => {
    expect(strengthSpans(evaluation)[0]).toBe(strengthSpans(evaluation)[0])
  })

  test('says on each row what it carries and how it stands, by word and share', () => {
    const marks = strengthMarks(evaluation, 'rack-row-2', writer)
    const { state, stance } = strengths.get('rack-row-2')!
    expect(marks.map((mark) => mark.state)).toEqual([state, stance.state])
    expect(marks[0]!.words).toMatch(/^Row 2: Too long \d+\.\d %$/)
    expect(marks[1]!.words).toBe(stance.state)
    expect(strengthMarks(evaluation, 'nobody', writer)).toEqual([])
    expect(rowMarks('strength')).toBe(strengthMarks)
  })

  test('says under the pointer what a span carries, and that it folds where it does', () => {
    const [, second] = strengthSpans(evaluation)
    const long = second!.spans.find(({ span: { state, isOverhang } }) => state === 'Too long' && !isOverhang)!
    const middle = { x: long.from.x, y: (long.from.y + long.to.y) / 2 }
    const notes = strengthNotes(evaluation, middle, lens)
    expect(notes[0]).toMatch(/^Row 2, (left|right) rail, span .* to .*$/)
    expect(notes[1]).toMatch(/^Too long, .* of its limit: .* ksi: folds or stays bent$/)
    expect(strengthNotes(evaluation, { x: 0, y: 0 }, lens)).toEqual([])
  })

  test('counts rows by state, worst first', () => {
    const { carry, stand } = strengthCounts(evaluation)
    expect(carry.reduce((sum, { rows }) => sum + rows, 0)).toBe(2)
    expect(stand.reduce((sum, { rows }) => sum + rows, 0)).toBe(2)
    expect(carry[0]).toMatchObject({ state: 'Too long' })
  })
})

/** The colours of strokes, thickest first, of a painter that is listened to. */
const strokes = (rows: readonly RowSpans[]): [width: number, colour: string, lines: number][] => {
  const seen: [number, string, number][] = []
  let lines = 0
  const ctx = {
    lineWidth: 0,
    strokeStyle: '',
    lineCap: '',
    setLineDash: () => undefined,
    beginPath: () => (lines = 0),
    moveTo: () => undefined,
    lineTo: () => (lines += 1),
    stroke: () => lines > 0 && seen.push([Math.round(ctx.lineWidth * 0.04), ctx.strokeStyle, lines]),
  }
  // Only what is called by this painter is there.
  paintStrength(ctx as never, rows, lens)
  return seen
}

test('spans that are not within are cased in their state, wider the worse', () => {
  const states = (['Within', 'Proof-load', 'Too long'] as const).map((state, index) => ({
    ...span(30 * index, 30 * index + 30),
    state,
    used: [0.5, 1.05, 2][index]!,
  }))
  const rack = evaluation.bay.builtOf.get('rack-row-1')!.rack!
  const strength = rowStrength({ rails: [railOf(states)] })
  const spans = states.map((its) => ({
    from: { x: rack.leftFace.from.x, y: rack.leftFace.from.y + its.fromU },
    to: { x: rack.leftFace.from.x, y: rack.leftFace.from.y + its.toU },
    rail: 'left' as const,
    span: its,
  }))
  const box = { x0: 0, y0: 0, x1: inches(200), y1: inches(400) }
  const seen = strokes([{ part: 'rack-row-1', strength, spans, box }])
  expect(seen.slice(0, 2)).toEqual([
    [12, stateColour('Proof-load', paperTheme), 1],
    [14, stateColour('Too long', paperTheme), 1],
  ])
  expect(seen[2]).toEqual([8, paperTheme.ink, 3])
  // One within at half of its limit, two over it in the last shade.
  expect(seen.slice(3).map(([width, , lines]) => [width, lines])).toEqual([
    [6, 1],
    [6, 2],
  ])
})

describe('the legend', () => {
  test('runs to the limit, in shares', () => {
    expect(legendFacts('strength', evaluation, 'feet-inches')).toEqual({
      title: 'Rails, by the share of their limit that is used',
      ticks: ['0.0 %', '50.0 %', '100.0 %'],
      marked: { share: 1, words: 'over it they are cased; screened, not rated' },
    })
  })

  test('is none in a bay without racks', () => {
    const empty = evaluate(bay('40 x 60 ft').layout())
    expect(legendFacts('strength', empty, 'feet-inches')).toBeUndefined()
    expect(strengthCounts(empty)).toEqual({ carry: [], stand: [] })
  })
})
