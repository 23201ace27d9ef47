import { describe, expect, test } from 'vitest'
import { kindOf } from '../../src/parts/index'
import { bay } from '../support/bay'
import { desk, type Desk } from '../support/pointing'
import { inchesOf } from '../support/site'

/** Two rows of one rack running north, their centrelines 120 in apart, and a post. */
const yard = () =>
  bay('40 x 60 ft')
    .row('Row 1', [100, 100], { racks: 1 })
    .row('Row 2', [220, 100], { racks: 1 })
    .post('Post', [400, 400])
    .drain('Drain', [
      [60, 500],
      [300, 500],
    ])
    .layout()

const state = ({ planner }: Desk) => planner.store.getState()
const part = (on: Desk, name: string) => state(on).layout.parts.find((one) => one.name === name)!
const place = (on: Desk, name: string) => {
  const one = part(on, name)
  const at = 'points' in one ? one.points[0]! : one.at
  return [inchesOf(at.x), inchesOf(at.y)]
}
const chosen = (on: Desk) => {
  const { layout, selection } = state(on)
  return layout.parts.filter(({ id }) => selection.includes(id)).map(({ name }) => name)
}

describe('a drag', () => {
  test('moves a row and is one entry of the history', () => {
    const on = desk(yard())
    on.drag([100, 160], [130, 171], { isFree: true })
    expect(place(on, 'Row 1')).toEqual([130, 111])
    expect(state(on).history.done.map(({ label }) => label)).toEqual(['Move Row 1'])
    on.planner.undo()
    expect(place(on, 'Row 1')).toEqual([100, 100])
  })

  test('shows what it would make before it is let go, and keeps nothing yet', () => {
    const on = desk(yard())
    const before = state(on).layout
    on.press([100, 160])
    on.move([150, 160], { isFree: true })
    expect(state(on).layout).toBe(before)
    expect(
      inchesOf(state(on).evaluation.layout.parts.flatMap((one) => ('at' in one ? one.at.x : []))[0]!),
    ).toBe(150)
  })

  test('given up with Escape leaves the very same layout', () => {
    const on = desk(yard())
    const { layout, history } = state(on)
    on.press([100, 160])
    on.move([150, 160])
    expect(on.gestures.cancel()).toBe(true)
    on.release([150, 160])
    expect(state(on).layout).toBe(layout)
    expect(state(on).history).toBe(history)
    expect(state(on).preview).toBeUndefined()
    expect(state(on).evaluation.layout).toBe(layout)
  })

  test('of a hand that only shakes is a click', () => {
    const on = desk(yard())
    const { layout } = state(on)
    on.drag([100, 160], [100.5, 160])
    expect(state(on).layout).toBe(layout)
    expect(chosen(on)).toEqual(['Row 1'])
  })

  test('moves all that is chosen together', () => {
    const on = desk(yard())
    on.click([100, 160])
    on.click([220, 160], { shift: true })
    on.drag([100, 160], [120, 160], { isFree: true })
    expect(place(on, 'Row 1')).toEqual([120, 100])
    expect(place(on, 'Row 2')).toEqual([240, 100])
    expect(state(on).history.done.map(({ label }) => label)).toEqual(['Move 2 parts'])
  })

  test('of a locked part moves nothing and says why', () => {
    const layout = yard()
    const on = desk({ ...layout, parts: layout.parts.map((one) => ({ ...one, locked: true })) })
    const before = state(on).layout
    on.press([100, 160])
    on.move([150, 160])
    expect(on.gestures.shown.getState().overlay.note).toBe('Locked in place')
    on.release([150, 160])
    expect(state(on).layout).toBe(before)
  })

  test('that ends where another row begins chains the two', () => {
    const on = desk(yard())
    on.drag([220, 160], [100, 281], { isFree: true })
    expect(state(on).layout.parts.map(({ name }) => name)).toEqual(['Row 1', 'Post', 'Drain'])
    expect(part(on, 'Row 1')).toMatchObject({ racks: 2 })
    expect(state(on).history.done.map(({ label }) => label)).toEqual(['Chain Row 2 on to Row 1'])
    expect(chosen(on)).toEqual(['Row 1'])
  })
})

