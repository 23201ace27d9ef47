import { describe, expect, test } from 'vitest'
import { pumpChart } from '../../../src/app/drawer/pumpChart'
import { dutyFor, pumpCurve, type PumpStudy, studySteps } from '../../../src/app/drawer/pumpStudy'
import { boxVerdict, filterRows, pumpVerdict } from '../../../src/app/drawer/pumpWords'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { gph, gpm } from '../../../src/units/flow'
import { feet, inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { CURVE, waterBay } from '../../support/waterBay'

const sketch = waterBay()
  .pit('P', { pumps: 2 })
  .main('M', [
    [0, 0],
    [480, 0],
  ])
  .row('A', { along: 120 })
  .row('B', { along: 360 })
const inputs = sketch.inputs()
const facts = inputs.builtOf.get('P')!.pump!
const pump = waterOf(inputs).pumps.get('P')!

/** All steps of a study at one go, and how many there were. */
const studied = (): { study: PumpStudy; steps: number } => {
  const going = studySteps(inputs, 'P')
  let steps = 0
  for (let step = going.next(); ; step = going.next()) {
    if (step.done) return { study: step.value, steps }
    steps += 1
  }
}
const { study, steps } = studied()
const writer = writerFor('feet-inches')

describe('the curve of pumps side by side', () => {
  test('goes through the points of one pump, with twice the flow for two', () => {
    const [first, ...others] = pumpCurve(facts, 2)
    expect(first).toEqual({ flowLph: 0, headMm: expect.closeTo(CURVE[0]!.headMm, 3) })
    expect(others.at(-1)?.flowLph).toBeCloseTo(2 * CURVE.at(-1)!.flowLph)
    expect(others.at(-1)?.headMm).toBeCloseTo(CURVE.at(-1)!.headMm, 3)
  })

  test('a curve that is none draws nothing', () => {
    expect(pumpCurve({ ...facts, curve: CURVE.slice(0, 2) }, 1)).toEqual([])
  })
})

describe('what the network asks', () => {
  test('asks more head for more flow, and never less than the lift to the tube ends', () => {
    for (const { duties } of [study.clean, study.dirty]) {
      expect(duties.length).toBeGreaterThan(4)
      duties.slice(1).forEach(({ flowLph, headMm }, i) => {
        expect(flowLph).toBeGreaterThan(duties[i]!.flowLph)
        expect(headMm).toBeGreaterThan(duties[i]!.headMm)
      })
      // From 24 in below the zero to tube ends 76 in above it: 100 in.
      for (const { headMm } of duties) expect(headMm).toBeGreaterThan(inches(100))
    }
  })

  test('is found one solution at a time: as many with a clean filter as with a dirty one', () => {
    expect(steps).toBeGreaterThanOrEqual(study.clean.duties.length + study.dirty.duties.length)
    expect(steps % 2).toBe(0)
  })

  test('at its own speed is what the bay as drawn has', () => {
    expect(study.clean.own?.flowLph).toBeCloseTo(pump.flowLph, 3)
    expect(study.clean.own?.headMm).toBeCloseTo(pump.headMm, 3)
  })

  // Affinity laws (any pump text): flow goes with the speed, head with its square. So whatever the speed, flow over speed
  // and head over its square must lie on the one curve of the pump.
  test('lies on the curve of the pump at that speed', () => {
    const curve = pumpCurve(facts, 2)
    for (const { speed, flowLph, headMm } of study.clean.duties) {
      const after = curve.findIndex((point) => point.flowLph >= flowLph / speed)
      const [a, b] = [curve[after - 1]!, curve[after]!]
      expect(headMm / speed ** 2).toBeLessThanOrEqual(a.headMm + 0.5)
      expect(headMm / speed ** 2).toBeGreaterThanOrEqual(b.headMm - 0.5)
    }
  })

  test('a filter that is due for cleaning takes flow, and leaves the pump higher on its curve', () => {
    expect(study.dirty.own!.flowLph).toBeLessThan(study.clean.own!.flowLph)
    expect(study.dirty.own!.headMm).toBeGreaterThan(study.clean.own!.headMm)
    expect(study.dirty.own!.meanLph).toBeLessThan(study.clean.own!.meanLph)
  })

  test('gives the duty for a flow wanted between what was traced, and none beyond', () => {
    const [a, b] = study.clean.duties as [(typeof study.clean.duties)[0], (typeof study.clean.duties)[0]]
    const between = dutyFor(study.clean, (a.meanLph + b.meanLph) / 2)!
    expect(between.flowLph).toBeCloseTo((a.flowLph + b.flowLph) / 2)
    expect(dutyFor(study.clean, 1e6)).toBeUndefined()
    expect(dutyFor(study.clean, 0)).toBeUndefined()
  })
})

describe('the verdict on a pump', () => {
  const wanting = (lph: number) => pumpVerdict(pump, facts, study, lph, writer)
  const meanLph = study.clean.own!.meanLph

  test('fits within 5 % of what is wanted', () => {
    expect(wanting(meanLph * 1.03)).toMatch(/^The pump fits: with its filter clean a tower gets \d/)
  })

  test('too small or too large, it says by how much and which would do', () => {
    expect(wanting(meanLph * 1.25)).toMatch(
      /^The pump is too small by 20\.0 %: .* is wanted\. One that gives [\d.]+ gpm at [\d.]+ ft would do\.$/,
    )
    expect(wanting(meanLph / 1.2)).toMatch(/^The pump is larger than need be by 20\.0 %: .* One that gives/)
    expect(wanting(gph(40))).toContain('off by more than')
  })

  test('one that can’t lift says how high the tube ends lie and what it gives', () => {
    const weak = { ...pump, isLifting: false, staticMm: feet(30) }
    expect(pumpVerdict(weak, facts, study, gph(4), writer)).toMatch(
      /^The pump can’t lift .* 30\.0 ft .* 24\.0 ft at most\./,
    )
  })
})

test('clean and dirty stand side by side, and each row has both', () => {
  const { columns, rows } = filterRows(study, writer)
  expect(columns).toHaveLength(3)
  for (const row of rows) expect(row).toHaveLength(3)
})

describe('the chart of a pump', () => {
  test('has the pumps together and alone, and the network with either filter', () => {
    expect(pumpChart(facts, pump, study, 'feet-inches').lines.map(({ name }) => name)).toEqual([
      '2 pumps side by side',
      'One of them alone',
      'Network, filter clean',
      'Network, filter due for cleaning',
    ])
  })

  test('without a filter there is one network and one point', () => {
    const bare = { ...facts, pumps: 1, filterCleanK: 0, filterDirtyK: 0 }
    const chart = pumpChart(bare, pump, study, 'metric')
    expect(chart.lines.map(({ name }) => name)).toEqual(['Pump', 'Network'])
    expect(chart.flags).toHaveLength(1)
    expect(chart.y.measure.write(feet(10))).toBe('3.05 m')
  })

  test('the pump has flow left at the end of its curve for what it runs at', () => {
    expect(study.clean.own!.flowLph).toBeLessThan(gpm(120))
  })
})

describe('a pump that fills a head box', () => {
  const writer = writerFor('feet-inches')
  const box = (inGpm: number, outGpm: number) => ({
    part: 'head-box-1',
    inLph: gpm(inGpm),
    outLph: gpm(outGpm),
  })

  test('is judged by the box, not by the towers', () => {
    expect(boxVerdict([box(38, 32)], writer)).toBe(
      'The pump fills a head box and the box feeds the towers: it gets 38.0 gpm and gives 32.0 gpm; the rest falls back to the pit.',
    )
    expect(boxVerdict([box(10, 12), box(15, 20)], writer)).toContain(
      'it gets 25.0 gpm and gives 32.0 gpm, so it runs dry',
    )
  })
})
