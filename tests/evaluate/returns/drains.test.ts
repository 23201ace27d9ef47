import { describe, expect, test } from 'vitest'
import { returns } from '../../../src/evaluate/4-returns'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { evaluate } from '../../../src/evaluate/evaluate'
import { inflowsOf } from '../../../src/evaluate/returns/inputs'
import type { Layout } from '../../../src/layout/schema'
import type { Join } from '../../../src/model/levels'
import type { DrainReturn } from '../../../src/model/returns'
import { gpm, toGpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { toFeetPerSecond } from '../../../src/units/velocity'
import { bay, type Sketch } from '../../support/bay'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { sallowFlats } from '../../support/scenarios/sallowFlats'

const drainsOf = (layout: Layout): Readonly<Record<string, DrainReturn>> => {
  const { drains } = evaluate(layout).bay.returns
  return Object.fromEntries(
    layout.parts.flatMap(({ id, name }) => (drains.has(id) ? [[name, drains.get(id)!]] : [])),
  )
}

describe('the drains of the sample bay', () => {
  const { 'Drain N': north, 'Drain S': south } = drainsOf(kestrelBend().layout()) as Record<
    'Drain N' | 'Drain S',
    DrainReturn
  >

  // Worked example of the trade notes, hand arithmetic: 19.2 and 12.8 gpm, 27 % and 22 % full; 58.8 gpm at half full.
  test('carry 19.2 and 12.8 gpm, 27 and 22 % full', () => {
    expect(toGpm(north.flowLph)).toBeCloseTo(19.2, 1)
    expect(toGpm(south.flowLph)).toBeCloseTo(12.8, 1)
    expect(north.fullest.share).toBeCloseTo(0.273, 2)
    expect(south.fullest.share).toBeCloseTo(0.22, 2)
    expect([north.state, south.state]).toEqual(['Falls', 'Falls'])
    expect(Math.abs(toGpm(north.halfFullLph) / 58.8 - 1)).toBeLessThan(0.01)
  })

  test('have a reach between each two of their twelve outlets, the last with all the water', () => {
    expect(north.reaches).toHaveLength(13)
    expect(north.reaches[0]!.flowLph).toBe(0)
    north.reaches.forEach((reach, i) => {
      expect(reach.fromMm).toBe(north.reaches[i - 1]?.toMm ?? 0)
      // One line of 24 towers of about 4 gph: 1.6 gpm.
      expect(toGpm(reach.flowLph)).toBeCloseTo(1.6 * i, 0)
    })
    expect(north.reaches.at(-1)!.toMm).toBeCloseTo(inches(274), 6)
    expect(north.fullest).toBe(north.reaches.at(-1))
  })

  // 19.2 gpm is 0.04278 ft3/s. Of 4.06 in bore 27.3 % deep 22.0 % of 12.95 in2 is wet, 0.0198 ft2: 2.16 ft/s, hand arithmetic.
  test('run at 2.2 ft/s where they are fullest', () => {
    expect(toFeetPerSecond(north.fullest.velocityMS)).toBeCloseTo(2.16, 1)
  })
})

// Flows at which a 4.065 in drain runs 2 ft/s, n 0.011, by a reference library of fluid mechanics: 49, 18.9, 8.2 and 3.6 gpm at
// 1/16, 1/8, 1/4 and 1/2 in a foot.
test.each([
  [1 / 16, 49],
  [1 / 8, 18.9],
  [1 / 4, 8.2],
  [1 / 2, 3.6],
])('4 in pipe at %f in a foot wants %f gpm to scour', (slope, wanted) => {
  const line = bay('40 x 60 ft')
    .drain(
      'D',
      [
        [100, 325],
        [300, 325],
      ],
      { slope },
    )
    .settings({ manningN: 0.011 })
  expect(Math.abs(toGpm(drainsOf(line.layout())['D']!.scourLph) / wanted - 1)).toBeLessThan(0.03)
})

/** Row A of 64 towers of 4 gph over a branch that ends on a line of its own length, which bends on its way to the pit. */
const branched = (values: object = {}): Sketch =>
  bay('60 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .drain(
      'Branch',
      [
        [100, 325],
        [300, 325],
      ],
      values,
    )
    .drain('Line', [
      [300, 225],
      [300, 425],
      [400, 425],
    ])
    .pit('Pit', { x: [400, 436], y: [368, 482] }, { pumps: 0 })

describe('a line that another ends on', () => {
  const { Branch, Line } = drainsOf(branched().layout()) as Record<'Branch' | 'Line', DrainReturn>

  // 64 x 4 gph is 4.267 gpm.
  test('carries the water of the branch from there on, round its bend', () => {
    expect(Line.reaches.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([
      [0, inches(100)],
      [inches(100), inches(200)],
      [inches(200), inches(300)],
    ])
    expect(Line.reaches.map(({ flowLph }) => toGpm(flowLph))).toEqual([
      0,
      expect.closeTo(4.267, 3),
      expect.closeTo(4.267, 3),
    ])
    expect(Branch.flowLph).toBeCloseTo(Line.flowLph, 9)
  })

  test('of lines that only lead to each other each is told, and no more comes of it', () => {
    const { bay: made } = evaluate(branched().layout())
    const end = (from: string, to: string): Join => ({
      kind: 'drain-to-drain',
      from,
      to,
      at: { x: 0, y: 0, z: 0 },
      alongMm: inches(100),
      gapMm: 0,
      line: 0,
    })
    const joins = [
      ...made.joins.filter(({ kind }) => kind === 'outlet-to-drain'),
      end('drain-line-1', 'drain-line-2'),
      end('drain-line-2', 'drain-line-1'),
    ]
    const round = returns({ ...made, joins })
    expect([...round.drains.keys()]).toEqual(['drain-line-1', 'drain-line-2'])
    expect(round.pits.get('sump-1')!.drains).toEqual([])
    for (const { flowLph } of round.drains.values()) expect(flowLph).toBeLessThanOrEqual(2 * gpm(4.3))
  })
})

describe('the state of a line', () => {
  const stateAt = (slope: number) => {
    const { state, reaches } = drainsOf(branched({ slope }).layout())['Branch']!
    return [state, new Set(reaches.map((reach) => reach.state)).size, reaches.at(-1)!.share]
  }

  test('is Flat between half and all of its least fall', () => {
    expect(stateAt(1 / 16)).toEqual(['Flat', 1, expect.any(Number)])
  })

  test('backs up under half of it, and is full where it does not fall', () => {
    expect(stateAt(1 / 32)[0]).toBe('Backs up')
    expect(stateAt(-1 / 8)).toEqual(['Backs up', 1, 1])
  })

  test('of a line that does not fall has nothing to carry or to scour with', () => {
    const { halfFullLph, scourLph } = drainsOf(branched({ slope: 0 }).layout())['Branch']!
    expect([halfFullLph, scourLph]).toEqual([0, 0])
  })
})

test('water is neither made nor lost between troughs and pits', () => {
  for (const layout of [kestrelBend().layout(), sallowFlats().layout(), branched().layout()]) {
    const { troughs, pits } = beforeChecks(layout).bay.returns
    const dripping = [...troughs.values()].reduce((sum, { totalLph }) => sum + totalLph, 0)
    const home = [...pits.values()].reduce((sum, { inLph }) => sum + inLph, 0)
    expect(home).toBeCloseTo(dripping, 6)
  }
})

test('what did not change is not reckoned again', () => {
  const { bay: made } = evaluate(kestrelBend().layout())
  const [before, after] = [returns(made), returns({ ...made, joins: [...made.joins] })]
  for (const [part, drain] of before.drains) expect(after.drains.get(part)).toBe(drain)
})

test('where nothing comes in nothing is counted', () => {
  const { bay: made } = evaluate(
    bay('40 x 60 ft')
      .drain('D', [
        [50, 100],
        [350, 100],
      ])
      .layout(),
  )
  expect(inflowsOf(made).size).toBe(0)
  const [drain] = returns(made).drains.values()
  expect(drain).toMatchObject({ flowLph: 0, standingL: 0, state: 'Falls' })
})
