import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { cartsOf } from '../../src/checks/carts'
import { applyMend } from '../../src/layout/mend'
import { rankOf } from '../../src/model/finding'
import { toInches } from '../../src/units/length'
import { nameIn } from '../support/judged'
import { sallowFlats } from '../support/scenarios/sallowFlats'
import { inchesOf } from '../support/site'

/*
 * "Sallow Flats, six connected bays", an invented acre. Numbers: worked example of the trade notes, hand arithmetic; where
 * they follow from it, the sum stands beside.
 */
const layout = sallowFlats().layout()
const evaluation = evaluate(layout)
const { bay } = evaluation

describe('one acre', () => {
  test('324 racks, 10,368 towers, 93,312 plant sites in 108 blocks', () => {
    const racks = bay.built.flatMap(({ rack }) => rack ?? [])
    expect(racks).toHaveLength(108)
    expect(racks.reduce((sum, rack) => sum + rack.racks, 0)).toBe(324)
    expect([evaluation.towers, evaluation.sites]).toEqual([10_368, 93_312])
  })

  test('1,404 riser pairs on 2,808 feet', () => {
    const marks = bay.built.flatMap(({ sticks }) => sticks.map(({ mark }) => mark))
    expect(marks.filter((mark) => mark === 'BX')).toHaveLength(1404)
    expect(marks.filter((mark) => mark === 'RS-p' || mark === 'RS-s')).toHaveLength(2808)
    expect([...bay.levels.feet.values()].flat()).toHaveLength(2808)
  })

  test('43 in on each side of a valley post', () => {
    // 90 in of valley aisle less a 4 in post, halved.
    const ways = bay.aisles.filter(
      ({ other, along }) => along === 'face' && other !== undefined && nameIn(layout, other).startsWith('Valley post'),
    )
    expect(ways.length).toBeGreaterThan(0)
    expect(new Set(ways.map(({ widthMm }) => inchesOf(widthMm)))).toEqual(new Set([43]))
  })

  test('a 36 in cart comes alongside every row', () => {
    for (const { leftMm, rightMm } of cartsOf(bay).values())
      expect(toInches(Math.max(leftMm, rightMm))).toBeGreaterThanOrEqual(36)
  })
})

describe('what must be mended', () => {
  test('nothing, with the rails level row by row', () => {
    // A row of three racks stands on 355-3/4 in of a floor that falls 1 in in 40 ft: 0.74 in of shim.
    const shims = [...bay.levels.feet.values()].flat().map(({ shimMm }) => toInches(shimMm))
    expect(Math.max(...shims)).toBeCloseTo(355.75 / 480, 3)
    expect(evaluation.findings).toEqual([])
  })

  test('one level of rails over 242 ft would ask for too much shim under the southmost pair of blocks', () => {
    const level = { ...layout, settings: { ...layout.settings, datum: 'bay' as const } }
    const shims = evaluate(level).findings.filter(({ rule }) => rule === 'foot-shim-max')
    // From the northmost foot at 2352 + 360 - 2-1/8 to the southmost at 144 + 2-1/8 it is 2,563.75 / 480 = 5.34 in.
    // 36 rows stand past 4 in; of the others 36 past 1-1/2, and 18 of the northmost pair.
    expect(Math.max(...shims.map(({ measured }) => toInches(measured.value)))).toBeCloseTo(5.34, 2)
    const must = shims.filter((finding) => rankOf(finding) === 2)
    expect(must).toHaveLength(36)
    expect(must.every(({ parts }) => /^[1-6]A/.test(nameIn(layout, parts[0]!)))).toBe(true)
    expect(shims).toHaveLength(36 + 36 + 18)
    expect(must[0]?.mend).toEqual({ kind: 'level-rows' })
    expect(evaluate(applyMend(level, must[0]!.mend!)).findings).toEqual([])
  })
})
