import { expect, test } from 'vitest'
import { judged, told } from '../support/judged'
import { fedRow } from '../support/fedRow'

const RULE = 'zone-flow-balance'

// 10 % between zones: common practice, no source; a hand sets a valve to 5 % either way.
test('one zone has nothing to be balanced with', () => {
  expect(judged(RULE, fedRow())).toEqual([])
})

test('two like rows on a short main are alike', () => {
  expect(judged(RULE, fedRow().row('B', [265, 145], { racks: 2, inlet: 'start' }))).toEqual([])
})

test('a row with its trim valve nearly shut gets less than its neighbour', () => {
  const held = fedRow().row('B', [265, 145], { racks: 2, inlet: 'start', trimTurns: 1 / 2 })
  expect(judged(RULE, held)[0]).toMatch(/^Drifting, \d+\.\d+ of 10$/)
  expect(told(RULE, held)[0]).toMatch(/^Zones differ by .* may be: towers of A get .*, those of B /)
})
