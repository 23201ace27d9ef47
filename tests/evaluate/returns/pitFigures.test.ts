import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { pitFigures, systemWater, warmingInADay } from '../../../src/evaluate/returns/pitFigures'
import { setSettings } from '../../../src/layout/bayEdits'
import { HOURS_PER_DAY } from '../../../src/units/time'
import { cubicMetres, gallons, toGallons } from '../../../src/units/volume'
import { toGpm } from '../../../src/units/flow'
import { bay as sketch } from '../../support/bay'
import { kestrelBend } from '../../support/scenarios/kestrelBend'

const layout = kestrelBend().layout()
const { bay } = evaluate(layout)
const pit = layout.parts.find(({ kind }) => kind === 'sump')!.id
const figures = pitFigures(bay, pit)!
const system = systemWater(bay)

describe('the sample bay’s pit', () => {
  test('runs dry in 3.6 min with no return', () => {
    // Worked example of the trade notes, hand arithmetic: 258 - 142 = 116 gal at 32 gpm. What the bypass gives back does not count.
    expect(toGpm(figures.pumpedLph)).toBeCloseTo(32, 0)
    expect(figures.dryMin).toBeCloseTo(3.6, 1)
  })

  test('takes 3.1 yd3 of digging and its lining', () => {
    // 36 x 114 x 35 in = 143,640 in3 = 3.08 yd3 of 46,656; 1 yd3 = 0.7645549 m3. The floor's highest corner there is 0.2 in higher than
    // the -2.0 of the notes.
    expect(figures.digL / cubicMetres(0.7645549)).toBeCloseTo(3.1, 1)
    expect(figures.holdDown).toMatch(/third full/)
    expect(figures.isUnderCodeSize).toBe(false)
  })

  test('and its bay’s water goes round some five times an hour', () => {
    // 258 gal in the pit; 6.1 in main and risers, 13.5 in laterals, 72 in towers, 21.3 in troughs and 7.7 in drains by the notes: 379 gal;
    // 32 gpm x 60 = 1920 gal an hour: 5.1. Pipes and troughs are reckoned closer here.
    expect(toGallons(system.pitsL)).toBeCloseTo(257.6, 0)
    expect(system.totalL).toBeCloseTo(system.pitsL + system.pipesL + system.onItsWayL, 6)
    expect(Math.abs(toGallons(system.totalL) / 379 - 1)).toBeLessThan(0.06)
    expect(Math.abs(system.turnoverPerHour / 5.1 - 1)).toBeLessThan(0.06)
  })

  test('2 % a day of it are used, and the swing lasts as many days as that goes into it', () => {
    expect(system.usePerDayL).toBeCloseTo(0.02 * system.totalL, 6)
    expect(figures.usePerDayL).toBeCloseTo(system.usePerDayL, 6)
    expect((figures.swingLastsMin! / 60 / HOURS_PER_DAY) * figures.usePerDayL).toBeCloseTo(figures.swingL, 6)
  })
})

test('a fish tank slows it down: 300 gal an hour round 300 gal is once an hour', () => {
  const withTank = setSettings(layout, { otherWaterL: gallons(1920) - system.totalL })
  if (!withTank.ok) throw new Error(withTank.sentence)
  // 1920 gal an hour of the sample bay round 1920 gal.
  expect(systemWater(evaluate(withTank.layout).bay).turnoverPerHour).toBeCloseTo(1, 1)
})

test('a pump that takes 150 W warms 500 gal by 1.6 degrees a day', () => {
  // 150 x 86,400 = 12.96 MJ over 1893 kg x 4.18 kJ: worked example of the trade notes, hand arithmetic.
  expect(warmingInADay(150, gallons(500))).toBeCloseTo(1.6, 1)
  expect(warmingInADay(150, 0)).toBe(0)
})

test('a pit without a pump has no time to run dry, a tote on the floor nothing to be dug or held down', () => {
  const dry = evaluate(
    sketch('40 x 60 ft')
      .pit('Tote', { x: [100, 117], y: [50, 70] }, { pumps: 0, bottom: 1, rim: 18, overflow: 14 })
      .layout(),
  ).bay
  expect(pitFigures(dry, 'sump-1')).toMatchObject({
    dryMin: undefined,
    digL: 0,
    holdDown: undefined,
    isUnderCodeSize: true,
  })
  expect(pitFigures(dry, 'no-such-part')).toBeUndefined()
})
