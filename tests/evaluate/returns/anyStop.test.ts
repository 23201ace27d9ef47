import fc from 'fast-check'
import { expect, test } from 'vitest'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { restart } from '../../../src/evaluate/returns/restart'
import { stopPump } from '../../../src/evaluate/returns/stopPump'
import { whatIfRows } from '../../../src/evaluate/returns/whatIfs'
import type { Layout } from '../../../src/layout/schema'
import { scenarios } from '../../support/scenarios'

/** Levels of a pit in any order, any settings that the schema takes: a plan that is wrong is still a plan. */
const anyPit = fc.record({
  shape: fc.constantFrom('box', 'round', 'sloped'),
  overflowMm: fc.integer({ min: -900, max: 0 }),
  runningMm: fc.integer({ min: -900, max: 0 }),
  lowAlarmMm: fc.integer({ min: -900, max: 0 }),
  pumpOffMm: fc.integer({ min: -900, max: 0 }),
  drainBackMm: fc.integer({ min: -900, max: 0 }),
  overflowBore: fc.constantFrom('1', '2', '4'),
  makeUpLph: fc.integer({ min: 0, max: 20_000 }),
  checkValve: fc.boolean(),
})

const anySettings = fc.record({
  towerHoldUpL: fc.constantFrom(0, 0.1, 0.57, 10),
  towerDripMin: fc.constantFrom(1, 20, 600),
  manningN: fc.constantFrom(0.007, 0.011, 0.02),
  dailyUse: fc.constantFrom(0, 0.02),
})

const changed = (layout: Layout, pit: object, settings: object): Layout => ({
  ...layout,
  settings: { ...layout.settings, ...settings },
  parts: layout.parts.map((part) => (part.kind === 'sump' ? { ...part, ...pit } : part)),
})

test('whatever the levels of a pit and the settings of a bay, a stop and a start lose no water', () => {
  const layout = scenarios['lintel-lane-lean-to']!()
  fc.assert(
    fc.property(anyPit, anySettings, (pit, settings) => {
      const { bay } = beforeChecks(changed(layout, pit, settings))
      const run = stopPump(bay)
      if (!run) return
      const home = [...run.pits.values()].reduce((sum, { homeL }) => sum + homeL, run.floorL)
      // What towers with a long tail still hold after a hundred of their times is the rest.
      expect(Math.abs(home - run.totalL)).toBeLessThan(1e-3 * Math.max(run.totalL, 1))
      const start = restart(bay, run)!
      const numbers = [...start.pits.values()].flatMap(({ filledMm, settledMm, lowestMm }) => [
        filledMm,
        settledMm,
        lowestMm,
      ])
      expect(numbers.every(Number.isFinite)).toBe(true)
      for (const rows of whatIfRows({ bay, stopped: run, flushes: [] }).values())
        for (const row of rows) expect(Object.values(row).every((value) => !Number.isNaN(value))).toBe(true)
    }),
    { seed: 4104, numRuns: 25 },
  )
})
