import { expect, test } from 'vitest'
import { judged, mended, told } from '../support/judged'
import { fedRow } from '../support/fedRow'

const RULE = 'pump-lift-min'

const DEEP = {
  overflow: -113,
  drainBack: -114,
  running: -122.5,
  makeUp: -123.5,
  lowAlarm: -127,
  pumpOff: -129,
  bottom: -137,
}

test('a small pump lifts its 13 ft from a pit as it comes', () => {
  expect(judged(RULE, fedRow())).toEqual([])
})

test('and not from 100 in deeper: 122.5 and 69.6 in of lift, and what the tubes take at 4 gph', () => {
  // Tower tops at 69.625 in: 192.1 in. A tube of 0.125 x 36 in takes 7.1 in at 4 gph: worked example of the trade notes.
  const [is] = judged(RULE, fedRow({}, DEEP))
  expect(is).toMatch(/^Starved, 156 of 199\.\d+$/)
  expect(Number(is!.split(' of ')[1])).toBeCloseTo(122.5 + 69.625 + 7.1, 0)
  expect(told(RULE, fedRow({}, DEEP))[0]).toMatch(
    /does not lift water to the towers.* Give Pit a (middle|large) pump\.$/,
  )
  expect(judged(RULE, mended(RULE, fedRow({}, DEEP)))).toEqual([])
})

test('a dry row is told of once, of the pump', () => {
  expect(judged('tower-flow-even', fedRow({}, DEEP))).toEqual([])
  expect(judged('pump-flow-fit', fedRow({}, DEEP))).toEqual([])
})
