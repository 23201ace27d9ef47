import { describe, expect, test } from 'vitest'
import { levelBand } from '../../../src/app/drawer/levelBand'
import { settingsSchema } from '../../../src/layout/settings'
import { gph } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { handRow } from './handRow'

const row = handRow([{ fedAt: [0], stations: [{ along: 15, gph: [4, 0], head: 7 }] }])

const bandAt = (outletErrorMm: number) =>
  levelBand(row.feed, row.water, { ...settingsSchema.parse({}), outletErrorMm })

describe('a tube end that is off', () => {
  // Worked example of the trade notes, hand arithmetic: 1/2 in of level is 6.3 % of the flow of a 1/8 in tube of 36 in at
  // 4 gph and 20 C, either way; stated to a tenth, and to one side or the other by some tenths, since the law bends.
  test('by 1/2 in takes or gives some 6.3 % of 4 gph through 36 in of 1/8 in tube', () => {
    const { lowLph, highLph, mostLost } = bandAt(inches(1 / 2))
    const less = 1 - lowLph[0]! / gph(4)
    const more = highLph[0]! / gph(4) - 1
    expect((less + more) / 2).toBeCloseTo(0.063, 2.5)
    expect(less).toBeGreaterThan(more)
    expect(mostLost).toBeCloseTo(less)
  })

  test('in its place changes nothing', () => {
    expect(bandAt(0).lowLph[0]).toBeCloseTo(gph(4), 6)
    expect(bandAt(0).mostLost).toBeCloseTo(0)
  })

  test('far too high runs dry, and never backwards', () => {
    expect(bandAt(inches(20)).lowLph[0]).toBe(0)
    expect(bandAt(inches(20)).mostLost).toBe(1)
  })

  test('of a tower that gets nothing is no loss', () => {
    expect(bandAt(inches(1 / 2)).lowLph[1]).toBe(0)
  })
})
