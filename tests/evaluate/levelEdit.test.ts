import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { levelEditOf } from '../../src/evaluate/levelEdit'
import { levelStack, type LevelKind } from '../../src/evaluate/levelStack'
import type { Layout } from '../../src/layout/schema'
import { inches } from '../../src/units/length'
import { writerFor } from '../../src/units/writer'
import { bay } from '../support/bay'
import { at, inchesOf } from '../support/site'

const writer = writerFor('feet-inches')
const place = at(100, 150)

const stackOf = (layout: Layout, part: string) => levelStack(evaluate(layout), part, { at: place }).levels

const levelOf = (layout: Layout, part: string, kind: LevelKind, owner = part) =>
  stackOf(layout, part).find((level) => level.kind === kind && level.part === owner)!

/** Sets a level of a part's stack, in inches: where it then is, and what stopped it. */
const set = (layout: Layout, part: string, kind: LevelKind, toIn: number, owner = part) => {
  const level = levelOf(layout, part, kind, owner)
  const done = levelEditOf(evaluate(layout), level)!.set(layout, inches(toIn), writer)
  return {
    layout: done.layout,
    atIn: inchesOf(levelOf(done.layout, part, kind, owner).levelMm),
    stopped: done.stopped,
  }
}

const pit = () =>
  bay('40 x 60 ft')
    .pit('Pit', { x: [100, 136], y: [100, 214] }, { rim: 1, overflow: -13, bottom: -37 })
    .layout()

describe('a level of a pit', () => {
  test('goes where it is wanted between its neighbours', () => {
    // Make-up opens at -23.5 in, low alarm at -27: running may stand anywhere over the first and under drain-back at -14.
    expect(set(pit(), 'sump-1', 'runningMm', -20)).toMatchObject({ atIn: -20, stopped: '' })
  })

  test('stops at a neighbour and says which', () => {
    expect(set(pit(), 'sump-1', 'runningMm', -30)).toMatchObject({
      atIn: -23.5,
      stopped: 'It stops at the level at which make-up opens.',
    })
    // Drain-back keeps 1 in under the overflow, which stands at -13.
    expect(set(pit(), 'sump-1', 'drainBackMm', -5)).toMatchObject({
      atIn: -14,
      stopped: 'It stops 1" under the overflow.',
    })
  })
})

const drained = () =>
  bay('40 x 60 ft')
    .row('Row 1', [100, 100], { racks: 1 })
    .drain(
      'Drain',
      [
        [40, 205],
        [300, 205],
      ],
      { startInvert: -12 },
    )
    .layout()

describe('an invert of a drain', () => {
  test('takes the whole line with it, at whatever place it is set', () => {
    const layout = drained()
    const before = stackOf(layout, 'rack-row-1')
    const invertIn = inchesOf(levelOf(layout, 'rack-row-1', 'invert', 'drain-line-1').levelMm)
    const after = set(layout, 'rack-row-1', 'invert', invertIn - 2, 'drain-line-1')
    expect(after.atIn).toBeCloseTo(invertIn - 2, 2)
    const lowIn = (levels: typeof before) => inchesOf(levels.find(({ kind }) => kind === 'low-end')!.levelMm)
    expect(lowIn(stackOf(after.layout, 'rack-row-1'))).toBeCloseTo(lowIn(before) - 2, 2)
  })
})

describe('a level of a row', () => {
  test('the bearers take trough and tip with them', () => {
    const layout = drained()
    const lift = set(layout, 'rack-row-1', 'bearer-top', 9)
    expect(lift.atIn).toBe(9)
    const [was, is] = [layout, lift.layout].map((one) => stackOf(one, 'rack-row-1'))
    for (const kind of ['tip', 'invert-high', 'invert-outlet'] as const) {
      const [a, b] = [was, is].map((levels) => levels!.find((one) => one.kind === kind)!.levelMm)
      // On runners the bearers lie at 5-1/2 + 1-1/2 = 7 in; now 2 in higher.
      expect(inchesOf(b! - a!)).toBeCloseTo(2, 2)
    }
    expect(set(layout, 'rack-row-1', 'bearer-top', -3)).toMatchObject({
      atIn: 0,
      stopped: 'It stops at the rack datum.',
    })
  })

  test('the tip moves in its trough, and stops at lip and invert', () => {
    const layout = drained()
    const tipIn = inchesOf(levelOf(layout, 'rack-row-1', 'tip').levelMm)
    expect(set(layout, 'rack-row-1', 'tip', tipIn + 0.5).atIn).toBeCloseTo(tipIn + 0.5, 2)
    const up = set(layout, 'rack-row-1', 'tip', tipIn + 30)
    expect(up.stopped).toBe('It stops at the lip of its trough.')
    expect(up.atIn).toBeCloseTo(inchesOf(levelOf(layout, 'rack-row-1', 'lip-high').levelMm), 2)
    const down = set(layout, 'rack-row-1', 'tip', tipIn - 30)
    expect(down.stopped).toBe('It stops at the invert of its trough.')
  })

  test('the tip is held up by a longer row, since all tips hang at one level', () => {
    const layout = bay('40 x 60 ft')
      .row('Row 1', [100, 100], { racks: 1 })
      .row('Long one', [250, 100], { racks: 3 })
      .layout()
    const tipIn = inchesOf(levelOf(layout, 'rack-row-1', 'tip').levelMm)
    expect(set(layout, 'rack-row-1', 'tip', tipIn - 0.5)).toMatchObject({
      atIn: tipIn,
      stopped: 'All tips hang at one level, and Long one asks for this one.',
    })
  })

  test('what follows from others is not free', () => {
    const layout = drained()
    const evaluation = evaluate(layout)
    const free = stackOf(layout, 'rack-row-1')
      .filter((level) => levelEditOf(evaluation, level))
      .map(({ name }) => name)
    expect(free).toEqual(['Tower tip', 'Bearer top', 'Drain invert', 'Drain low end'])
  })
})
