import { expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { partShapes } from '../../../src/sheets/floor/partShapes'
import { bay } from '../../support/bay'

const evaluation = evaluate(bay('30 x 50 ft').row('A', [63, 100], { racks: 2 }).layout())
const washes = (ratio: number) =>
  new Set(partShapes(evaluation, ratio).map((mark) => ('wash' in mark ? mark.wash : 'none')))
const pens = (ratio: number) => new Set(partShapes(evaluation, ratio).map(({ pen }) => pen))

test('a row is drawn to its last board from near, and as leaves and troughs from afar', () => {
  expect(washes(64)).toEqual(washes(16))
  expect(washes(64)).toContain('timber')
  expect(washes(360)).not.toContain('timber')
  expect(washes(360)).toContain('trough')
  expect(washes(1000)).toContain('crop')
})

test('laterals are left out where they would hide the troughs', () => {
  expect(pens(128)).toContain('water')
  expect(pens(192)).not.toContain('water')
})
