import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boxOf, grown, holds } from '../../../src/geometry/box'
import { mirrorPoint, movePoint, quarterTurn, shift, type Motion } from '../../../src/geometry/motion'
import { length3, type Place, type Point } from '../../../src/geometry/point'
import type { Built } from '../../../src/model/built'
import { pathLength } from '../../../src/parts/points'
import { rackRow } from '../../../src/parts/rack-row/kind'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches, onTick } from '../../../src/units/length'
import { anyFeed } from '../../support/anyFeed'
import { bodiesOf } from '../../support/footprints'
import { build, marked, row } from '../../support/rackRows'
import { at } from '../../support/site'

const SEED = 20_240_611

/** Whole sixteenths between two lengths in inches, as a file holds them. */
const length = (from: number, to: number) =>
  fc.integer({ min: from * 16, max: to * 16 }).map((sixteenths) => onTick(inches(sixteenths / 16)))

const oneOf = <T>(...values: readonly T[]) => fc.constantFrom(...values)

/** Any row that a person could lay, by the ranges of its fields. */
const anyRow: fc.Arbitrary<RackRow> = fc
  .record({
    heading: oneOf(0, 90, 180, 270),
    racks: fc.integer({ min: 1, max: 6 }),
    rackLengthMm: length(48, 120),
    barsPerRack: fc.integer({ min: 4, max: 12 }),
    lines: fc.integer({ min: 1, max: 5 }),
    lineSpacingMm: length(5, 30),
    takenOut: fc
      .uniqueArray(fc.integer({ min: 0, max: 200 }), { maxLength: 6 })
      .map((towers) => towers.sort((a, b) => a - b)),
    towerMm: length(24, 96),
    railSpacingMm: length(12, 54),
    midPairs: fc.integer({ min: 0, max: 4 }),
    base: oneOf('long-runners', 'short-runners'),
    footPlateMm: length(0, 4),
    riserMm: fc.option(length(24, 120)),
    joint: oneOf('J1', 'J2', 'J3', 'J4', 'J5'),
    rackGapMm: length(4, 48),
    lapMm: length(4, 24),
    endInMm: oneOf(0, 0, onTick(inches(3)), onTick(inches(24)), onTick(inches(36))),
    bracing: oneOf('both', 'along', 'across', 'none'),
    hold: oneOf('free', 'anchored', 'tied'),
    carriedBy: oneOf('floor', 'floor', 'floor', 'house'),
    drips: oneOf('tied', 'painted', 'bare'),
    rail: oneOf('1/2', '3/4', '1'),
    bar: oneOf('1/2', '3/4', '1', '1-1/4'),
    oneBit: fc.boolean(),
    insertionMm: length(3, 8),
    railEndMm: length(1.5, 12),
    overlapMm: length(2, 24),
    pastRiserMm: length(1, 12),
    gutter: oneOf('gutter-5in', 'gutter-4in'),
    fallsTo: oneOf('start', 'end'),
    bearerTopMm: fc.option(length(0, 60)),
    feed: anyFeed,
  })
  .map(({ feed, ...values }) => row({ ...values, ...feed } as Partial<RackRow>))

const forAnyRow = (check: (part: RackRow, built: Built) => void): void => {
  fc.assert(
    fc.property(anyRow, (part) => check(part, build(part))),
    { seed: SEED, numRuns: 150 },
  )
}

const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value]
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : []
}

describe('any row', () => {
  test('is drawn as long as it is cut, stick by stick', () => {
    forAnyRow((_, { sticks }) => {
      const wrong = sticks.filter(
        ({ from, to, lengthMm }) => !(lengthMm > 0 && Math.abs(length3(from, to) - lengthMm) < 1e-6),
      )
      expect(wrong).toEqual([])
    })
  })

  test('holds no piece of pipe shorter than its path', () => {
    forAnyRow((_, { tubes }) => {
      const short = tubes.filter(({ path, lengthMm }) => lengthMm < pathLength(path) - 1e-9)
      expect(short).toEqual([])
    })
  })

  test('gives numbers that are numbers; only a row without a joint or a riser has nothing to keep clear of', () => {
    forAnyRow((part, { rack, ...things }) => {
      expect(numbersIn(things).every(Number.isFinite)).toBe(true)
      const { barToSleeveMm, barToRiserMm, ...others } = rack!
      expect(numbersIn(others).every(Number.isFinite)).toBe(true)
      expect(Number.isFinite(barToSleeveMm)).toBe(part.racks > 1)
      expect(Number.isFinite(barToRiserMm)).toBe(part.carriedBy === 'floor')
    })
  })

  test('has its timber, conduit and gutters inside its frame', () => {
    forAnyRow((_, built) => {
      const [frame] = bodiesOf(built, 'frame')
      const room = grown(boxOf(frame!.outline), 0.01)
      const outside = built.sticks.filter(({ from, to }) => !holds(room, from) || !holds(room, to))
      expect(outside).toEqual([])
    })
  })

  test('counts what hangs: a head, a hook, a barb and a tube for each tower', () => {
    forAnyRow((part, { rack, mouths, fittings, tubes }) => {
      const places = part.racks * part.barsPerRack * part.lines
      const out = part.takenOut.filter((tower) => tower < places).length
      const counted = [
        mouths.filter(({ role }) => role === 'tower-head').length,
        fittings.filter(({ item }) => item === 'hook').length,
        fittings.filter(({ item }) => item.startsWith('barb-')).length,
        tubes.filter(({ role }) => role === 'microtube').length,
        rack!.towers,
      ]
      expect(counted).toEqual(Array<number>(5).fill(places - out))
    })
  })

  test('has a riser on every foot', () => {
    forAnyRow((_, built) => {
      const risers = marked(built, 'RS-p', 'RS-s', 'RS-d').map(({ from }) => [from.x, from.y])
      expect(built.supports.map(({ at: place }) => [place.x, place.y])).toEqual(risers)
    })
  })
})

