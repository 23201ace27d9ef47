import { describe, expect, test } from 'vitest'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { labour } from '../../../src/evaluate/shop/labour'
import { emptyBay } from '../../../src/layout/empty'
import { feet } from '../../../src/units/length'
import { kestrelBend } from '../../support/scenarios/kestrelBend'

const evaluation = beforeChecks(kestrelBend().layout())
const { counter } = evaluation.layout
const found = labour(evaluation.bay, counter)

const hoursOf = (task: string): number => found.lines.find((line) => line.task === task)?.hours ?? 0

/*
 * The norms are those of the trade notes (defaults, common practice, no source), and so are about 145 h of tasks, 8 h of setting
 * out and about 175 h with 15 % on top. How often each task is done in the sample is counted here by hand from its plan: 66 riser
 * pairs in three rows of 3 racks and three of 2, 480 towers in 24 lines.
 */
const byHand: readonly (readonly [task: string, minutes: number, count: number])[] = [
  ['riser-cut', 2.5, 132], // 2 to a pair
  ['member-cut', 1.5, 276], // 66 cross-pieces, 66 top ties, 24 side and 21 cross braces, 81 bearers, 18 splice plates
  ['pair-assemble', 9, 66],
  ['pair-stand', 8, 66],
  ['runner-fix', 7, 30], // 3 to each side of a row of three racks, 2 of a row of two: 2 x (3 x 3 + 3 x 2)
  ['bearer-fix', 3, 81],
  ['brace-fix', 4, 45],
  ['rail-lay', 4, 30], // 10 ft sticks: 2 lines x (3 x 3 + 3 x 2)
  ['bar-hang', 2.5, 120], // 8 to a rack of 15
  ['gutter-lay', 6, 60], // 10 ft sections: 4 lines x (3 x 3 + 3 x 2)
  ['outlet-set', 10, 24],
  ['bearer-shim', 1, 324], // 81 bearers, 4 lines each
  ['tube-set', 2, 480],
  ['tower-hang', 1, 480],
  ['flow-test', 1.5, 480],
  ['zone-set', 45, 6],
  ['leak-test', 20, 6],
  ['pit-finish', 360, 1],
  ['pump-station', 720, 1],
  ['fill', 240, 1],
]

describe('the sample bay’s hours', () => {
  test.each(byHand)('%s: %f minutes, %i times', (task, minutes, count) => {
    expect(hoursOf(task)).toBeCloseTo((minutes * count) / 60, 9)
  })

  test('two drains of 274 in, less what ends at the pit’s wall, are trenched and laid', () => {
    // 274 in are 22.83 ft; both 45.67 ft: 4.567 x 75 min = 5.7 h, and 4.567 x 25 min = 1.9 h.
    expect(hoursOf('trench-dig')).toBeCloseTo(5.7, 1)
    expect(hoursOf('drain-lay')).toBeCloseTo(1.9, 1)
  })

  test('the pit of 36 by 114 in, some 35 in under the floor, is 3.1 cubic yards', () => {
    // 36 x 114 x 35 / 46,656 = 3.08 yd3, at 2 h.
    expect(hoursOf('pit-dig')).toBeCloseTo(6.2, 1)
  })

  test('12 laterals, 327 ft in all', () => {
    // 6 of 30 ft and 6 of 20 ft with 1 % and 2 ft each: 6 x 32.3 + 6 x 22.2 = 327 ft, at 5 min for 10 ft.
    expect(hoursOf('lateral-lay')).toBeCloseTo(2.7, 1)
  })

  test('pegs: 4 corners of 6 rows, 12 outlets and 2 ends of each of 2 drains', () => {
    // 24 + 28 = 52 pegs at 10 min: 8.7 h, about the 8 h of the trade notes.
    expect(hoursOf('set-out')).toBeCloseTo(8.7, 1)
  })

  test('about 145 h of tasks beside setting out', () => {
    const supply = hoursOf('supply-lay')
    // The lines above add up to 145.0 h; mains and their pipes, which the trade's norms leave out, are 2 h more.
    expect(found.taskHours - hoursOf('set-out') - supply).toBeCloseTo(145, 0)
    expect(supply).toBeCloseTo(1.9, 1)
  })

  test('about 175 h with 15 % for supervision and clean-up: 0.37 h a tower, 5.6 days for four', () => {
    // (145.1 + 1.9 + 8.7) x 1.15 = 179.0 h; the trade notes, without mains and with 8 h of setting out, have 175.
    expect(found.hours).toBeCloseTo(179, 0)
    expect(Math.abs(found.hours - 175)).toBeLessThan(5)
    expect(found.hours / evaluation.towers).toBeCloseTo(0.37, 2)
    // 179 / (4 x 8) = 5.59.
    expect(found.crewDays).toBeCloseTo(5.6, 1)
  })
})

describe('who builds it', () => {
  test('a first crew takes half as long again, a class twice', () => {
    for (const crewFactor of [1.5, 2])
      expect(labour(evaluation.bay, { ...counter, crewFactor }).hours).toBeCloseTo(
        found.hours * crewFactor,
        9,
      )
  })

  test('the crew’s own minutes hold instead of the norm', () => {
    // 480 towers at 3 min instead of 1: 24 h instead of 8.
    const own = labour(evaluation.bay, { ...counter, norms: [{ task: 'tower-hang', minutes: 3 }] })
    expect(own.taskHours - found.taskHours).toBeCloseTo(16, 9)
  })

  test('an empty bay takes no time', () => {
    const { bay, layout } = beforeChecks(emptyBay(feet(20), feet(40), 'Empty'))
    expect(labour(bay, layout.counter)).toEqual({ lines: [], taskHours: 0, hours: 0, crewDays: 0 })
  })
})
