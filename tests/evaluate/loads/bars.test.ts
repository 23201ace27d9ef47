import { describe, expect, test } from 'vitest'
import { judgeStress } from '../../../src/evaluate/loads/allowed'
import { bestSpacing } from '../../../src/evaluate/loads/bars'
import type { HungBar } from '../../../src/evaluate/loads/hung'
import { poundsForce, toInchPounds, toKsi, toPoundsForce } from '../../../src/units/force'
import { inches, toInches } from '../../../src/units/length'
import { assumed, byHand } from './handRail'
import { screenOf, strengthOfRow } from './rowOf'

/** A weightless bar of so many inches on two rails so far apart, 25 lb at each place from its middle, all harvested as one. */
const bar = (trade: string, length: number, spacing: number, at: readonly number[]) =>
  byHand({
    trade,
    length,
    supports: [(length - spacing) / 2, (length + spacing) / 2],
    hung: [at.map((v) => ({ at: length / 2 + v, pounds: 25 }))],
  })

const full = (trade: string, length: number, spacing: number, at: readonly number[]) => {
  const { stretches } = bar(trade, length, spacing, at)
  const moments = stretches.map(({ moment }) => Math.abs(toInchPounds(moment.value)))
  return {
    moment: Math.max(...moments),
    ksi: Math.max(...stretches.map(({ stressMpa }) => toKsi(stressMpa))),
    sag: Math.max(...stretches.map(({ sag }) => toInches(sag.value))),
  }
}

const FOUR = [-27, -9, 9, 27]

// Hand arithmetic on closed forms of the AISC Steel Construction Manual, Table 3-23 (from memory), cases 7 and 9.
describe('bars by hand', () => {
  // PL/4 = 187.5 in-lb.
  test.each([
    ['1/2', 13.65, 0.1],
    ['3/4', 6.73, 0.038],
    ['1', 3.59, 0.016],
  ])('30 in, one 25 lb tower in the middle, %s in: %d ksi, %d in', (trade, ksi, sag) => {
    const found = full(trade, 30, 30, [0])
    expect(found.moment).toBeCloseTo(187.5, 6)
    expect(found.ksi).toBeCloseTo(ksi, 1)
    expect(found.sag).toBeCloseTo(sag, 2)
  })

  // Pa = 250 in-lb; sag Pa (3 L² - 4 a²) / 24 EI.
  test('30 in, two 25 lb towers 10 in from the rails: 18.2 and 8.97 ksi, 0.170 in', () => {
    const found = full('1/2', 30, 30, [-5, 5])
    expect(found.moment).toBeCloseTo(250, 6)
    expect(found.ksi).toBeCloseTo(18.2, 1)
    expect(found.sag).toBeCloseTo(0.17, 2)
    expect(full('3/4', 30, 30, [-5, 5]).ksi).toBeCloseTo(8.97, 1)
  })

  // 25 (27 - 20) = 175 in-lb over the rails; 50 x 20 - 25 (9 + 27) = 100 between them.
  test('four lines 18 in apart on rails 40 in apart: 175 in-lb, 6.3 ksi in 3/4 in, 12.7 in 1/2 in', () => {
    expect(full('3/4', 57, 40, FOUR).moment).toBeCloseTo(175, 6)
    expect(full('3/4', 57, 40, FOUR).ksi).toBeCloseTo(6.3, 1)
    expect(full('1/2', 57, 40, FOUR).ksi).toBeCloseTo(12.7, 1)
  })

  // 50 x 27 - 25 (9 + 27) = 450 in-lb.
  test('rails at the outer lines put 32.8 ksi in a 1/2 in bar: too long', () => {
    expect(full('1/2', 57, 54, FOUR).ksi).toBeCloseTo(32.8, 1)
    const [stretch] = bar('1/2', 57, 54, FOUR).stretches.toSorted((a, b) => b.stressMpa - a.stressMpa)
    expect(judgeStress(stretch!, assumed).state).toBe('Too long')
  })

  // W (1 - e / g): 25 lb at 8 in from the left of rails 32 in apart puts 18.75 lb on it.
  test('a tower off the middle leans on the nearer rail', () => {
    const { supports } = bar('3/4', 40, 32, [-8])
    expect(supports.map(({ fullN }) => toPoundsForce(fullN))[0]).toBeCloseTo(18.75, 6)
  })
})

