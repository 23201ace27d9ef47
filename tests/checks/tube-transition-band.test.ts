import { expect, test } from 'vitest'
import { judged, told } from '../support/judged'
import { fedRow, withTubes } from '../support/fedRow'
import { gph } from '../../src/units/flow'

const RULE = 'tube-transition-band'

const wanting = (gallons: number) => {
  const layout = fedRow({ racks: 1, feed: 'centre-split', riserAt: 'inlet-end', trimTurns: 1 / 2 }).layout()
  return { ...layout, settings: { ...layout.settings, targetLph: gph(gallons) } }
}

test('a row between 1,800 and 4,000 is told of, by hand from its flow', () => {
  // Re = 4 Q / (pi d nu): 6.2 gph are 6.52e-6 m3/s; d = 3.175e-3 m; nu at 20 C 1.0038e-6: 2,605.
  const [is] = judged(RULE, wanting(5.5))
  expect(Number(/^Drifting, (\d+) of 1800$/.exec(is!)![1])).toBeCloseTo(2605, -2)
  expect(told(RULE, wanting(5.5))[0]).toMatch(
    /^The tubes of A run at 6\.2 gph, neither surely smooth nor surely churned/,
  )
})

test('too much water is told of the pump, where what is wanted would run smooth', () => {
  expect(judged('pump-flow-fit', fedRow())).toHaveLength(1)
  expect(judged(RULE, fedRow())).toEqual([])
})

test('a valve is what helps where the flow wanted would run smooth and the pump fits', () => {
  expect(told(RULE, wanting(4))[0]).toMatch(/At the 4\.0 gph wanted they would not: set its trim valve\.$/)
})

test('churned flow for sure is no finding', () => {
  const fast = withTubes(fedRow({}, { pump: 'large' }), { microtubeMm: 12 * 25.4 })
  expect(judged(RULE, fast)).toEqual([])
})
