import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { pegsAlong } from '../../../src/evaluate/levels/pegs'
import type { Layout } from '../../../src/layout/schema'
import type { DrainRun } from '../../../src/model/levels'
import { toInches } from '../../../src/units/length'
import { bay, type Sketch } from '../../support/bay'
import { PEGS_N } from '../../support/pegs'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { inchesOf } from '../../support/site'

const runIn = (layout: Layout, name: string): DrainRun =>
  evaluate(layout).bay.levels.drains.get(layout.parts.find((part) => part.name === name)!.id)!

const bent: Sketch = bay('60 x 60 ft')
  .drain('Line', [
    [60, 300],
    [300, 300],
    [300, 60],
  ])
  .drain('Branch', [
    [180, 500],
    [180, 300],
  ])

describe('the sample bay’s pegs', () => {
  /*
   * Worked example of the trade notes, hand arithmetic: stations from the pit wall, inverts and floor to 0.01 in, dig with 2 in
   * of bed to the eighth. The S line lies 104 in further south, where floor and pipe are 104 x 2/856 = 0.243 in lower.
   */
  test.each([
    ['Drain N', 0, -8.23, -11.08],
    ['Drain S', -0.243, -8.47, -11.32],
  ])('%s', (name, lower, start, inlet) => {
    const { pegs } = runIn(kestrelBend().layout(), name)
    const ends = [pegs[0]!, pegs.at(-1)!]
    expect(ends.map(({ why }) => why)).toEqual([['end'], ['start']])
    expect(ends.map(({ fromLowMm }) => inchesOf(fromLowMm))).toEqual([0, 274])
    for (const [peg, level] of [
      [ends[0]!, inlet],
      [ends[1]!, start],
    ] as const)
      expect(Math.abs(toInches(peg.invertMm) - level)).toBeLessThan(0.011)
    const atOutlets = pegs.filter(({ outlets }) => outlets > 0)
    const table = PEGS_N.toReversed()
    expect(atOutlets.map(({ fromLowMm }) => inchesOf(fromLowMm))).toEqual(table.map(([station]) => station))
    for (const [index, [, invert, ground, dig]] of table.entries()) {
      const peg = atOutlets[index]!
      expect(Math.abs(toInches(peg.invertMm) - (invert + lower))).toBeLessThan(0.011)
      expect(Math.abs(toInches(peg.groundMm) - (ground + lower))).toBeLessThan(0.011)
      expect(Math.round(toInches(peg.digMm) * 8) / 8).toBe(dig)
      // A 2 in tube, 2.375 in outside, wants a 2-1/2 in saw; the peg stands 6 in over the floor.
      expect([peg.outlets, inchesOf(peg.holeMm), inchesOf(peg.cutMm - peg.digMm)]).toEqual([1, 2.5, 6])
    }
  })
})

test('pegs stand at bends and branches too, numbered from the low end up', () => {
  // From the low end: 240 in to the bend, 120 in more to the branch, 480 in all. The steps at 120 and no other are left.
  const { pegs } = runIn(bent.layout(), 'Line')
  expect(pegs.map(({ number, fromLowMm, why }) => [number, inchesOf(fromLowMm), ...why])).toEqual([
    [1, 0, 'end'],
    [2, 120, 'step'],
    [3, 240, 'bend'],
    [4, 360, 'branch'],
    [5, 480, 'start'],
  ])
})

const station = (alongMm: number) => ({
  at: { x: alongMm, y: 0 },
  alongMm,
  groundMm: 0,
  invertMm: -200,
  crownMm: -100,
  coverMm: 100,
  digMm: 250,
})

test('two outlets at one place are one peg with the larger hole', () => {
  const outlet = (alongMm: number, holeMm: number) => ({ alongMm, holeMm, why: 'outlet' as const })
  const pegs = pegsAlong(2000, [outlet(1000, 30), outlet(1000, 60), outlet(1500, 30)], station, 100)
  expect(pegs.map(({ outlets, holeMm, cutMm }) => [outlets, holeMm, cutMm])).toEqual([
    [0, 0, 350],
    [1, 30, 350],
    [2, 60, 350],
    [0, 0, 350],
  ])
})

test('no two pegs are further apart than a string of 10 ft and a foot more, and their numbers run on', () => {
  const along = fc.double({ min: 0, max: 40_000, noNaN: true })
  fc.assert(
    fc.property(along, fc.array(along, { maxLength: 8 }), (lengthMm, places) => {
      const named = places
        .filter((alongMm) => alongMm <= lengthMm)
        .map((alongMm) => ({ alongMm, holeMm: 60, why: 'outlet' as const }))
      const pegs = pegsAlong(lengthMm, named, station, 150)
      expect(pegs.map(({ number }) => number)).toEqual(pegs.map((_, index) => index + 1))
      const gaps = pegs.slice(1).map(({ fromLowMm }, index) => fromLowMm - pegs[index]!.fromLowMm)
      expect(Math.max(0, ...gaps)).toBeLessThanOrEqual(3048 + 2 * 304.8)
      expect(Math.min(1, ...gaps)).toBeGreaterThan(0)
    }),
    { seed: 20_261_125, numRuns: 300 },
  )
})
