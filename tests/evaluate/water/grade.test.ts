import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { type RowAlone, rowAlone } from '../../../src/evaluate/water/rowAlone'
import { toGph } from '../../../src/units/flow'
import { bay } from '../../support/bay'

/**
 * Worked example of the trade notes, hand arithmetic: three racks on a floor that falls 1.5 % along them, rails on grade,
 * 1 in laterals straight, 36 in of 1/8 in tube, 4 gph on the average: 3.18 to 5.04 gph, a spread of 36.9 %. Their friction
 * factor is Churchill's, and they know one lateral where two here share a header, so a point and a half is allowed. Water
 * enters at the high end: what the lateral loses on its way down, the fall gives back more than twice over.
 */
const FALL_IN = 0.015 * 360

const onGrade = (datum: 'grade' | 'row', inlet: 'start' | 'end'): RowAlone => {
  const floor = bay('40 x 60 ft').level([0, 0], 0).level([0, 360], -FALL_IN)
  const sketch = floor.row('A', [165, 100], { lateral: 'pe-1', inlet }).settings({ datum })
  const evaluation = evaluate(sketch.layout())
  return rowAlone(evaluation.bay.built[0]!, evaluation.bay)!
}

test('rails on 1.5 % of grade feed from 3.18 to 5.04 gph: Starved', () => {
  const { figures, state } = onGrade('grade', 'start')
  expect(toGph(figures.least.flowLph)).toBeCloseTo(3.18, 1)
  expect(toGph(figures.most.flowLph)).toBeCloseTo(5.04, 1)
  expect(Math.abs(100 * figures.spread - 36.9)).toBeLessThan(1.5)
  expect(state).toBe('Starved')
})

test('it is the low end that gets most', () => {
  const { figures } = onGrade('grade', 'start')
  expect([figures.least.station, figures.most.station]).toEqual([1, 24])
})

test('level rails on the same floor drift by the lateral alone', () => {
  expect(Math.abs(100 * onGrade('row', 'start').figures.spread - 13.5)).toBeLessThan(1.5)
})

test('fed from the low end, fall and lateral add up: worse still', () => {
  expect(onGrade('grade', 'end').figures.spread).toBeGreaterThan(onGrade('grade', 'start').figures.spread)
})