const anyEnds = fc.record({
  joint: oneOf('J1' as const, 'J2' as const, 'J4' as const),
  endInMm: oneOf(0, onTick(inches(3)), onTick(inches(24))),
})

/** Along the row from its high end, mm, whichever way it runs. */
const alongFrom = (built: Built, p: Place): number => {
  const { runMm, leftFace, rightFace } = built.rack!
  const outlet = built.mouths.find(({ role }) => role === 'trough-outlet')!.at
  const ends = [leftFace, rightFace].map(({ from, to }) =>
    Math.hypot(outlet.x - from.x, outlet.y - from.y) > Math.hypot(outlet.x - to.x, outlet.y - to.y)
      ? [from, to]
      : [to, from],
  )
  const [[a, b], [c]] = ends as [[Point, Point], [Point]]
  const high = { x: (a.x + c.x) / 2, y: (a.y + c.y) / 2 }
  return ((p.x - high.x) * (b.x - a.x) + (p.y - high.y) * (b.y - a.y)) / runMm
}

describe('rails of any row', () => {
  /** What a rail needs to be carried by: a riser whose hole it runs through, or a strap. */
  test('each lie over a riser pair or a strap at least, and run from end to end of the row', () => {
    forAnyRow((part, built) => {
      const rails = marked(built, 'RL', 'RL-b')
      const carriers =
        part.carriedBy === 'floor'
          ? marked(built, 'RS-p', 'RS-s', 'RS-d').map(({ from }) => from)
          : built.fittings.filter(({ item }) => item === 'house-strap').map(({ at: place }) => place)
      const us = carriers.map((place) => alongFrom(built, place))
      for (const { from, to } of rails) {
        const [a, b] = [alongFrom(built, from), alongFrom(built, to)]
        // Where rails meet in a shared riser, both end short of its middle by half of the gap between them.
        expect(us.some((u) => u > a - part.railGapMm && u < b + part.railGapMm)).toBe(true)
      }
      expect(rails).toHaveLength(2 * part.racks)
      const all = rails.flatMap(({ from, to }) => [alongFrom(built, from), alongFrom(built, to)])
      expect(Math.min(...all)).toBeLessThan(Math.min(...us))
      expect(Math.max(...all)).toBeGreaterThan(Math.max(...us))
    })
  })

  test('go through a hole of each riser that they pass, and lie on its bottom or in what does', () => {
    forAnyRow((part, built) => {
      const conduit = marked(built, 'RL', 'RL-b', 'SV')
      for (const riser of marked(built, 'RS-p', 'RS-s', 'RS-d')) {
        const u = alongFrom(built, riser.from)
        const through = conduit.filter(({ from, to }) => {
          const [a, b] = [alongFrom(built, from), alongFrom(built, to)]
          const offMm = Math.hypot(from.x - riser.from.x, from.y - riser.from.y) ** 2 - (u - a) ** 2
          return a < u - 0.01 && b > u + 0.01 && Math.sqrt(Math.max(0, offMm)) < riser.heightMm / 2
        })
        // Rails that meet over a dowel end within the riser.
        if (part.joint === 'J4' && through.length === 0) continue
        expect(through.length).toBeGreaterThan(0)
        const hole = riser.holes[0]!
        const bottomMm = riser.from.z + hole.centreMm - hole.diameterMm / 2
        if (part.joint === 'J3' && part.oneBit) continue
        const lowest = Math.min(...through.map(({ from, heightMm }) => from.z - heightMm / 2))
        if (!part.oneBit) expect(lowest).toBeCloseTo(bottomMm, 5)
      }
    })
  })
})

