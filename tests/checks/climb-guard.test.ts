import { expect, test } from 'vitest'
import { climbedMpa } from '../../src/checks/climb'
import { toKsi } from '../../src/units/force'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { railOf, rowStrength, saidIn, span } from '../support/strength'

const RULE = 'climb-guard'
const row = (values = {}) => bay('40 x 60 ft').row('A', [165, 100], values).layout()

// PL/4 = 200 x 60 / 4 = 3,000 lb-in, over 0.05222 in³ 57.45 ksi, over 0.02786 in³ 108 ksi: hand arithmetic.
test('200 lb in the middle of 5 ft take conduit past any yield', () => {
  expect(toKsi(climbedMpa('conduit-1', inches(60)))).toBeCloseTo(57.45, 1)
  expect(toKsi(climbedMpa('conduit-3/4', inches(60)))).toBeCloseTo(107.7, 1)
})

test('the usual row has no step to climb on: its bearers lie 7 in up', () => {
  expect(saidIn(RULE, row(), rowStrength())).toEqual([])
})

// 3/4 in over 30 in: 200 x 30 / 4 = 1,500 lb-in over 0.02786 in³ = 53.8 ksi. Bearers on 30 in legs are a step.
test('bearers at the height of a knee, under a rail in reach', () => {
  const layout = row({ bearerTop: 30 })
  expect(saidIn(RULE, layout, rowStrength())).toEqual([
    'Proof-load: The gutter bearer of A is a step 30" up: a person who climbs or hangs from the rail, 3/4 in thin-wall conduit, takes it to 53.8 ksi; over 30.0 ksi it folds.',
  ])
  const high = rowStrength({ rails: [railOf([span(0, 30)], 95)] })
  expect(saidIn(RULE, layout, high)).toEqual([])
})

// 1-1/4 in over 12 in: 200 x 12 / 4 = 600 lb-in over 0.1022 in³ = 5.9 ksi.
test('a rail that bears a person is nothing to warn of', () => {
  const short = rowStrength({ rails: [railOf([span(0, 12, 'conduit-1-1/4')])] })
  expect(saidIn(RULE, row({ bearerTop: 30 }), short)).toEqual([])
})