describe('handles', () => {
  test('extend a row rack by rack, and only in whole racks', () => {
    const on = desk(yard())
    on.click([100, 160])
    on.press([100, 220])
    on.move([100, 270])
    const racks = () => {
      const row = state(on).evaluation.layout.parts[0]!
      return row.kind === 'rack-row' && row.racks
    }
    expect(racks()).toBe(1)
    on.move([100, 290])
    expect(racks()).toBe(2)
    on.move([101, 405])
    expect(racks()).toBe(3)
    on.release([101, 405])
    expect(part(on, 'Row 1')).toMatchObject({ racks: 3 })
    expect(state(on).history.done).toHaveLength(1)
  })

  test('that are pressed and not dragged stay where they are, whatever is near to line up with', () => {
    const on = desk(
      bay('40 x 60 ft')
        .drain('Drain', [
          [60, 498],
          [300, 498],
        ])
        .post('Post', [61, 400])
        .layout(),
    )
    on.click([200, 498])
    on.click([61, 499])
    expect(state(on).history.done).toEqual([])
    // Dragged as little as a drag can be, the same point lines up.
    on.drag([61, 499], [62.5, 499])
    expect(state(on).history.done.map(({ label }) => label)).toEqual(['Reshape Drain'])
  })

  test('belong to what is chosen: without a choice the same press takes the row itself', () => {
    const on = desk(yard())
    on.drag([100, 219], [100, 400], { isFree: true })
    expect(part(on, 'Row 1')).toMatchObject({ racks: 1 })
    expect(place(on, 'Row 1')).toEqual([100, 281])
  })

  test('are large enough for a finger', () => {
    const on = desk(yard(), 1)
    on.click([100, 160])
    on.drag([100, 200], [100, 320], { isTouch: true })
    expect(part(on, 'Row 1')).toMatchObject({ racks: 2 })
  })

  test('move the points of a line; a double click adds one and Alt takes it off', () => {
    const on = desk(yard())
    on.click([200, 500])
    on.click([200, 500], { clicks: 2 })
    expect(part(on, 'Drain')).toMatchObject({ points: { length: 3 } })
    on.drag([200, 500], [210, 540], { isFree: true })
    const points = () => {
      const drain = part(on, 'Drain')
      return 'points' in drain ? drain.points.map(({ x, y }) => [inchesOf(x), inchesOf(y)]) : []
    }
    expect(points()).toEqual([
      [60, 500],
      [210, 540],
      [300, 500],
    ])
    on.click([210, 540], { alt: true })
    expect(points()).toEqual([
      [60, 500],
      [300, 500],
    ])
    expect(state(on).history.done).toHaveLength(3)
  })
})

describe('choosing', () => {
  test('a click chooses, Shift adds and takes away, bare floor lets go', () => {
    const on = desk(yard())
    on.click([100, 160])
    expect(chosen(on)).toEqual(['Row 1'])
    on.click([400, 400], { shift: true })
    expect(chosen(on)).toEqual(['Row 1', 'Post'])
    on.click([100, 160], { shift: true })
    expect(chosen(on)).toEqual(['Post'])
    on.click([20, 20])
    expect(chosen(on)).toEqual([])
  })

  test('a box chooses what stands wholly in it, and with Shift adds that', () => {
    const on = desk(yard())
    on.drag([10, 60], [160, 260])
    expect(chosen(on)).toEqual(['Row 1'])
    on.drag([380, 380], [420, 420], { shift: true })
    expect(chosen(on)).toEqual(['Row 1', 'Post'])
    on.drag([160, 60], [230, 260])
    expect(chosen(on)).toEqual([])
  })

  test('never becomes an entry of the history', () => {
    const on = desk(yard())
    on.click([100, 160])
    on.drag([10, 60], [160, 260])
    expect(state(on).history.done).toEqual([])
  })

  test('Alt takes the tower under the pointer out, and puts it back', () => {
    const on = desk(yard())
    const { evaluation } = state(on)
    const head = evaluation.bay.built[0]!.mouths.find(
      ({ role, station, line }) => role === 'tower-head' && station === 3 && line === 2,
    )!
    const spot = [inchesOf(head.at.x), inchesOf(head.at.y)] as const
    on.click(spot, { alt: true })
    expect(part(on, 'Row 1')).toMatchObject({ takenOut: [2 * 4 + 1] })
    on.click(spot, { alt: true })
    expect(part(on, 'Row 1')).toMatchObject({ takenOut: [] })
  })
})