describe('bearers', () => {
  test('lie clear of riser pairs and wholly over the runners, as near as they make way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), oneOf(0, 1, 2, 3, 4), anyEnds, (racks, midPairs, ends) => {
        const built = build(row({ racks, midPairs, ...ends }))
        const bearers = marked(built, 'GB').map(({ from }) => from.y)
        const pairs = built.supports.map(({ at: place }) => place.y)
        const runners = marked(built, 'BR').flatMap(({ from, to }) => [from.y, to.y])
        const half = inches(1.75)
        for (const y of bearers)
          expect(Math.min(...pairs.map((pair) => Math.abs(y - pair)))).toBeGreaterThan(half + inches(0.75))
        expect(Math.min(...bearers) - half).toBeGreaterThan(Math.min(...runners))
        expect(Math.max(...bearers) + half).toBeLessThan(Math.max(...runners))
        const gaps = bearers.slice(1).map((y, index) => y - bearers[index]!)
        // 24, and 2-3/4 out of a pair's way, and 3-1/2 out of the outlet's.
        expect(Math.max(...gaps)).toBeLessThan(inches(30.26))
      }),
      { seed: SEED, numRuns: 40 },
    )
  })

  test('lie wholly on one side of each joint between racks that come apart', () => {
    const built = build(row({ joint: 'J2', racks: 6, rackLengthMm: inches(96) }))
    const half = inches(1.75)
    for (const line of [1, 2, 3, 4, 5])
      for (const { from } of marked(built, 'GB'))
        expect(Math.abs(from.y - inches(50 + 96 * line))).toBeGreaterThan(half)
  })
})

const TURNS = [0, 1, 2, 3] as const

const motions: fc.Arbitrary<Motion> = fc.record({
  pivot: fc.record({ x: length(-500, 500), y: length(-500, 500) }),
  quarterTurns: oneOf(...TURNS),
  dxMm: length(-500, 500),
  dyMm: length(-500, 500),
})

/** Every place of a row, with what stands there. */
const places = (built: Built): [string, Place][] => [
  ...built.sticks.flatMap(({ mark, from, to }): [string, Place][] => [
    [mark, from],
    [mark, to],
  ]),
  ...built.fittings.map(({ item, at: place }): [string, Place] => [item, place]),
  ...built.tubes.flatMap(({ role, path }) => path.map((place): [string, Place] => [role, place])),
  ...built.mouths.map(({ role, line, station, at: place }): [string, Place] => [
    `${role} ${line} ${station}`,
    place,
  ]),
  ...built.bodies.flatMap(({ role, outline, toMm }) =>
    outline.map((p): [string, Place] => [role, { ...p, z: toMm }]),
  ),
]

const expectCarried = (before: Built, after: Built, carry: (p: Point) => Point): void => {
  const [old, now] = [places(before), places(after)]
  const left = old.filter(([what, place], index) => {
    const { x, y } = carry(place)
    const [name, found] = now[index]!
    return name !== what || length3(found, { x, y, z: place.z }) > 0.01
  })
  expect(left).toEqual([])
  expect(now).toHaveLength(old.length)
}

describe('a row that is moved or turned', () => {
  test('takes everything along', () => {
    fc.assert(
      fc.property(anyRow, motions, (part, motion) => {
        expectCarried(build(part), build(rackRow.move(part, motion)), (p) => movePoint(p, motion))
      }),
      { seed: SEED, numRuns: 60 },
    )
  })

  test('four quarter turns make a whole one', () => {
    const turn = quarterTurn(at(7, 11))
    const round = TURNS.reduce((part: RackRow) => rackRow.move(part, turn), row())
    expect(round).toEqual(row())
    expect(rackRow.move(rackRow.move(row(), shift(100, -50)), shift(-100, 50))).toEqual(row())
  })
})

const numbered = (station: number, line: number): string => `${station} ${line}`

const headPlaces = ({ mouths }: Built) =>
  new Map(
    mouths
      .filter(({ role }) => role === 'tower-head')
      .map((mouth) => [numbered(mouth.station, mouth.line), mouth] as const),
  )

describe('a row that is mirrored', () => {
  test.each(['x', 'y'] as const)('in %s, keeps each tower at its station and swaps the lines', (axis) => {
    fc.assert(
      fc.property(anyRow, (part) => {
        const mirror = { axis, atMm: inches(33) }
        const after = headPlaces(build(rackRow.mirror(part, mirror)))
        const before = headPlaces(build(part))
        expect(after.size).toBe(before.size)
        for (const { at: place, station, line } of before.values()) {
          const { x, y } = mirrorPoint(place, mirror)
          const found = after.get(numbered(station, part.lines + 1 - line))!.at
          expect(Math.hypot(found.x - x, found.y - y)).toBeLessThan(0.01)
        }
      }),
      { seed: SEED, numRuns: 40 },
    )
  })
})

test('gutters turned to fall the other way leave every tower its number and its place', () => {
  const part = row({ takenOut: [0, 5, 17], racks: 2 })
  const before = headPlaces(build(part))
  const after = headPlaces(build({ ...part, fallsTo: 'start' }))
  expect(after.size).toBe(before.size)
  for (const [key, { at: place }] of before)
    expect(Math.hypot(after.get(key)!.at.x - place.x, after.get(key)!.at.y - place.y)).toBeLessThan(1e-6)
})
