import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Layout } from '../../../src/layout/schema'
import type { PitReturn } from '../../../src/model/returns'
import { gph } from '../../../src/units/flow'
import { toGallons } from '../../../src/units/volume'
import { bay, type Sketch } from '../../support/bay'
import { kestrelBend } from '../../support/scenarios/kestrelBend'

const pitsOf = (layout: Layout): readonly PitReturn[] => [...evaluate(layout).bay.returns.pits.values()]

const pitIn = (layout: Layout, name = 'Pit'): PitReturn => {
  const id = layout.parts.find((part) => part.name === name)?.id
  return pitsOf(layout).find(({ part }) => part === id)!
}

/** The sample bay with its pit and rows a little other than drawn. */
const sample = (pit: object, row: object = {}): Layout => {
  const layout = kestrelBend().layout()
  const changed = (kind: string) => (kind === 'sump' ? pit : kind === 'rack-row' ? row : {})
  return { ...layout, parts: layout.parts.map((part) => ({ ...part, ...changed(part.kind) }) as typeof part) }
}

describe('what comes home to the pit of the sample bay, 480 towers', () => {
  /*
   * Worked example of the trade notes, hand arithmetic: towers 72.0, gutters 21.3, drains 7.7, main and risers 6.1, laterals 13.5: 120.5
   * gal, x 1.25 = 150.6. It has laterals and risers of 1 in pipe and towers of 4 gph, so the valves are shut here, for what is wanted
   * of a dry row is just that. The parts of it one by one, 231 cubic inches a gallon:
   *   towers   480 x 0.15                                                                       72.00
   *   gutters  12 x 360 in at 1.6 gpm and 12 x 240 in at 1.07, 3.25 in wide; the example rounds the depths up to 0.23 and
   *            0.18 in: 3.25 x (12 x 360 x 0.23 + 12 x 240 x 0.18) / 231 = 21.3; at 0.223 and 0.173 in it is 20.6
   *   drains   2 x 274 in, a quarter of 12.95 in2                                                7.68
   *   mains    157 in of 2 in pipe, 3.356 in2, and 259 in of 1-1/2 in, 2.036 in2                 4.56
   *   risers   6 x 72 in of 0.8643 in2                                                           1.62
   *   laterals 6 x 360 in and 6 x 240 in of 0.8643 in2                                          13.47
   * What is drawn and the example leaves out:
   *   six pipes from the mains overhead down to the valves, 722.7 in of 0.8643 in2               2.70
   *   two pipes of 2 in from the pump up to the mains, (82 + 82 + 36 + 28) x 1.01 = 230.3 in     3.35
   *   the pump's own, as far as it stands over the running level, 22.5 in of 2 in pipe           0.33
   *   headers 6 x 38 in of 0.8643 in2                                                            0.85
   *   microtubes 480 x 36 in of 0.01227 in2                                                      0.92
   */
  const leftOut = 2.7 + 3.35 + 0.33 + 0.85 + 0.92
  const { transit, designL, rows, drains, inLph } = pitIn(
    sample({ checkValve: false }, { lateral: 'pe-1', header: 'pe-1', valve: 'shut' }),
  )

  test('is 120.5 gal, and 150.6 with a quarter more, without what the example leaves out', () => {
    const homeGal = toGallons(transit.totalL) - leftOut
    expect(Math.abs(homeGal / 120.5 - 1)).toBeLessThan(0.01)
    expect(Math.abs((toGallons(designL) - 1.25 * leftOut) / 150.6 - 1)).toBeLessThan(0.01)
  })

  test.each([
    ['towersL', 72],
    ['troughsL', 20.6],
    ['drainsL', 7.68],
    ['mainsL', 4.56 + 2.7 + 3.35 + 0.33],
    ['lateralsL', 1.62 + 13.47 + 0.85 + 0.92],
  ] as const)('%s is %f gal', (part, gal) => {
    expect(Math.abs(toGallons(transit[part]) - gal)).toBeLessThan(0.05)
  })

  test('comes from six rows over two drains, 32 gpm', () => {
    expect([rows.length, drains.length]).toEqual([6, 2])
    expect(inLph).toBeCloseTo(480 * gph(4), 6)
  })

  test('the mains stay full behind a check valve, and riser pipes up to the tube ends', () => {
    const held = pitIn(sample({}, { lateral: 'pe-1', header: 'pe-1', valve: 'shut' })).transit
    expect(held.mainsL).toBe(0)
    // Tube ends hang at 70.3 in, laterals at 76, the foot of the riser pipe at 4: 66.3 of its 72 in stay full.
    const risersGal = (6 * 66.3 * 0.8643) / 231
    expect(toGallons(transit.lateralsL - held.lateralsL)).toBeCloseTo(risersGal, 2)
    expect(held.towersL + held.troughsL + held.drainsL).toBeCloseTo(
      transit.towersL + transit.troughsL + transit.drainsL,
      6,
    )
  })
})

