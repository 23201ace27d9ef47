import { describe, expect, test } from 'vitest'
import { setField } from '../../src/layout/setField'
import { commitEdited } from '../../src/sidebar/commitEdited'
import { copyNow, repeatNow, stepWithAisle } from '../../src/store/copying'
import { deleteNow, lockNow, mirrorNow, moveNow, toggleLockNow, turnNow } from '../../src/store/partDeeds'
import { createPlanner, type Planner } from '../../src/store/planner'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'

const oneRow = () => createPlanner(bay('40 x 96 ft').row('Row 1', [100, 300], { racks: 2 }).layout())
const ROW = 'rack-row-1'

const stateOf = ({ store }: Planner) => store.getState()
const labels = (planner: Planner) => stateOf(planner).history.done.map(({ label }) => label)

test('a copy gets a name of its own and is what is selected then', () => {
  const planner = oneRow()
  copyNow(planner, [ROW])
  const { layout, selection } = stateOf(planner)
  expect(layout.parts.map(({ name }) => name)).toEqual(['Row 1', 'Row 2'])
  expect(selection).toEqual(['rack-row-2'])
  expect(labels(planner)).toEqual(['Copy Row 1'])
})

describe('a copy lies', () => {
  const aisles = (planner: Planner) =>
    stateOf(planner).evaluation.bay.aisles.filter(
      ({ otherIs, along }) => otherIs === 'row' && along === 'face',
    )

  test('a work aisle beside its original, so that it warns of nothing new', () => {
    const planner = oneRow()
    copyNow(planner, [ROW])
    expect(aisles(planner)).toHaveLength(1)
    expect(aisles(planner)[0]!.widthMm).toBeGreaterThanOrEqual(inches(36) - 0.01)
  })

  test('to the other side where the house ends', () => {
    const planner = createPlanner(bay('40 x 96 ft').row('Row 1', [440, 300], { racks: 2 }).layout())
    copyNow(planner, [ROW])
    const [first, second] = stateOf(planner).layout.parts.map((part) => ('at' in part ? part.at.x : 0))
    expect(second).toBeLessThan(first!)
  })

  test('in the same wall, where it is a door', () => {
    const planner = createPlanner(bay('30 x 60 ft').door('Door', [0, 200], { heading: 0 }).layout())
    const door = stateOf(planner).layout.parts[0]!.id
    copyNow(planner, [door])
    const places = stateOf(planner).layout.parts.map((part) => ('at' in part ? part.at : undefined))
    expect(places[1]!.x).toBe(places[0]!.x)
    expect(places[1]!.y).toBeGreaterThan(places[0]!.y)
  })
})

test('three repeats at the spacing offered leave a work aisle between each and the next', () => {
  const planner = oneRow()
  const { bay: before } = stateOf(planner).evaluation
  const stepMm = stepWithAisle(before.built, 0, before.settings.workAisleMm)
  repeatNow(planner, [ROW], 3, stepMm, 0)
  const { evaluation, layout, selection } = stateOf(planner)
  expect(layout.parts).toHaveLength(4)
  expect(selection).toHaveLength(3)
  const between = evaluation.bay.aisles.filter(({ otherIs, along }) => otherIs === 'row' && along === 'face')
  expect(between).toHaveLength(3)
  for (const { widthMm } of between) expect(widthMm).toBeGreaterThanOrEqual(inches(36) - 0.01)
})

test('with nothing measured the spacing is the aisle alone', () => {
  expect(stepWithAisle([], 90, 900)).toBe(900)
})

describe('what is done to parts', () => {
  test('is one entry each, named after them', () => {
    const planner = oneRow()
    turnNow(planner, [ROW])
    mirrorNow(planner, [ROW], 'x')
    lockNow(planner, [ROW], true)
    toggleLockNow(planner, [ROW])
    deleteNow(planner, [ROW])
    expect(labels(planner)).toEqual([
      'Turn Row 1',
      'Mirror Row 1',
      'Lock Row 1',
      'Unlock Row 1',
      'Delete Row 1',
    ])
    expect(stateOf(planner).layout.parts).toEqual([])
    expect(stateOf(planner).selection).toEqual([])
  })

  test('leaves a locked part where it stands, and says why', () => {
    const planner = oneRow()
    expect(lockNow(planner, [ROW], true)).toBe('Row 1 locked in place')
    const { layout } = stateOf(planner)
    for (const deed of [turnNow, deleteNow]) expect(deed(planner, [ROW])).toBe('')
    expect(moveNow(planner, [ROW], 100, 0)).toBe('')
    expect(stateOf(planner).layout).toBe(layout)
    expect(stateOf(planner).notice?.text).toMatch(/^Locked in place: Row 1\. .*unlock first/)
  })

  test('is done to the loose ones of several, and says which one stayed', () => {
    const planner = oneRow()
    copyNow(planner, [ROW])
    toggleLockNow(planner, [ROW])
    const both = [ROW, 'rack-row-2']
    expect(deleteNow(planner, both)).toBe('Row 2 deleted; Row 1 is locked in place and stays')
    expect(stateOf(planner).layout.parts.map(({ name }) => name)).toEqual(['Row 1'])
    expect(stateOf(planner).selection).toEqual([ROW])
    expect(labels(planner).at(-1)).toBe('Delete Row 2')
  })

  test('leaves a door in its wall, whichever way it is pushed or turned', () => {
    const planner = createPlanner(bay('30 x 60 ft').door('Door', [180, 0]).layout())
    const door = stateOf(planner).layout.parts[0]!.id
    const { layout } = stateOf(planner)
    expect(moveNow(planner, [door], 0, inches(1))).toBe('Door cannot move')
    turnNow(planner, [door])
    expect(stateOf(planner).layout).toBe(layout)
    expect(moveNow(planner, [door], inches(1), 0)).toBeUndefined()
    expect(labels(planner)).toEqual(['Move Door'])
  })

  test('chains a row that is pushed against the end of another', () => {
    const planner = createPlanner(
      bay('40 x 96 ft')
        .row('Row 1', [100, 100], { racks: 1 })
        .row('Row 2', [100, 235], { racks: 1 })
        .layout(),
    )
    // The first row ends 120 in on; racks this near each other are meant to be one row.
    expect(moveNow(planner, ['rack-row-2'], 0, inches(-1))).toBeUndefined()
    for (let n = 0; n < 5 && stateOf(planner).layout.parts.length > 1; n += 1)
      moveNow(planner, ['rack-row-2'], 0, inches(-1))
    expect(labels(planner).at(-1)).toBe('Chain Row 2 on to Row 1')
    expect(stateOf(planner).selection).toEqual([ROW])
  })

  test('several parts go by their number', () => {
    const planner = oneRow()
    copyNow(planner, [ROW])
    deleteNow(planner, [ROW, 'rack-row-2'])
    expect(labels(planner).at(-1)).toBe('Delete 2 parts')
  })
})

test('a refused edit comes back as its sentence and leaves no entry', () => {
  const planner = oneRow()
  const before = stateOf(planner).layout
  const sentence = commitEdited(planner, 'Racks', (layout) => setField(layout, ROW, 'racks', 99))
  expect(sentence).toMatch(/20/)
  expect(stateOf(planner).layout).toBe(before)
  expect(labels(planner)).toEqual([])
})
