import { expect, test } from 'vitest'
import { judged, mended, told } from '../support/judged'
import { fedRow } from '../support/fedRow'

const RULE = 'pipe-velocity-max'

// 5 ft/s: footnote of the friction loss table for PVC class 160 pipe.
const thin = fedRow({ racks: 3, laterals: 1, lateral: 'pe-1/2' })

test('no more than 5 ft/s in a row as it comes', () => {
  expect(judged(RULE, fedRow())).toEqual([])
})

test('four lines on one 1/2 in lateral run faster, and a bigger one slower', () => {
  // 5.15 gpm through 0.622 in: 0.01147 ft3/s / 0.002110 ft2 = 5.4 ft/s.
  expect(Number(/^Drifting, ([\d.]+) of 5$/.exec(judged(RULE, thin)[0]!)![1])).toBeCloseTo(5.4, 1)
  expect(told(RULE, thin)[0]).toMatch(
    /in the laterals of A, 1\/2 in poly pipe; .* Give A laterals of 3\/4 in poly pipe\.$/,
  )
  expect(judged(RULE, mended(RULE, thin))).toEqual([])
})
