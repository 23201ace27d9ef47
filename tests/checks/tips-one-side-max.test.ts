import { expect, test } from 'vitest'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { rowStrength, saidIn, stance, tip } from '../support/strength'

const RULE = 'tips-one-side-max'
const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()
const said = (more: Parameters<typeof stance>[0]) =>
  saidIn(RULE, layout, rowStrength({ stance: stance(more) }))

// Worked example of the trade notes: four lines 18 in apart on rails 40 in apart: 18 in of 0.8 x 23.25 = 18.6 in.
test('the usual row bears one side hung', () => {
  expect(said({ tips: [tip('one-side', 120, 'Stands')] })).toEqual([])
})

// Two lines on rails 14 in apart: 10 in of 0.8 x 10.25 = 8.2 in.
test('a narrow row does not', () => {
  const narrow = { baseHalfMm: inches(10.25), oneSideMm: inches(10), oneSideLimitMm: inches(8.2) }
  expect(said({ ...narrow, tips: [tip('one-side', 90, 'Stands')] })).toEqual([
    'Shaky: With one side hung its towers pull A 10" off its middle, 8-3/16" is allowed: it tips at a push of 90 lb, where a person leans with 50 lb. Give A ground anchors at its braced pairs.',
  ])
  expect(said({ ...narrow, tips: [tip('one-side', 0, 'Tips')] })).toEqual([
    'Tips: With one side hung its towers pull A 10" off its middle, 8-3/16" is allowed: it tips by itself. Give A ground anchors at its braced pairs.',
  ])
})

// Ten towers on one rail over the edge of a 30 in base: 740 lb-in, 740 / 64 = 11.6 lb, hand arithmetic.
test('a row that a push tips with one side hung', () => {
  expect(said({ tips: [tip('one-side', 11.6, 'Tips')] })).toEqual([
    'Tips: With one side hung A tips at a push of 12 lb, where a person leans with 50 lb. Give A ground anchors at its braced pairs.',
  ])
  expect(said({ heldBy: 'anchored', tips: [tip('one-side', 11.6, 'Tips')] })).toEqual([])
})