/*
 * Worked example of the trade notes, hand arithmetic: a pit of 36 x 114 in holds 17.77 gal an inch; over its bottom stand 142 gal at
 * pump off, 258 running, 409 at drain-back, 426 at the overflow, 657 at the rim. Make-up of 4 gpm for 10 min is 40.
 */
describe('how the depth of the sample pit is spent', () => {
  const pit = pitIn(sample({}))

  test.each([
    ['deadL', 142],
    ['swingL', 258 - 142],
    ['roomL', 409 - 258],
    ['freeboardL', 657 - 426],
    ['surgeL', 40],
  ] as const)('%s is %f gal', (volume, gal) => {
    expect(Math.abs(toGallons(pit[volume]) - gal)).toBeLessThanOrEqual(1)
  })

  test('holds behind its check valve, is thin without it, and spills with an overflow just over the water', () => {
    expect(pit.state).toBe('Holds')
    expect(pitIn(sample({ checkValve: false })).state).toBe('Thin')
    expect(pitIn(sample({ runningMm: -13.5 * 25.4 })).state).toBe('Spills')
  })
})

/** Row A of 4 lines, x from 238 to 292 in; a drain from each side under half of it, each to a pit of its own. */
const divided = (): Sketch =>
  bay('60 x 60 ft')
    .row('A', [265, 100], { racks: 2 })
    .drain('West', [
      [266, 325],
      [136, 325],
    ])
    .drain('East', [
      [264.5, 328],
      [400, 328],
    ])
    .pit('West pit', { x: [100, 136], y: [268, 382] }, { pumps: 0 })
    .pit('East pit', { x: [400, 436], y: [268, 382] }, { pumps: 0 })

describe('a row whose lines drain into two pits', () => {
  const layout = divided().layout()
  const [west, east] = [pitIn(layout, 'West pit'), pitIn(layout, 'East pit')]

  test('is a row of both, each with the towers of its lines', () => {
    expect(west.rows).toEqual(['rack-row-1'])
    expect(east.rows).toEqual(['rack-row-1'])
    expect(toGallons(west.transit.towersL + east.transit.towersL)).toBeCloseTo(64 * 0.15, 6)
    expect(west.transit.towersL).toBeGreaterThan(0)
    expect(east.transit.towersL).toBeGreaterThan(0)
  })

  test('gives both together what it has, and no more', () => {
    const { troughs } = evaluate(layout).bay.returns
    expect(west.inLph + east.inLph).toBeCloseTo(troughs.get('rack-row-1')!.totalLph, 6)
  })
})

test('a row that no drain takes, and a drain that leads nowhere, come home to no pit', () => {
  const away = bay('40 x 60 ft')
    .row('A', [165, 100], { racks: 2 })
    .drain('D', [
      [100, 325],
      [300, 325],
    ])
    .pit('Pit', { x: [400, 436], y: [20, 134] })
  const { transit, inLph, rows, drains, state } = pitIn(away.layout())
  expect([transit.totalL, inLph, rows.length, drains.length, state]).toEqual([0, 0, 0, 0, 'Holds'])
})

test('what a tower lets go of is as measured', () => {
  const measured = kestrelBend().settings({ towerHoldUpL: 1 }).layout()
  expect(pitIn(measured).transit.towersL).toBeCloseTo(480, 9)
})
