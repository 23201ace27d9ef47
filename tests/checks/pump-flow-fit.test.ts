import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { findingsOf, judged, mended, told } from '../support/judged'
import { fedRow } from '../support/fedRow'

const RULE = 'pump-flow-fit'

// 90 to 150 % of the flow wanted with all trim valves open: common practice, no source.
test('a pump that gives far more than is wanted is burnt in valves', () => {
  expect(judged(RULE, fedRow({}, { pump: 'middle' }))[0]).toMatch(/^Drifting, 1\d\.\d+ of 6$/)
  expect(told(RULE, fedRow({}, { pump: 'middle' }))[0]).toMatch(
    /of the 4\.0 gph wanted: the rest must be burnt in valves\./,
  )
})

test('no trim valve may hold it back, or nobody knows what it would give', () => {
  expect(judged(RULE, fedRow({ trimTurns: 1 / 2 }, { pump: 'middle' }))).toEqual([])
})

test('a pump that would fit is one press away, where the catalogue has one', () => {
  const big = fedRow({ racks: 3, lines: 5 }, { pump: 'extra-large' })
  for (const { mend } of findingsOf(RULE, big)) if (mend) expect(judged(RULE, mended(RULE, big))).toEqual([])
})

test('what is wanted is what the towers then get, on the mean', () => {
  const [finding] = findingsOf(RULE, fedRow({}, { pump: 'middle' }))
  expect(finding!.measured.value).toBeCloseTo(
    evaluate(fedRow({}, { pump: 'middle' }).layout()).bay.water.bay!.meanLph,
    6,
  )
})
