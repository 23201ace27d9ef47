import { describe, expect, test } from 'vitest'
import { setField } from '../../src/layout/setField'
import { commitEdited } from '../../src/sidebar/commitEdited'
import {
  copyNow,
  deleteNow,
  lockNow,
  mirrorNow,
  repeatNow,
  stepWithAisle,
  turnNow,
} from '../../src/sidebar/partActions'
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
    deleteNow(planner, [ROW])
    expect(labels(planner)).toEqual(['Turn Row 1', 'Mirror Row 1', 'Lock Row 1', 'Delete Row 1'])
    expect(stateOf(planner).layout.parts).toEqual([])
    expect(stateOf(planner).selection).toEqual([])
  })

  test('leaves a locked part where it stands', () => {
    const planner = oneRow()
    lockNow(planner, [ROW], true)
    const [locked] = stateOf(planner).layout.parts
    turnNow(planner, [ROW])
    expect(stateOf(planner).layout.parts[0]).toBe(locked)
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
