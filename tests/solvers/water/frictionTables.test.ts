import { describe, expect, test } from 'vitest'
import { pipeLoss, reynoldsNumber } from '../../../src/solvers/water/friction'
import { hazenWilliamsLoss, PLASTIC_C } from '../../../src/solvers/water/hazenWilliams'
import { waterAt } from '../../../src/solvers/water/properties'
import { feetM, gpmM3S, inchesM } from '../../support/hydraulics'

/** A cell of a table: flow in gpm, bore in inches, and what is printed. */
type Cell = readonly [gpm: number, boreIn: number, printed: number]

const cellsOf = (bores: readonly number[], rows: readonly (readonly (number | undefined)[])[]): Cell[] =>
  rows.flatMap(([flow, ...printed]) =>
    printed.flatMap((value, i): Cell[] => (value === undefined ? [] : [[flow!, bores[i]!, value]])),
  )

/** Feet lost in 100 ft, which is also metres in 100 m. */
const per100 = (flow: number, boreIn: number, smoothnessC: number): number =>
  hazenWilliamsLoss(gpmM3S(flow), 100, inchesM(boreIn), smoothnessC)

const ours = (flow: number, boreIn: number, temperatureC: number): number =>
  pipeLoss(
    gpmM3S(flow),
    { lengthM: 100, boreM: inchesM(boreIn), lossK: 0 },
    waterAt(temperatureC).kinematicM2S,
  )

const none = undefined

// Illinois Administrative Code, title 77, part 906, appendix A, exhibit I: friction loss in schedule 40 plastic pipe, C
// 150, ft in 100 ft. The bores are those of ASTM D1785; the exhibit prints nominal sizes.
const schedule40 = cellsOf(
  [1.049, 1.38, 1.61, 2.067],
  [
    [2, 0.28, 0.07, none, none],
    [3, 0.6, 0.16, 0.07, none],
    [4, 1.01, 0.25, 0.12, none],
    [5, 1.52, 0.39, 0.18, none],
    [6, 2.14, 0.55, 0.25, 0.07],
    [8, 3.63, 0.97, 0.46, 0.14],
    [10, 5.5, 1.46, 0.7, 0.21],
    [15, none, 3.06, 1.45, 0.44],
    [20, none, 5.23, 2.46, 0.74],
  ],
)

// "Friction loss for PVC class 160 pipe", table of a university irrigation course, psi in 100 ft, bores printed.
const class160 = cellsOf(
  [0.72, 1.195, 2.193],
  [
    [1, 0.202, 0.02, none],
    [2, 0.75, 0.06, none],
    [3, 1.56, 0.14, none],
    [4, 2.68, 0.232, none],
    [5, 4.04, 0.35, none],
    [6, 5.76, 0.49, none],
    [8, 9.78, 0.84, none],
    [10, none, 1.27, 0.07],
    [20, none, 4.59, 0.242],
    [40, none, 16.59, 0.86],
  ],
)

// "Pipe Loss Chart 3/4 in to 1.5 in" of a maker of polyethylene pipe, ft in 100 ft at 20.2 °C; bores of ASTM D2239, and
// the C of 140 that gives back the chart.
const polyethylene = cellsOf(
  [0.824, 1.049, 1.38],
  [
    [1, 0.28, 0.09, 0.02],
    [2, 1.04, 0.32, 0.09],
    [3, 2.19, 0.67, 0.19],
    [4, 3.73, 1.15, 0.3],
    [5, 5.61, 1.75, 0.46],
    [6, 7.89, 2.44, 0.65],
    [8, 13.4, 4.1, 1.08],
    [10, 20.3, 6.3, 1.66],
    [12, none, 8.8, 2.32],
  ],
)

/** Printed to two decimals, and worked with rounded forms that differ by 0.8 % among themselves. */
const ROUNDING_FT = 0.015

describe('Hazen-Williams gives back', () => {
  test.each(schedule40)('schedule 40 plastic, %d gpm in %d in: %d ft', (flow, bore, printed) => {
    const off = Math.abs(per100(flow, bore, PLASTIC_C) - printed)
    expect(off).toBeLessThanOrEqual(Math.max(ROUNDING_FT, 0.035 * printed))
  })

  // 1 psi is 2.31 ft of water (the tables' own factor).
  test.each(class160)('class 160 PVC, %d gpm in %d in: %d psi', (flow, bore, printed) => {
    const off = Math.abs(per100(flow, bore, PLASTIC_C) / 2.31 - printed)
    expect(off).toBeLessThanOrEqual(Math.max(0.007, 0.04 * printed))
  })

  test.each(polyethylene)('polyethylene, %d gpm in %d in: %d ft', (flow, bore, printed) => {
    const off = Math.abs(per100(flow, bore, 140) - printed)
    expect(off).toBeLessThanOrEqual(Math.max(ROUNDING_FT, 0.03 * printed))
  })

  // Plastics industry's form: 0.2083 (100/C)^1.852 Q^1.852 / d^4.8655 ft in 100 ft; for 5 gpm, 1.049 in, C 150:
  // 0.2083 x 0.47193 x 19.700 / 1.2620 = 1.5345.
  test('the print of the plastic pipe industry within the 1 % by which the forms differ', () => {
    expect(Math.abs(per100(5, 1.049, 150) / 1.5345 - 1)).toBeLessThan(0.01)
  })
})

describe('our own law', () => {
  const { kinematicM2S } = waterAt(20)
  const churnedFrom = (least: number, cells: readonly Cell[]) =>
    cells.filter(
      ([flow, bore, printed]) =>
        printed >= 0.2 && reynoldsNumber(gpmM3S(flow), inchesM(bore), kinematicM2S) > least,
    )

  // C 150 is low for small smooth pipes: a fifth under Colebrook at Re 1e4, an eighth at 2e4, the less the faster.
  test.each(churnedFrom(1.9e4, schedule40))(
    'at %d gpm in %d in is within 15 percent of the code’s %d ft',
    (flow, bore, printed) => {
      expect(Math.abs(ours(flow, bore, 20) / printed - 1)).toBeLessThan(0.15)
    },
  )

  // The chart of the very pipe that laterals are made of.
  test.each(churnedFrom(1e4, polyethylene))(
    'at %d gpm in %d in is within a tenth of the chart’s %d ft',
    (flow, bore, printed) => {
      expect(Math.abs(ours(flow, bore, 20.2) / printed - 1)).toBeLessThan(0.1)
    },
  )

  // Worked with an open fluid-mechanics library at 20 °C, smooth wall: how far C 140 is from the physics in small bores.
  test.each([
    [5, 1.049, 100, 1.702, 1.727],
    [2, 0.824, 100, 1.088, 1.026],
    [0.2, 0.6, 100, 0.0975, 0.0676],
  ])(
    '%d gpm in %d in over %d ft: %d ft by physics, %d by the table law',
    (flow, bore, length, darcy, table) => {
      const through = { lengthM: feetM(length), boreM: inchesM(bore), lossK: 0 }
      expect(Math.abs(pipeLoss(gpmM3S(flow), through, kinematicM2S) / feetM(darcy) - 1)).toBeLessThan(0.012)
      const byTable = hazenWilliamsLoss(gpmM3S(flow), feetM(length), inchesM(bore), 140)
      expect(Math.abs(byTable / feetM(table) - 1)).toBeLessThan(0.01)
    },
  )
})
