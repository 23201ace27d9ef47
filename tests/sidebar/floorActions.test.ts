import { expect, test } from 'vitest'
import { findingsOf } from '../../src/evaluate/8-checks'
import { setField } from '../../src/layout/setField'
import { bringInSight, jumpTo, mendNow } from '../../src/sidebar/floorActions'
import { placeOfPart } from '../../src/sidebar/placeWords'
import { wordsFor } from '../../src/sidebar/words'
import { createPlanner, type Planner } from '../../src/store/planner'
import { toScreen } from '../../src/store/view'
import { inches } from '../../src/units/length'
import { firstTry } from '../support/firstTry'

const stateOf = ({ store }: Planner) => store.getState()

/** The gap between the north block's middle row and the post that its first try leaves too narrow. */
const postGap = (planner: Planner) => {
  const { evaluation, layout } = stateOf(planner)
  const names = wordsFor(layout.parts, 'feet-inches')
  return findingsOf(evaluation.bay).find(
    ({ rule, parts }) =>
      rule === 'aisle-width-min' &&
      parts.map(names.name).includes('N2') &&
      parts.map(names.name).includes('Post'),
  )
}

const mendPostGap = (planner: Planner): void => {
  const finding = postGap(planner)!
  mendNow(planner, finding, finding.mend!, wordsFor(stateOf(planner).layout.parts, 'feet-inches'))
}

test('a jump selects the parts and puts the place in the middle of the screen', () => {
  const planner = createPlanner(firstTry())
  planner.set({ size: { width: 700, height: 500 } })
  const finding = postGap(planner)!
  jumpTo(planner, finding)
  const { view, selection, finding: key } = stateOf(planner)
  expect(toScreen(view, finding.at).x).toBeCloseTo(350)
  expect(toScreen(view, finding.at).y).toBeCloseTo(250)
  expect([...selection].sort()).toEqual([...finding.parts].sort())
  expect(key).toBe(finding.key)
})

// The gap of 22 in and its mend of 14 in: worked example of the trade notes, hand arithmetic.
test('one press mends the 22 in gap, and one undo brings it back', () => {
  const planner = createPlanner(firstTry())
  expect(postGap(planner)?.measured.value).toBeCloseTo(inches(22), 6)
  mendPostGap(planner)
  expect(postGap(planner)).toBeUndefined()
  expect(stateOf(planner).history.done.map(({ label }) => label)).toEqual([`Move N1, N2 and N3 14" north`])
  planner.undo()
  expect(postGap(planner)?.measured.value).toBeCloseTo(inches(22), 6)
})

test('a mend moves no part of a block that is partly locked, and names what is', () => {
  const bay = firstTry()
  const row = bay.parts.find(({ name }) => name === 'N2')!
  const locked = setField(bay, row.id, 'locked', true)
  const planner = createPlanner(locked.ok ? locked.layout : bay)
  mendPostGap(planner)
  expect(postGap(planner)).toBeDefined()
  expect(stateOf(planner).history.done).toEqual([])
  expect(stateOf(planner).notice?.text).toBe(
    'Locked in place: N2. Nothing was moved; unlock first, then mend.',
  )
})

test('a part is brought in sight only where it is out of it', () => {
  const planner = createPlanner(firstTry())
  planner.set({ size: { width: 700, height: 500 } })
  planner.fit()
  const fitted = stateOf(planner).view
  bringInSight(planner, 'rack-row-1')
  expect(stateOf(planner).view).toBe(fitted)
  planner.set({ view: { ...fitted, x: fitted.x + inches(10_000) } })
  bringInSight(planner, 'rack-row-1')
  const row = stateOf(planner).layout.parts.find(({ id }) => id === 'rack-row-1')!
  expect(toScreen(stateOf(planner).view, placeOfPart(row)).x).toBeCloseTo(350)
  expect(stateOf(planner).view.pxPerMm).toBe(fitted.pxPerMm)
})
