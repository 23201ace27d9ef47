import { describe, expect, test } from 'vitest'
import { hangingPlaceAt } from '../../src/canvas/hangingPlace'
import { handleAt, handlesOf, hitIndexOf } from '../../src/canvas/hit'
import { evaluate } from '../../src/evaluate/evaluate'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { at } from '../support/site'

const yard = () =>
  evaluate(
    bay('40 x 60 ft')
      .row('Row 1', [100, 100], { racks: 1 })
      .post('Post', [100, 150])
      .drain('Drain', [
        [40, 200],
        [300, 200],
      ])
      .obstacle('panel', 'Panel', { x: [300, 306], y: [400, 430] }, 0, { clearFront: 36 })
      .layout(),
  )

const hit = (x: number, y: number, reachIn = 0) =>
  hitIndexOf(yard().bay.built, null).at(at(x, y), inches(reachIn))

describe('what is under the pointer', () => {
  test('is the smallest thing there, so that nothing hides under a row', () => {
    expect(hit(100, 120)).toBe('rack-row-1')
    expect(hit(100, 150)).toBe('obstacle-1')
    expect(hit(100, 200)).toBe('drain-line-1')
  })

  test('is nothing on bare floor', () => {
    expect(hit(20, 20)).toBeUndefined()
  })

  test('may be a little beside a thin thing, as far as the pointer reaches', () => {
    expect(hit(200, 207)).toBeUndefined()
    expect(hit(200, 207, 3)).toBe('drain-line-1')
  })

  test('is what it points at before any smaller thing nearby, and else the nearest', () => {
    // On the drain, with the much smaller post in reach; then between the two.
    const { bay: built } = evaluate(
      bay('40 x 60 ft')
        .drain('Drain', [
          [40, 200],
          [300, 200],
        ])
        .post('Post', [180, 212])
        .layout(),
    )
    const nearest = (y: number) => hitIndexOf(built.built, null).at(at(180, y), inches(12))
    expect(nearest(200)).toBe('drain-line-1')
    expect(nearest(204)).toBe('drain-line-1')
    expect(nearest(209)).toBe('obstacle-1')
  })

  test('is floor that is kept clear only where nothing stands on it', () => {
    expect(hit(320, 415)).toBe('obstacle-2')
    const covered = evaluate(
      bay('40 x 60 ft')
        .obstacle('panel', 'Panel', { x: [300, 306], y: [400, 430] }, 0, { clearFront: 36 })
        .obstacle('tank', 'Tank', { x: [310, 340], y: [400, 430] }, 0)
        .layout(),
    )
    expect(hitIndexOf(covered.bay.built, null).at(at(325, 415), 0)).toBe('obstacle-2')
  })

  test('a box holds what stands wholly in it; floor that is kept clear may stick out', () => {
    const index = hitIndexOf(yard().bay.built, null)
    const within = (x0: number, y0: number, x1: number, y1: number) =>
      index.within({ x0: inches(x0), y0: inches(y0), x1: inches(x1), y1: inches(y1) })
    expect(within(0, 0, 480, 720)).toEqual(['rack-row-1', 'obstacle-1', 'drain-line-1', 'obstacle-2'])
    expect(within(60, 90, 140, 180)).toEqual(['obstacle-1'])
    expect(within(298, 398, 308, 432)).toEqual(['obstacle-2'])
  })
})

describe('handles', () => {
  test('are those of chosen parts that are not locked', () => {
    const { layout } = yard()
    expect(handlesOf(layout, ['rack-row-1']).map(({ id }) => id)).toEqual(['start', 'end'])
    const locked = { ...layout, parts: layout.parts.map((part) => ({ ...part, locked: true })) }
    expect(handlesOf(locked, ['rack-row-1'])).toEqual([])
  })

  test('the nearest one within reach is taken', () => {
    const handles = handlesOf(yard().layout, ['rack-row-1'])
    expect(handleAt(handles, at(101, 105), inches(10))?.id).toBe('start')
    expect(handleAt(handles, at(101, 215), inches(10))?.id).toBe('end')
    expect(handleAt(handles, at(101, 160), inches(10))).toBeUndefined()
  })
})

describe('the hanging place under the pointer', () => {
  test('is that of every tower, whichever way the row runs', () => {
    for (const heading of [0, 90, 180, 270] as const) {
      const evaluation = evaluate(
        bay('60 x 60 ft')
          .row('Row 1', [360, 360], { racks: 2, heading, takenOut: [5] })
          .layout(),
      )
      const built = evaluation.bay.built[0]!
      const heads = built.mouths.filter(({ role }) => role === 'tower-head')
      expect(heads).toHaveLength(63)
      for (const { at: head, station, line } of heads)
        expect(hangingPlaceAt(built.rack!, head, 0)).toEqual({ station, line })
    }
  })

  test('is there for a tower that is taken out, and not between towers', () => {
    const built = evaluate(
      bay('60 x 60 ft')
        .row('Row 1', [360, 360], { takenOut: [0] })
        .layout(),
    ).bay.built[0]!
    // Stations 15 in apart from half a pitch on; lines 18 in apart about the centreline; the row runs north.
    expect(hangingPlaceAt(built.rack!, at(333, 367.5), 0)).toEqual({ station: 1, line: 1 })
    expect(hangingPlaceAt(built.rack!, at(342, 367.5), 0)).toBeUndefined()
    expect(hangingPlaceAt(built.rack!, at(333, 350), 0)).toBeUndefined()
  })
})
