import { describe, expect, test } from 'vitest'
import { answerKey } from '../../src/canvas/keyboard'
import type { KeyPress } from '../../src/canvas/keys'
import { bay } from '../support/bay'
import { desk, type Desk } from '../support/pointing'

const yard = () =>
  desk(bay('40 x 60 ft').row('Row 1', [100, 100], { racks: 1 }).post('Post', [400, 400]).layout())

const state = ({ planner }: Desk) => planner.store.getState()

const press = ({ planner, gestures }: Desk, key: string, held: Partial<KeyPress> = {}) =>
  answerKey(planner, gestures, { key, shift: false, ctrl: false, alt: false, ...held })

const names = (on: Desk) => state(on).layout.parts.map(({ name }) => name)

describe('the tape by keys', () => {
  test('is hooked and let go with Enter, and says what it shows at every step', () => {
    const on = yard()
    expect(press(on, 't')).toBe('Measuring tape')
    expect(press(on, 'Enter')).toBe('Hooked')
    expect(press(on, 'ArrowRight')).toBe('1"')
    for (let n = 0; n < 29; n += 1) press(on, 'ArrowRight')
    for (let n = 0; n < 39; n += 1) press(on, 'ArrowUp')
    // 3-4-5: 30 in east and 40 in north are 50 in.
    expect(press(on, 'ArrowUp')).toBe(`4' 2"`)
    expect(press(on, 'Enter')).toBe(`4' 2"`)
    expect(on.gestures.shown.getState().overlay.measure).toBeDefined()
    expect(state(on).history.done).toEqual([])
  })

  test('lies there while the plan is looked at, and goes with the next tool', () => {
    const on = yard()
    on.planner.set({ tool: 'tape' })
    on.drag([100, 300], [100, 340])
    const { view } = state(on)
    expect(press(on, '+')).toBe('Zoomed in')
    expect(state(on).view.pxPerMm).toBeGreaterThan(view.pxPerMm)
    expect(press(on, 's')).toBe('Select and move')
    expect(on.gestures.shown.getState().overlay).toEqual({})
  })
})

describe('a part in hand', () => {
  const inHand = () => {
    const on = yard()
    on.planner.set({ tool: 'place', placing: 'obstacle/post', pointer: { x: 5000, y: 5000 } })
    return on
  }

  test('is dropped with Enter, and with Shift the next one is in hand at once', () => {
    const on = inHand()
    expect(press(on, 'Enter', { shift: true })).toMatch(/^Place Post/)
    expect(state(on).tool).toBe('place')
    press(on, 'ArrowRight')
    press(on, 'Enter')
    expect(state(on).tool).toBe('select')
    expect(names(on)).toHaveLength(4)
  })

  test('goes back on the shelf with Escape', () => {
    const on = inHand()
    press(on, 'ArrowRight')
    expect(press(on, 'Escape')).toBe('Stopped')
    expect(state(on)).toMatchObject({ tool: 'select', placing: undefined, preview: undefined })
    expect(names(on)).toEqual(['Row 1', 'Post'])
  })
})

describe('Escape', () => {
  test('takes one thing away at a time: the tape that lies there, the tool, what is selected', () => {
    const on = yard()
    on.planner.select(['rack-row-1'])
    on.planner.set({ tool: 'tape' })
    on.drag([100, 300], [100, 340])
    const seen = () => [
      on.gestures.shown.getState().overlay.measure !== undefined,
      state(on).tool,
      state(on).selection.length,
    ]
    const after = ['', '', ''].map(() => {
      press(on, 'Escape')
      return seen()
    })
    expect(after).toEqual([
      [false, 'tape', 1],
      [false, 'select', 1],
      [false, 'select', 0],
    ])
  })
})

test('in the middle of a drag no key changes the bay', () => {
  const on = yard()
  const { layout } = state(on)
  on.press([100, 160])
  on.move([130, 160], { isFree: true })
  for (const key of ['r', 'd', 'Delete', 'ArrowUp', 'l']) expect(press(on, key)).toBeUndefined()
  expect(state(on).layout).toBe(layout)
})
