import { describe, expect, test } from 'vitest'
import { aisleWidths } from '../../src/canvas/aisleWidths'
import { bay } from '../support/bay'
import { desk, type Desk } from '../support/pointing'
import { inchesOf } from '../support/site'

/** Leaves and frame of these rows reach 33 in from their centreline; rails, gutters and leaves 6 in past both ends. */
const yard = () =>
  bay('40 x 60 ft')
    .row('Row 1', [60, 100], { racks: 1 })
    .row('Row 2', [220, 100], { racks: 1 })
    .post('Post', [400, 400])

const x = (on: Desk, index = 1) => {
  const part = on.planner.store.getState().layout.parts[index]!
  return 'at' in part ? inchesOf(part.at.x) : Number.NaN
}

const widest = (on: Desk) =>
  on.planner.store.getState().evaluation.bay.aisles.find(({ otherIs }) => otherIs === 'row')!

describe('what is dragged lines up', () => {
  test('with a work aisle, measured leaf to leaf', () => {
    const on = desk(yard().layout())
    on.press([220, 160])
    // A hand that stops short by less than 8 px of 4 to the inch.
    const over = inchesOf(widest(on).widthMm) - 36
    on.move([220 - over + 1.5, 190.3])
    expect(on.reasons()).toContain('36" work aisle to Row 1')
    on.release([220 - over + 1.5, 190.3])
    expect(inchesOf(widest(on).widthMm)).toBe(36)
  })

  test('in y with its own reason, apart from x', () => {
    const on = desk(yard().layout())
    on.press([220, 160])
    on.move([300.3, 161])
    expect(on.reasons()).toContain('in line with Row 1')
    expect(on.reasons()).toHaveLength(2)
  })

  test('with the same aisle on both sides', () => {
    const on = desk(yard().row('Row 3', [420, 100], { racks: 1 }).layout())
    on.press([220, 160])
    on.move([241.4, 165])
    expect(on.reasons()[0]).toMatch(/^same aisle both sides, /)
    on.release([241.4, 165])
    expect(x(on)).toBe(240)
  })

  test('rows with rows only, and with the drain that takes their water', () => {
    const on = desk(
      yard()
        .post('Post 2', [330, 600])
        .drain('Drain', [
          [20, 330],
          [340, 330],
        ])
        .layout(),
    )
    const outlet = on.planner.store
      .getState()
      .evaluation.bay.built[1]!.mouths.find(({ role }) => role === 'trough-outlet')!
    const down = 330 - inchesOf(outlet.at.y)
    on.press([220, 160])
    on.move([330.4, 160 + down + 1.2])
    expect(on.reasons()).toEqual([`27' 6" from the west wall string`, 'outlets over Drain'])
  })

  test('with whole inches from the wall strings where nothing else is near', () => {
    const on = desk(yard().layout())
    on.press([400, 400])
    on.move([371.3, 520.4])
    expect(on.reasons()).toEqual([`30' 11" from the west wall string`, `43' 4" from the south wall string`])
    on.release([371.3, 520.4])
    expect(x(on, 2)).toBe(371)
  })

  test('with nothing while Ctrl is held', () => {
    const on = desk(yard().layout())
    on.press([400, 400])
    on.move([371.3, 520.4], { isFree: true })
    expect(on.reasons()).toEqual([])
    on.release([371.3, 520.4], { isFree: true })
    expect(x(on, 2)).toBe(371.3)
  })

  test('only within 8 px on the screen, however far that is on the floor', () => {
    const reasons = (pxPerInch: number) => {
      const on = desk(yard().layout(), pxPerInch)
      on.press([400, 400])
      // 3 in west of the middle of Row 2.
      on.move([217, 500])
      return on.reasons()
    }
    expect(reasons(2)[0]).toBe('centred on Row 2')
    expect(reasons(4)[0]).toBe(`18' 1" from the west wall string`)
  })

  test('in whole centimetres for a metric builder', () => {
    const on = desk(yard().settings({ units: 'metric' }).layout())
    on.press([400, 400])
    on.move([371.3, 520.4])
    expect(on.reasons()).toEqual(['9430 mm from the west wall string', '13220 mm from the south wall string'])
  })

  test('never with itself, nor with what is dragged along', () => {
    const on = desk(yard().layout())
    on.click([60, 160])
    on.click([220, 160], { shift: true })
    on.press([60, 160])
    on.move([60.3, 200])
    expect(on.reasons().filter((reason) => reason.includes('Row'))).toEqual([])
  })
})

describe('aisle widths on purpose', () => {
  const widths = (workAisle: number, cart: number) =>
    aisleWidths(bay('30 x 96 ft').settings({ workAisle, cart }).layout().settings).map(
      ({ widthMm, words }) => [inchesOf(widthMm), words],
    )

  test('are each offered once, narrowest first', () => {
    expect(widths(36, 24)).toEqual([
      [36, 'work aisle'],
      [48, 'main aisle'],
      [72, 'aisle at a door'],
    ])
    expect(widths(36, 30)).toEqual([
      [36, 'work aisle'],
      [42, 'cart aisle'],
      [48, 'main aisle'],
      [72, 'aisle at a door'],
    ])
  })
})
