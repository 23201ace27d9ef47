import { describe, expect, test } from 'vitest'
import { createGestures } from '../../src/canvas/gestures'
import { createPointing, type PagePointer } from '../../src/canvas/pointing'
import { createPlanner } from '../../src/store/planner'
import { toFloor, toScreen } from '../../src/store/view'
import { bay } from '../support/bay'
import { at } from '../support/site'

const table = () => {
  const planner = createPlanner(
    bay('40 x 60 ft')
      .row('Row 1', [100, 100], { racks: 1 })
      .drain('Drain', [
        [40, 300],
        [300, 300],
      ])
      .layout(),
  )
  const pointing = createPointing(planner, createGestures(planner))
  const event = (x: number, y: number, more: Partial<PagePointer> = {}): PagePointer => ({
    pointerId: 1,
    pointerType: 'mouse',
    px: { x, y },
    shift: false,
    ctrl: false,
    alt: false,
    atMs: 0,
    ...more,
  })
  const finger = (pointerId: number, x: number, y: number) => event(x, y, { pointerId, pointerType: 'touch' })
  return { planner, pointing, event, finger, view: () => planner.store.getState().view }
}

describe('two fingers', () => {
  test('pinch: the floor under both stays under both', () => {
    const { pointing, finger, view } = table()
    const before = [
      { x: 200, y: 300 },
      { x: 300, y: 300 },
    ].map((px) => toFloor(view(), px))
    pointing.press(finger(1, 200, 300))
    pointing.press(finger(2, 300, 300))
    pointing.move(finger(1, 150, 320))
    pointing.move(finger(2, 350, 320))
    const after = before.map((p) => toScreen(view(), p))
    expect(after[0]?.x).toBeCloseTo(150, 6)
    expect(after[1]?.x).toBeCloseTo(350, 6)
    expect(after[0]?.y).toBeCloseTo(320, 6)
  })

  test('stop what one finger had begun, and the last finger to leave draws nothing', () => {
    const { planner, pointing, finger, view } = table()
    const { layout } = planner.store.getState()
    const row = toScreen(view(), at(100, 160))
    pointing.press(finger(1, row.x, row.y))
    pointing.move(finger(1, row.x + 40, row.y))
    expect(planner.store.getState().preview).toBeDefined()
    pointing.press(finger(2, row.x + 140, row.y))
    expect(planner.store.getState().preview).toBeUndefined()
    pointing.release(finger(2, row.x + 140, row.y))
    pointing.move(finger(1, row.x + 90, row.y + 50))
    pointing.release(finger(1, row.x + 90, row.y + 50))
    expect(planner.store.getState().layout).toBe(layout)
  })
})

describe('two presses', () => {
  const points = ({ planner }: ReturnType<typeof table>) => {
    const drain = planner.store.getState().layout.parts[1]!
    return 'points' in drain ? drain.points.length : 0
  }

  const twice = (apartMs: number, apartPx: number, pointerType = 'mouse') => {
    const on = table()
    const { x, y } = toScreen(on.view(), at(200, 300))
    const event = (shiftPx: number, atMs: number) => on.event(x + shiftPx, y, { atMs, pointerType })
    on.pointing.press(event(0, 1000))
    on.pointing.release(event(0, 1050))
    on.pointing.press(event(apartPx, 1000 + apartMs))
    on.pointing.release(event(apartPx, 1050 + apartMs))
    return points(on)
  }

  test('soon after each other at one place are a double click', () => {
    expect(twice(200, 1)).toBe(3)
  })

  test('long after each other or far apart are two clicks', () => {
    expect(twice(900, 1)).toBe(2)
    expect(twice(200, 30)).toBe(2)
  })

  test('of a finger may lie further apart than those of a mouse', () => {
    expect([twice(200, 20), twice(200, 20, 'touch')]).toEqual([2, 3])
  })
})

test('a pointer that leaves drops what was under way', () => {
  const { planner, pointing, event, view } = table()
  const row = toScreen(view(), at(100, 160))
  pointing.press(event(row.x, row.y))
  pointing.move(event(row.x + 40, row.y))
  pointing.lose(1)
  expect(planner.store.getState()).toMatchObject({ preview: undefined, pointer: undefined })
})

test('what is dragged off the paper stays in sight at its edge, while the hand goes on', () => {
  const { planner, pointing, event, view } = table()
  planner.set({ size: { width: 800, height: 600 } })
  const row = toScreen(view(), at(100, 160))
  pointing.press(event(row.x, row.y))
  pointing.move(event(row.x + 40, row.y, { ctrl: true }))
  pointing.move(event(5000, -700, { ctrl: true }))
  pointing.release(event(5000, -700, { ctrl: true }))
  const [moved] = planner.store.getState().layout.parts
  const corner = toFloor(view(), { x: 800, y: 0 })
  expect('at' in moved! && moved.at.x).toBeCloseTo(corner.x, 1)
  const before = view()
  planner.set({ tool: 'hand' })
  pointing.press(event(400, 300))
  pointing.move(event(1400, 300))
  expect(toScreen(view(), { x: before.x, y: before.y }).x).toBeCloseTo(1000, 6)
})
