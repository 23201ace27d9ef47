import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import { shift, quarterTurn } from '../../../src/geometry/motion'
import type { Layout } from '../../../src/layout/schema'
import { raisePit } from '../../../src/layout/pitLevels'
import { fromTicks } from '../../../src/units/length'
import { kestrelBend } from '../../support/scenarios/kestrelBend'
import { oldDairy } from '../../support/scenarios/oldDairy'
import { mirroredBay, movedBay } from '../../support/wholeBay'

/** To 1/1000 mm: far under a tick, far over what a machine rounds. */
const rounded = (mm: number): number => Math.round(mm * 1000) / 1000 + 0

/** What is dug, cut and shimmed, wherever the levels are counted from. */
const depths = (layout: Layout) => {
  const { levels } = evaluate(layout).bay
  const pegs = [...levels.drains].flatMap(([part, { pegs }]) =>
    pegs.map(({ fromLowMm, digMm, cutMm, coverMm }) =>
      [part, ...[fromLowMm, digMm, cutMm, coverMm].map(rounded)].join(' '),
    ),
  )
  const shims = [...levels.feet].map(([part, feet]) =>
    [part, ...feet.map(({ shimMm }) => rounded(shimMm)).sort((a, b) => a - b)].join(' '),
  )
  return [...pegs, ...shims].sort()
}

const heights = (layout: Layout) =>
  [...evaluate(layout).bay.levels.drains.values()]
    .flatMap(({ pegs }) => pegs.map(({ invertMm }) => rounded(invertMm)))
    .sort((a, b) => a - b)

const samples = [
  ['Kestrel Bend', kestrelBend().layout()],
  ['Old Dairy', oldDairy().layout()],
] as const

const ticks = fc.integer({ min: -200_000, max: 200_000 }).map(fromTicks)

/** Every level of a file raised: spots, benchmark, pits, and the drains that start where they were told. */
const raised = (layout: Layout, byMm: number): Layout => {
  const pits = layout.parts.filter(({ kind }) => kind === 'sump').map(({ id }) => id)
  const { house, parts } = layout
  const lifted: Layout = {
    ...layout,
    house: {
      ...house,
      spotLevels: house.spotLevels.map((spot) => ({ ...spot, levelMm: spot.levelMm + byMm })),
      benchmark: { ...house.benchmark, levelMm: house.benchmark.levelMm + byMm },
    },
    parts: parts.map((part) =>
      part.kind === 'drain-line' && part.startInvertMm !== null
        ? { ...part, startInvertMm: part.startInvertMm + byMm }
        : part,
    ),
  }
  return pits.reduce((after, pit) => raisePit(after, pit, byMm), lifted)
}

describe.each(samples)('%s', (_, layout) => {
  test('another value of the benchmark changes no level, cut or shim', () => {
    const before = [depths(layout), heights(layout)]
    const renamed: Layout = {
      ...layout,
      house: { ...layout.house, benchmark: { ...layout.house.benchmark, valueMm: 25_400 } },
    }
    expect([depths(renamed), heights(renamed)]).toEqual(before)
  })

  test('all levels raised by as much change no cut, dig, cover or shim', () => {
    fc.assert(
      fc.property(ticks, (byMm) => {
        expect(depths(raised(layout, byMm))).toEqual(depths(layout))
      }),
      { seed: 20_261_125, numRuns: 8 },
    )
  })

  test('moved, turned or in a mirror it has the same levels', () => {
    const seen = [
      movedBay(layout, shift(fromTicks(1_234_567), fromTicks(-7_654_321))),
      movedBay(layout, quarterTurn({ x: 0, y: 0 }, 1)),
      mirroredBay(layout, { axis: 'x', atMm: 0 }),
    ]
    for (const other of seen) {
      expect(depths(other)).toEqual(depths(layout))
      expect(heights(other)).toEqual(heights(layout))
    }
  })
})