const hungBar = (at: readonly number[], half: number): HungBar => ({
  u: 0,
  z: 0,
  fromV: inches(-half),
  toV: inches(half),
  stock: 'conduit-3/4',
  ownNPerMm: 0,
  pipes: [],
  towers: at.map((v) => ({ atMm: inches(v), downN: poundsForce(25) })),
})

describe('best spacing of the rails', () => {
  // By hand: with the inner towers alone 25 (W/2 - C/2) between the rails, 25 (3C/2 - W/2) over them: alike at W = 2 C.
  test('four equal lines: twice the line spacing, the near end of 2 C to 2-1/3 C', () => {
    expect(toInches(bestSpacing(hungBar(FOUR, 28.5))!)).toBeCloseTo(36, 2)
  })

  test('two lines: the bar hangs straight over the rails', () => {
    expect(toInches(bestSpacing(hungBar([-9, 9], 20))!)).toBeCloseTo(18, 2)
  })

  // 25 (C - W/2) over a rail, 25 W/4 between them with the middle tower alone: alike at W = 4 C / 3.
  test('three lines: a third more than the line spacing', () => {
    expect(toInches(bestSpacing(hungBar([-18, 0, 18], 30))!)).toBeCloseTo(24, 2)
  })

  test('none where all towers hang in the middle', () => {
    expect(bestSpacing(hungBar([0], 20))).toBeUndefined()
  })

  test('at it no bar is stressed more than at a spacing near it', () => {
    const stress = (spacing: number): number =>
      screenOf(strengthOfRow({ railSpacingMm: inches(spacing) }), 'bar-stress').used
    expect(stress(36)).toBeLessThan(stress(32))
    expect(stress(36)).toBeLessThan(stress(40))
  })
})

describe('bars of a row', () => {
  // Inner towers alone, the outer lines harvested: 25 (20 - 9) = 275 in-lb, 9.87 ksi, and what the bar and its pipes add.
  test('the worst harvest leaves the inner lines hanging', () => {
    const bars = screenOf(strengthOfRow(), 'bar-stress')
    expect(bars.under).toBe('harvested')
    expect(toKsi(bars.measured.value)).toBeGreaterThan(9.87)
    expect(toKsi(bars.measured.value)).toBeLessThan(11)
  })

  test('a bar whose towers all hang past one rail tips over it', () => {
    // Line 4 of each bar alone, 27 in out on rails 20 in out.
    const onlyOuter = Array.from({ length: 96 }, (_, tower) => tower).filter((tower) => tower % 4 !== 3)
    const strength = strengthOfRow({ takenOut: onlyOuter })
    const lift = screenOf(strength, 'rail-uplift', 'HB')
    expect(lift.state).toBe('Too long')
    // 25 x 7 / 40 less half a bar and half of the pipes on it: 4.375 - 1.09 - 0.37 lb or less.
    expect(toPoundsForce(lift.measured.value)).toBeGreaterThan(2.8)
    expect(toPoundsForce(lift.measured.value)).toBeLessThan(3.3)
    expect(strengthOfRow().screens.some(({ id, mark }) => id === 'rail-uplift' && mark === 'HB')).toBe(false)
  })
})

// By hand: 25 lb 7 in past a rail lifts the other, 40 in off, by 25 x 7 / 40 = 4.4 lb; of 57 in of 3/4 in conduit, 0.46 lb a foot, half
// holds it down, 1.1 lb; two laterals full of water hold some more.
test('what lifts a default bar while its last outer tower hangs is told with its arithmetic', () => {
  for (const id of ['bar-stress', 'bar-sag'] as const) {
    const { terms } = screenOf(strengthOfRow(), id)
    const lift = terms.find(({ name }) => name.startsWith('Left alone, towers outside a rail'))!
    expect(toPoundsForce(lift.quantity.value)).toBeGreaterThan(2)
    expect(toPoundsForce(lift.quantity.value)).toBeLessThan(4.375 - 1.09)
  }
  const inside = screenOf(strengthOfRow({ railSpacingMm: inches(54) }), 'bar-stress').terms
  expect(inside.filter(({ name }) => name.startsWith('Left alone'))).toEqual([])
})
