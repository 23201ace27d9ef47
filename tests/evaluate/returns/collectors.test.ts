import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Bay } from '../../../src/checks/context'
import { evaluate } from '../../../src/evaluate/evaluate'
import {
  collectorChoices,
  type CollectorChoice,
  drainsLeftOut,
} from '../../../src/evaluate/returns/collectors'
import { readLayout } from '../../../src/layout/file'
import type { DrainReturn } from '../../../src/model/returns'
import { gpm, toGpm } from '../../../src/units/flow'
import { feet, inches, toInches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'
import { bay, type Sketch } from '../../support/bay'

/** Every drain with the same flow, and nothing else of it that a collector reads. */
const running = (of: Bay, flowLph: number): Bay => {
  const drains = new Map(
    [...of.levels.drains.keys()].map((part): [string, DrainReturn] => {
      const reach = { flowLph, share: 0.27, state: 'Falls' } as DrainReturn['fullest'] // a reach of a drain that runs well
      return [part, { part, flowLph, state: 'Falls', fullest: reach } as DrainReturn] // the rest is not read
    }),
  )
  return { ...of, returns: { ...of.returns, drains } }
}

const acre = (): Bay => {
  const read = readLayout(readFileSync('public/bays/sallow-flats-one-acre.json', 'utf8'))
  if (!read.ok) throw new Error(read.sentence)
  return evaluate(read.layout).bay
}

const chosen = (
  all: readonly CollectorChoice[],
  way: CollectorChoice['way'],
  pipe: string,
  fall: number,
): CollectorChoice => {
  const found = all.find(
    (one) =>
      one.way === way &&
      one.axis === 'x' &&
      one.pipe === pipe &&
      Math.abs((one.slopeMmPerM ?? 0) - inchesPerFoot(fall)) < 1e-6,
  )
  if (!found) throw new Error(`${way} ${pipe} at ${fall} is not among the choices`)
  return found
}

describe('the acre of six bays, 18 pits, 36 drains of 19.2 gpm', () => {
  const all = collectorChoices(running(acre(), gpm(19.2)))

  // Worked example of the trade notes, hand arithmetic: 19.2 gpm in 4 in pipe at 1/8 in/ft runs 27 % full.
  test('as drawn it has 18 pits, and its drains fall', () => {
    expect(all[0]).toMatchObject({ way: 'as-drawn', pits: 18, collectors: 0, state: 'Falls' })
    // 36 lines of 273 in: 36 x 22.75 ft = 819 ft.
    expect(all[0]!.pipeMm).toBeCloseTo(feet(819), 3)
    // Of 27-1/2 in under an overflow that is 13-1/2 in under a rim 2 in over the floor, no less than 37 in to dig.
    expect(toInches(all[0]!.deepestPitMm)).toBeGreaterThan(37)
    expect(toInches(all[0]!.deepestPitMm)).toBeLessThan(42)
  })

  // Worked example of the trade notes, hand arithmetic: 6 x 19.2 = 115 gpm, twice what 4 in carries half full (58.8 gpm).
  test('one 4 in line across all bays would carry 115 gpm and backs up', () => {
    const line = chosen(all, 'carried-on', 'drain-4in', 1 / 8)
    expect(toGpm(line.flowLph)).toBeCloseTo(115.2, 6)
    expect(line.state).toBe('Backs up')
    expect(line.share).toBeGreaterThan(0.5)
    expect(line).toMatchObject({ pits: 3, collectors: 6 })
    // From x 45 in, where the first drain begins, to the last pit's wall at 2118: 2073 in at 1/8 in/ft, 172.75 / 8 = 21.59 in.
    expect(toInches(line.fallMm)).toBeCloseTo(21.59, 2)
  })

  // Worked example of the trade notes, hand arithmetic: 12 x 19.2 = 230 gpm in 8 in pipe at 1/8 in/ft, 39 % full.
  test('an 8 in collector takes 230 gpm at about 39 % full', () => {
    const line = chosen(all, 'collected', 'drain-8in', 1 / 8)
    expect(toGpm(line.flowLph)).toBeCloseTo(230.4, 6)
    expect(line.share).toBeGreaterThan(0.38)
    expect(line.share).toBeLessThan(0.405)
    expect(line).toMatchObject({ state: 'Falls', pits: 3, collectors: 3 })
  })

  // A collector past low ends 150 ft apart less a pit's length of 30 in falls 147.5 / 8 = 18.44 in, on top of 2.84 in of the
  // drains and 1/8 in/ft of two branches of 51 in: with 27-1/2 in under the overflow, 4 ft and more. The notes' 22-1/2 in are
  // for the whole 180 ft of the house.
  test('and its pit is over 4 ft deep', () => {
    const line = chosen(all, 'collected', 'drain-8in', 1 / 8)
    expect(toInches(line.fallMm)).toBeCloseTo(18.4375, 3)
    expect(line.deepestPitMm).toBeGreaterThan(inches(48))
    expect(line.deepestPitMm).toBeGreaterThan(all[0]!.deepestPitMm + inches(18))
  })

  // International Plumbing Code, Table 704.1: 8 in may fall 1/16 in/ft, half of 1/8.
  test('at the code’s fall of its size an 8 in collector falls half as much and runs fuller', () => {
    const gentle = chosen(all, 'collected', 'drain-8in', 1 / 16)
    const steep = chosen(all, 'collected', 'drain-8in', 1 / 8)
    expect(gentle.fallMm).toBeCloseTo(steep.fallMm / 2, 6)
    expect(gentle.share).toBeGreaterThan(steep.share)
    expect(gentle.deepestPitMm).toBeLessThan(steep.deepestPitMm)
  })

  test('sizes end at the smallest that does', () => {
    expect(all.filter(({ way }) => way === 'carried-on').map(({ pipe, state }) => [pipe, state])).toEqual([
      ['drain-4in', 'Backs up'],
      ['drain-6in', 'Falls'],
    ])
  })

  test('north and south, six lines of three pits make six pits', () => {
    const across = all.filter(({ axis }) => axis === 'y')
    expect(across.length).toBeGreaterThan(0)
    for (const choice of across) expect(choice).toMatchObject({ way: 'collected', pits: 6, collectors: 6 })
  })
})

/** Two pits in line on a level floor, a drain of 120 in to each, no rows: every number can be worked by hand. */
const twoPits = (): Sketch =>
  bay('60 x 30 ft')
    .drain('W', [
      [40, 100],
      [160, 100],
    ])
    .pit('Pit W', { x: [160, 200], y: [80, 120] })
    .drain('E', [
      [400, 100],
      [520, 100],
    ])
    .pit('Pit E', { x: [520, 560], y: [80, 120] })

describe('two pits in line on a level floor', () => {
  const bayOf = (sketch: Sketch, flow = 20) => running(evaluate(sketch.layout()).bay, gpm(flow))
  const all = collectorChoices(bayOf(twoPits()))
  const line = all.find(({ way, pipe }) => way === 'collected' && pipe === 'drain-4in')!

  // Drains: start -(3 cover + 4.215 - 0.0775 wall) = -7.1375 in, low end 1.25 in lower at -8.3875. East: the collector begins at
  // the first low end (160), ends at the last wall (520): 360 in, 3.75 in of fall. It starts where its drain comes in, -8.3875,
  // and so comes to the pit at -12.1375; overflow 1 in lower, bottom 24 in under that (-13 to -37): 37.1375 in deep.
  // West: it begins at 520 and ends at the wall at 200: 320 in, 3.3333 in, and the pit is 36.7208 in deep. West is shallower.
  test('the collector runs to the pit that is shallower for it', () => {
    expect(toInches(line.fallMm)).toBeCloseTo(320 / 96, 6)
    expect(toInches(line.deepestPitMm)).toBeCloseTo(8.3875 + 320 / 96 + 1 + 24, 3)
    expect(line.pits).toBe(1)
  })

  // Drains 2 x 120 in, collector 320 in; the branches have no length, for the pits' middles lie on the drains.
  test('pipe is counted with the drains that stay', () => {
    expect(toInches(line.pipeMm)).toBeCloseTo(560, 6)
  })

  // Trench of a drain: dug from 7.1375 + 0.0775 + 2 = 9.215 to 10.465 in, mean 9.84, x 120 x 10 = 11,808 cu in, twice.
  // Collector: from 8.3875 + 2.0775 = 10.465 to 13.7983, mean 12.1317, x 320 in x 10.215 (4.215 + 6) = 39,656 cu in.
  // Pit: two floors of 40 x 40 = 3,200 sq in x 36.7208 = 117,507 cu in. Together 180,779 cu in.
  test('what is dug is trenches and one pit of both floors', () => {
    const cubicInches = line.digL / inches(1) ** 3 / 1e-6
    expect(Math.abs(cubicInches - 180_779)).toBeLessThan(60)
  })

  test('an empty drain asks for no more than the smallest pipe', () => {
    const dry = collectorChoices(bayOf(twoPits(), 0)).filter(({ way }) => way === 'collected')
    expect(dry.map(({ pipe, state, share }) => [pipe, state, share])).toEqual([['drain-4in', 'Falls', 0]])
  })

  test('more water is never less full, whatever the pipe', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (flow, more) => {
          const [less, fuller] = [flow, flow * more].map((each) => collectorChoices(bayOf(twoPits(), each)))
          for (const choice of less!) {
            const same = fuller!.find(
              (one) =>
                one.way === choice.way && one.pipe === choice.pipe && one.slopeMmPerM === choice.slopeMmPerM,
            )
            if (same) expect(same.share).toBeGreaterThanOrEqual(choice.share - 1e-9)
          }
        },
      ),
      { seed: 1207, numRuns: 20 },
    )
  })

  test('a floor that lies higher over the zero changes no fall and no depth', () => {
    const raised = collectorChoices(bayOf(twoPits().level([0, 0], 40))).find(
      ({ way }) => way === 'collected',
    )!
    expect(raised.fallMm).toBeCloseTo(line.fallMm, 6)
    expect(raised.deepestTrenchMm).toBeCloseTo(line.deepestTrenchMm, 6)
  })
})

describe('where there is nothing to compare', () => {
  test('one pit stays as it is', () => {
    const one = bay('40 x 30 ft')
      .drain('D', [
        [40, 100],
        [160, 100],
      ])
      .pit('Pit', { x: [160, 200], y: [80, 120] })
    expect(collectorChoices(evaluate(one.layout()).bay).map(({ way }) => way)).toEqual(['as-drawn'])
  })

  test('a drain without a pit is named, and a bay of such has no choices', () => {
    const none = evaluate(
      bay('40 x 30 ft')
        .drain('D', [
          [40, 100],
          [160, 100],
        ])
        .layout(),
    ).bay
    expect(collectorChoices(none)).toEqual([])
    expect(drainsLeftOut(none)).toHaveLength(1)
  })

  test('drains that run against each other are not carried on', () => {
    const against = twoPits()
      .drain('Back', [
        [320, 110],
        [200, 110],
      ])
      .layout()
    const ways = collectorChoices(running(evaluate(against).bay, gpm(10))).map(({ way }) => way)
    expect(ways).toContain('collected')
    expect(ways).not.toContain('carried-on')
  })
})