describe('placing', () => {
  const holding = (key: string) => {
    const on = desk(yard())
    on.planner.set({ tool: 'place', placing: key })
    return on
  }

  test('a part in hand follows the pointer, complete, and is dropped by a click', () => {
    const on = holding('rack-row/rack-row')
    on.move([380, 400], { isFree: true })
    expect(state(on).layout.parts).toHaveLength(4)
    expect(state(on).evaluation.towers).toBe(2 * 32 + 96)
    on.click([380, 400], { isFree: true })
    const dropped = part(on, 'Row 3')
    expect(kindOf(dropped).title).toBe('Rack row')
    expect(chosen(on)).toEqual(['Row 3'])
    expect(state(on).tool).toBe('select')
    expect(state(on).placing).toBeUndefined()
    expect(state(on).history.done.map(({ label }) => label)).toEqual(['Place Row 3'])
  })

  test('with Shift the next one is in hand at once', () => {
    const on = holding('obstacle/post')
    on.click([300, 600], { shift: true, isFree: true })
    on.click([340, 600], { isFree: true })
    expect(state(on).layout.parts).toHaveLength(6)
    expect(state(on).tool).toBe('select')
  })

  test('obstacles are called by what they are, rows are counted', () => {
    const on = holding('obstacle/heater')
    on.click([300, 600], { isFree: true })
    on.planner.set({ tool: 'place', placing: 'obstacle/post' })
    on.click([340, 600], { isFree: true })
    expect(
      state(on)
        .layout.parts.map(({ name }) => name)
        .slice(-2),
    ).toEqual(['Heater 1', 'Post 1'])
  })

  test('Escape puts it back on the shelf', () => {
    const on = holding('rack-row/rack-row')
    const { layout } = state(on)
    on.move([380, 400])
    on.gestures.cancel()
    on.planner.set({ tool: 'select', placing: undefined })
    expect(state(on).layout).toBe(layout)
    expect(state(on).evaluation.layout).toBe(layout)
  })

  test('a rack dropped against the end of a row is chained on to it', () => {
    const on = holding('rack-row/single-rack')
    on.click([100, 281], { isFree: true })
    expect(part(on, 'Row 1')).toMatchObject({ racks: 2 })
    expect(state(on).layout.parts).toHaveLength(4)
    expect(chosen(on)).toEqual(['Row 1'])
  })

  test('a door goes into the wall it is dropped at, and into the next one when it is dragged there', () => {
    const on = holding('opening/door')
    on.click([-3, 300])
    expect(part(on, 'Door 1')).toMatchObject({ at: { x: 0 }, heading: 0 })
    on.drag([0, 300], [300, 5])
    expect(part(on, 'Door 1')).toMatchObject({ at: { y: 0 }, heading: 90 })
    expect(state(on).history.done.map(({ label }) => label)).toEqual(['Place Door 1', 'Move Door 1'])
  })
})

describe('the hand and the tape', () => {
  test('the hand moves the paper and nothing on it', () => {
    const on = desk(yard())
    const { layout } = state(on)
    on.planner.set({ tool: 'hand' })
    on.press([100, 160])
    on.move([110, 160])
    expect(state(on).view.x).toBeCloseTo(-254, 6)
    on.release([110, 160])
    expect(state(on).layout).toBe(layout)
  })

  test('the tape is dragged, or clicked at both ends, and lies there to be read', () => {
    const measured = (on: Desk) => {
      const { measure } = on.gestures.shown.getState().overlay
      return measure && [inchesOf(measure.to.x - measure.from.x), inchesOf(measure.to.y - measure.from.y)]
    }
    const on = desk(yard())
    on.planner.set({ tool: 'tape' })
    on.drag([10, 600], [40, 640], { isFree: true })
    expect(measured(on)).toEqual([30, 40])
    on.move([200, 640])
    expect(measured(on)).toEqual([30, 40])
    on.click([10, 610], { isFree: true })
    on.move([30, 650], { isFree: true })
    expect(measured(on)).toEqual([20, 40])
    on.press([22, 615], { isFree: true })
    expect(measured(on)).toEqual([12, 5])
    expect(state(on).history.done).toEqual([])
  })

  test('another tool ends what was under way', () => {
    const on = desk(yard())
    on.planner.set({ tool: 'tape' })
    on.drag([10, 600], [40, 640])
    on.planner.set({ tool: 'select' })
    expect(on.gestures.shown.getState()).toEqual({ overlay: {}, cursor: 'default', isBusy: false })
  })
})
