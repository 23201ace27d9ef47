import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { hazardsOf } from '../../src/sheets/hazards'
import type { Units } from '../../src/units/length'
import { pounds } from '../../src/units/mass'
import { bay, type Sketch } from '../support/bay'

const handlingIn = (sketch: Sketch, units: Units = 'feet-inches') =>
  hazardsOf(evaluate(sketch.layout()), units).find(({ key }) => key === 'handling')

const between = (): Sketch => bay('30 x 60 ft').row('A', [165, 100])

describe('towers that are hung', () => {
  // By hand, tests/evaluate/handling: inner lines 2.38 and outer lines 1.08 times what the equation of NIOSH 94-110 recommends. Where none is, how high a tower is lifted is told: to 80 in.
  test('are told with their lines where they are over what is recommended', () => {
    const hazard = handlingIn(between())
    expect(hazard?.places).toEqual(['A: 2.4x on lines 2, 3; 1.1x on 1, 4'])
    expect(hazard?.words).toMatch(/ 2x: twice the recommended lift, at 25 lb/)
    expect(hazard?.source).toMatch(/NIOSH Publication 94-110/)
    expect(hazard?.spots.map(({ name }) => name)).toEqual(['A'])
    // The middle of a row whose start is at (165, 100) in and which is 30 ft long.
    expect(hazard?.spots[0]?.at).toEqual({
      x: expect.closeTo(165 * 25.4, 6) as unknown,
      y: expect.closeTo(280 * 25.4, 6) as unknown,
    })
  })

  test('in kilograms for who has those', () => {
    expect(handlingIn(between(), 'metric')?.words).toMatch(/recommended lift, at 11 kg/)
  })

  test('are told without them where they are light and close', () => {
    const light = bay('30 x 60 ft').settings({ wetTowerKg: pounds(12) })
    const hazard = handlingIn(light.row('A', [165, 100], { lines: 2 }))
    expect(hazard?.places).toEqual(['A: lifted to 80"'])
    expect(hazard?.words).not.toMatch(/recommended/)
    expect(hazard?.source).toBe('Common practice, no source')
  })

  test('are out of reach where they are too far', () => {
    // 12 in off the wall: only from the right, and line 1 is 60 in away.
    expect(handlingIn(bay('30 x 60 ft').row('A', [45, 100]))?.places.join()).toMatch(
      /^A: out of reach on lines 1, 2; /,
    )
  })
})
