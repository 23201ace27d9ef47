import { describe, expect, test } from 'vitest'
import { acrossView } from '../../../../../src/app/drawer/rack/bench/acrossView'
import { apart } from '../../../../../src/app/drawer/rack/bench/apart'
import { elevation } from '../../../../../src/app/drawer/rack/bench/elevation'
import { fitOf } from '../../../../../src/app/drawer/rack/bench/fit'
import type { BenchGiven } from '../../../../../src/app/drawer/rack/bench/given'
import { PILL_MM } from '../../../../../src/app/drawer/rack/bench/glass'
import type { Drawing } from '../../../../../src/app/drawer/rack/bench/shape'
import {
  countedIn,
  drawnIn,
  isRiser,
  racksOf,
  type Stretch,
  wholeRow,
} from '../../../../../src/app/drawer/rack/bench/stretch'
import { strengthOf } from '../../../../../src/evaluate/5-loads'
import { evaluate } from '../../../../../src/evaluate/evaluate'
import { type Frame, frameOf } from '../../../../../src/evaluate/loads/frame'
import { overlaps } from '../../../../../src/geometry/box'
import { rowBuilt } from '../../../../../src/sheets/assembly/rowBuilt'
import { ringHalf } from '../../../../../src/sheets/assembly/rings'
import { inches } from '../../../../../src/units/length'
import { writerFor } from '../../../../../src/units/writer'
import { bay } from '../../../../support/bay'
import { scenarios } from '../../../../support/scenarios'

const write = writerFor('feet-inches')

const rowsOf = (layout: ReturnType<(typeof scenarios)[string]>) => {
  const { bay: judged } = evaluate(layout)
  const strength = strengthOf(judged)
  return judged.built.flatMap((built) => {
    const frame = frameOf(built)
    return frame ? [{ frame, strength: strength.get(built.part) }] : []
  })
}

const givenOf = (frame: Frame, stretch: Stretch, strength?: BenchGiven['strength']): BenchGiven => ({
  frame,
  rack: rowBuilt(frame.built, null)?.racks.find(({ number }) => number === (stretch.rack ?? 1)),
  stretch,
  strength,
  yieldMpa: 206.8,
  write,
  drill: write,
})

/** A raised drawer, mm of glass. */
const RAISED = { widthMm: 150, heightMm: 95 }

const pillBoxes = ({ pills }: Drawing) =>
  pills.map(({ at, text }) => {
    const half = ringHalf(text, PILL_MM)
    return { x0: at.x - half, x1: at.x + half, y0: at.y - PILL_MM, y1: at.y + PILL_MM }
  })

const one = rowsOf(
  bay('40 x 40 ft').row('N1', [60, 60], { racks: 3, rackLength: 120, lines: 4 }).layout(),
)[0]!

describe('what is drawn of a row', () => {
  test('the whole row is every stick that is built', () => {
    const drawn = drawnIn(one.frame, wholeRow(one.frame))
    expect(drawn.map(({ stick }) => stick)).toEqual(expect.arrayContaining([...one.frame.built.sticks]))
    expect(drawn).toHaveLength(one.frame.built.sticks.length)
  })

  test('racks together count every stick once', () => {
    const counts = racksOf(one.frame).map((rack) => countedIn(one.frame, rack).length)
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(one.frame.built.sticks.length)
  })

  // Riser pairs of three racks with three between rack ends: 13 pairs, of which each rack stands on 5 (trade notes 2.4, hand count).
  test('a rack is drawn with the risers that it shares', () => {
    for (const rack of racksOf(one.frame))
      expect(drawnIn(one.frame, rack).filter(isRiser), `rack ${rack.rack}`).toHaveLength(10)
  })

  test('both views are to scale: a rail is as long as it is cut', () => {
    const given = givenOf(one.frame, wholeRow(one.frame))
    const fit = fitOf(given, RAISED, 1, 'both')
    const rails = elevation(given, fit).members.filter(({ mark }) => mark === 'RL')
    const longest = rails.map(({ seen }) =>
      seen.as === 'shape'
        ? Math.max(...seen.corners.map(({ x }) => x)) - Math.min(...seen.corners.map(({ x }) => x))
        : 0,
    )
    // End rails are uncut sticks of 120 in (trade notes 2.6, worked by hand).
    expect(Math.max(...longest) / fit.scale).toBeCloseTo(inches(120), 3)
    const bars = acrossView(given, fit).members.filter(({ mark }) => mark === 'HB')
    const [bar] = bars
    const xs = bar?.seen.as === 'shape' ? bar.seen.corners.map(({ x }) => x) : []
    expect((Math.max(...xs) - Math.min(...xs)) / fit.scale).toBeCloseTo(inches(57), 3)
  })
})

describe.each(Object.keys(scenarios))('%s', (name) => {
  const [{ frame, strength }] = rowsOf(scenarios[name]!()) as [typeof one]
  const given = givenOf(frame, racksOf(frame)[0]!, strength)
  const fit = fitOf(given, RAISED, 1, 'both')
  const views = [elevation(given, fit), acrossView(given, fit)]

  test('every member mark is named once or twice', () => {
    const named = views.flatMap(({ pills }) => pills.map(({ mark }) => mark))
    for (const mark of new Set(drawnIn(frame, given.stretch).map(({ stick }) => stick.mark)))
      expect([1, 2], mark).toContain(named.filter((each) => each === mark).length)
  })

  test('no name lies on another, nor beyond the drawing', () => {
    for (const view of views) {
      const boxes = pillBoxes(view)
      boxes.forEach((box, i) => {
        expect(boxes.slice(i + 1).filter((other) => overlaps(box, other))).toEqual([])
        expect(Math.min(box.x0, view.widthMm - box.x1, view.heightMm - box.y1)).toBeGreaterThan(0)
      })
    }
  })

  test('parts apart, no kind of member covers another, and the list counts all of the rack', () => {
    const { along } = apart(given, RAISED, 1, 'both')
    const family = (mark: string) => (mark === 'SB' || mark === 'XB' ? 'brace' : mark.split('-')[0]!)
    const reach = new Map<string, { low: number; high: number }>()
    for (const { mark, seen } of along.members) {
      const ys =
        seen.as === 'disc'
          ? [seen.at.y - seen.radius, seen.at.y + seen.radius]
          : seen.corners.map(({ y }) => y)
      const { low, high } = reach.get(family(mark)) ?? { low: Infinity, high: -Infinity }
      reach.set(family(mark), { low: Math.min(low, ...ys), high: Math.max(high, ...ys) })
    }
    const bands = [...reach.values()].toSorted((a, b) => a.low - b.low)
    bands.slice(1).forEach(({ low }, i) => expect(low).toBeGreaterThan(bands[i]!.high))
    const counted = apart(given, RAISED, 1, 'both').across.over.flatMap((mark) =>
      mark.as === 'text' ? [Number.parseInt(mark.text, 10)] : [],
    )
    expect(counted.reduce((sum, count) => sum + count, 0)).toBe(countedIn(frame, given.stretch).length)
  })
})
