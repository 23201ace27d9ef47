import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mirrorPoint, type Mirror } from '../../../src/geometry/motion'
import { length3, type Place } from '../../../src/geometry/point'
import type { Built } from '../../../src/model/built'
import type { FeedFacts } from '../../../src/model/feedFacts'
import { ahead } from '../../../src/parts/footprint'
import { pathLength } from '../../../src/parts/points'
import { rackRow } from '../../../src/parts/rack-row/kind'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches, onTick, toInches } from '../../../src/units/length'
import { anyFeed, type FeedValues } from '../../support/anyFeed'
import { build, joineryOf, row } from '../../support/rackRows'

const SEED = 20_261_125

const anyRow: fc.Arbitrary<RackRow> = fc
  .record({
    racks: fc.integer({ min: 1, max: 8 }),
    barsPerRack: fc.integer({ min: 4, max: 12 }),
    lines: fc.integer({ min: 1, max: 5 }),
    lineSpacingMm: fc.integer({ min: 5, max: 30 }).map((value) => onTick(inches(value))),
    railSpacingMm: fc.integer({ min: 12, max: 54 }).map((value) => onTick(inches(value))),
    midPairs: fc.integer({ min: 0, max: 4 }),
    heading: fc.constantFrom(0, 90, 180, 270),
    joint: fc.constantFrom('J1', 'J3'),
    fallsTo: fc.constantFrom('start', 'end'),
    takenOut: fc
      .uniqueArray(fc.integer({ min: 0, max: 300 }), { maxLength: 12 })
      .map((towers) => towers.sort((a, b) => a - b)),
    feed: anyFeed,
  })
  .map(({ feed, ...values }) => row({ ...values, ...feed } as Partial<RackRow>))

const forAnyRow = (check: (part: RackRow, built: Built, feed: FeedFacts) => void): void => {
  fc.assert(
    fc.property(anyRow, (part) => {
      const built = build(part)
      check(part, built, built.feed!)
    }),
    { seed: SEED, numRuns: 50 },
  )
}

/** Length by role and stock, mm. */
const lengths = (pieces: readonly (readonly [string, number])[]): Map<string, number> => {
  const sums = new Map<string, number>()
  for (const [key, mm] of pieces) sums.set(key, (sums.get(key) ?? 0) + mm)
  return sums
}

/** Joints that water reaches from the inlet, through valves open or shut. */
const reached = ({ joints, pipes, valves }: FeedFacts): Set<number> => {
  const links = [...pipes, ...(valves ? [valves] : [])]
  const next = joints.map((): number[] => [])
  for (const { from, to } of links) {
    next[from]!.push(to)
    next[to]!.push(from)
  }
  const seen = new Set([0])
  for (const joint of seen) for (const other of next[joint]!) seen.add(other)
  return seen
}

describe('the pipes of any row', () => {
  test('are as long, role by role and stock by stock, as those that are drawn and cut', () => {
    forAnyRow((_, { tubes }, { pipes }) => {
      const drawn = lengths(
        tubes
          .filter(({ role }) => role !== 'microtube')
          .map(({ role, stock, path }) => [`${role} ${stock}`, pathLength(path)] as const),
      )
      const told = lengths(pipes.map(({ role, stock, lengthMm }) => [`${role} ${stock}`, lengthMm] as const))
      expect([...told.keys()].sort()).toEqual([...drawn.keys()].sort())
      for (const [key, mm] of told) expect(mm).toBeCloseTo(drawn.get(key)!, 5)
    })
  })

  test('are straight from joint to joint, with losses that are numbers', () => {
    forAnyRow((_, _built, { joints, pipes }) => {
      const wrong = pipes.filter(
        ({ from, to, lengthMm, lossK }) =>
          !(Math.abs(length3(joints[from]!, joints[to]!) - lengthMm) < 1e-6) ||
          !(lengthMm > 0 && lossK >= 0 && Number.isFinite(lossK)),
      )
      expect(wrong).toEqual([])
    })
  })

  test('bring water to every joint', () => {
    forAnyRow((_, _built, feed) => {
      expect(reached(feed).size).toBe(feed.joints.length)
    })
  })

  test('are a tree, but for ways round: one a lateral split twice, and in a ring one for each lateral past the first', () => {
    forAnyRow((_, _built, { kind, joints, pipes, valves, laterals }) => {
      const loops = pipes.length + (valves ? 1 : 0) - (joints.length - 1)
      expect(loops).toBe(kind === 'ring' || kind === 'double-split' ? laterals.length : 0)
    })
  })

  test('begin at the mouth of the row', () => {
    forAnyRow((part, { mouths }, { joints, valves, shareJoint }) => {
      const role = part.valveSet === 'own' ? 'zone-inlet' : 'shared-inlet'
      expect(mouths.filter((mouth) => mouth.role === role).map(({ at }) => at)).toEqual([joints[0]])
      expect(valves === undefined).toBe(part.valveSet === 'shared')
      if (!valves) expect(shareJoint).toBe(0)
    })
  })
})

describe('the tubes of any row', () => {
  test('are those that are drawn, in the order of the towers', () => {
    forAnyRow((_, { tubes, mouths }, feed) => {
      const heads = mouths.filter(({ role }) => role === 'tower-head')
      const drawn = tubes.filter(({ role }) => role === 'microtube')
      expect([feed.tubes.length, drawn.length]).toEqual([heads.length, heads.length])
      const wrong = feed.tubes.filter((tube, index) => {
        const { station, line, at } = heads[index]!
        const { path, lengthMm, stock } = drawn[index]!
        return (
          tube.station !== station ||
          tube.line !== line ||
          tube.outlet !== at ||
          path[0] !== feed.joints[tube.joint] ||
          path[1] !== at ||
          lengthMm !== tube.lengthMm ||
          stock !== tube.stock
        )
      })
      expect(wrong).toEqual([])
    })
  })

  test('reach their tower with the slack to turn it', () => {
    forAnyRow((part, _built, { tubes, joints }) => {
      const short = tubes.filter(
        ({ joint, outlet, lengthMm }) =>
          lengthMm < length3(joints[joint]!, outlet) + part.tubeSlackMm - 1e-9 ||
          lengthMm < (part.gradedTubes.length === 0 ? part.microtubeMm : 0),
      )
      expect(short).toEqual([])
    })
  })

  test('leave a lateral right at their own station', () => {
    forAnyRow((part, _built, { tubes, laterals, joints }) => {
      const laid = new Map<number, number>()
      for (const { joints: run, alongMm } of laterals)
        run.forEach((joint, index) => laid.set(joint, alongMm[index]!))
      const along = (place: Place) => ahead(part.at, part.heading, place)
      const astray = tubes.filter(
        ({ joint, outlet }) =>
          !(Math.abs(laid.get(joint)! - along(outlet)) < 1e-5) ||
          !(Math.abs(along(joints[joint]!) - along(outlet)) < 1e-5),
      )
      expect(astray).toEqual([])
    })
  })
})

describe('the laterals of any row', () => {
  test('run from the start of the row to its end, in order', () => {
    forAnyRow((part, _built, { kind, laterals }) => {
      laterals.forEach(({ joints, alongMm, fedAt, ends }, index) => {
        const isRing = kind === 'ring' && index === 0
        const lengthMm = part.racks * part.rackLengthMm
        expect(alongMm).toHaveLength(joints.length)
        expect([alongMm[0], Math.max(...alongMm)]).toEqual([0, expect.closeTo(lengthMm, 6)])
        if (!isRing) expect(alongMm).toEqual([...alongMm].sort((a, b) => a - b))
        if (isRing) expect(joints.at(-1)).toBe(joints[0])
        for (const joint of [...fedAt, ...ends.map((end) => end.joint)]) expect(joints).toContain(joint)
      })
    })
  })

  test('rise evenly over their length, and leave the open ends of the tubes where they are', () => {
    forAnyRow((part, built, { laterals, joints }) => {
      const lengthMm = part.racks * part.rackLengthMm
      for (const lateral of laterals.filter(({ riseMm }) => riseMm !== 0)) {
        const foot = joints[lateral.joints[0]!]!.z
        const astray = lateral.joints.filter((joint, index) => {
          const share = lateral.alongMm[index]! / lengthMm
          return !(Math.abs(joints[joint]!.z - foot - lateral.riseMm * share) < 1e-5)
        })
        expect(astray).toEqual([])
      }
      const level = build({ ...part, lateralRiseMm: 0 })
      expect(built.feed!.tubes.map(({ outlet }) => outlet)).toEqual(
        level.feed!.tubes.map(({ outlet }) => outlet),
      )
    })
  })
})

const carried = (joints: readonly Place[], mirror: Mirror): Place[] =>
  joints.map((joint) => ({ ...mirrorPoint(joint, mirror), z: joint.z }))

const expectNear = (found: readonly Place[], wanted: readonly Place[]): void => {
  expect(found).toHaveLength(wanted.length)
  expect(found.filter((place, index) => !(length3(place, wanted[index]!) < 0.02))).toEqual([])
}

describe('a row in a mirror', () => {
  test.each(['x', 'y'] as const)(
    'of %s has its feed in the mirror, pipe by pipe and tower by tower',
    (axis) => {
      fc.assert(
        fc.property(anyRow, (part) => {
          const mirror = { axis, atMm: inches(33) }
          const before = build(part).feed!
          const after = build(rackRow.mirror(part, mirror)).feed!
          expectNear(after.joints, carried(before.joints, mirror))
          expect(after.pipes.map(({ from, to, role }) => [from, to, role])).toEqual(
            before.pipes.map(({ from, to, role }) => [from, to, role]),
          )
          const changed = after.pipes.filter(
            ({ lossK }, index) => !(Math.abs(lossK - before.pipes[index]!.lossK) < 1e-6),
          )
          expect(changed).toEqual([])
          const tubeOf = new Map(after.tubes.map((tube) => [`${tube.station} ${tube.line}`, tube]))
          const unlike = before.tubes.filter(({ station, line, joint, group, lengthMm }) => {
            const other = tubeOf.get(`${station} ${part.lines + 1 - line}`)!
            return (
              other.joint !== joint || other.group !== group || Math.abs(other.lengthMm - lengthMm) > 0.02
            )
          })
          expect(unlike).toEqual([])
        }),
        { seed: SEED, numRuns: 30 },
      )
    },
  )
})

test('gutters that fall the other way leave the feed where it is', () => {
  fc.assert(
    fc.property(anyRow, (part) => {
      const turned: RackRow = { ...part, fallsTo: part.fallsTo === 'end' ? 'start' : 'end' }
      const [before, after] = [build(part).feed!, build(turned).feed!]
      expectNear(after.joints, before.joints)
      const joints = (feed: FeedFacts) =>
        feed.tubes.map(({ station, line, joint }) => `${station} ${line} ${joint}`).sort()
      expect(joints(after)).toEqual(joints(before))
    }),
    { seed: SEED, numRuns: 30 },
  )
})

/*
 * Take-off rules of the trade notes, common practice, no source, with the riser pipe beside all laterals: header tees n - 1;
 * centre tees n; quarter tees 2 n; flush ends n, or 2 n of a split feed; elbows at foot and head, and at the header's end
 * where no centre tee is.
 */
describe('pipe fittings of rows of 1 to 20 racks and 1 to 5 lines', () => {
  const feeds: readonly FeedValues['feed'][] = ['straight', 'centre-split', 'double-split']
  test.each(feeds)('%s', (feed) => {
    for (let racks = 1; racks <= 20; racks++)
      for (let lines = 1; lines <= 5; lines++) {
        const n = 1 + ((racks + lines) % lines)
        // Pairs at both ends and 0 to 4 between the ends of a rack; one stands in the middle of an even number of bays.
        const midPairs = racks % 5
        const isOff = feed !== 'straight' && (racks * (midPairs + 1)) % 2 === 1
        const part = row({
          racks,
          lines,
          laterals: n,
          feed,
          midPairs,
          lineSpacingMm: 127,
          railSpacingMm: 1371.6,
        })
        const built = build(part)
        const found = ['tee', 'elbow', 'lateral-flush-cap'].map((noun) => joineryOf(built, noun))
        const tees = { straight: 0, 'centre-split': n, 'double-split': 3 * n, ring: 0 }[feed]
        const isSplit = feed !== 'straight'
        expect(found, JSON.stringify(part)).toEqual([
          n - 1 + tees,
          (isSplit ? 2 : 3) + Number(isOff),
          isSplit ? 2 * n : n,
        ])
        expect(built.feed!.tubes).toHaveLength(racks * 8 * lines)
      }
  })
})

describe('the losses on the way', () => {
  // A threaded elbow 1.5, a tee 0.9 straight through and 2.0 into its branch: tables of minor loss coefficients.
  const { pipes } = build(row()).feed!

  test('are those of an insert elbow at the foot and at the head', () => {
    const risers = pipes.filter(({ role }) => role === 'riser-pipe')
    for (const { lossK } of risers) expect(lossK).toBeCloseTo(1.5 + 0.6, 2)
  })

  test('are of barbs along a lateral: 2 in of pipe for each, 2 of them a station', () => {
    // f L / D = 0.036 x 2 / 0.824 = 0.087 a barb.
    const middle = pipes.filter(({ role }) => role === 'lateral')[10]!
    expect(middle.lossK).toBeCloseTo(2 * 0.0874, 3)
  })

  test('are alike for both ways that leave a centre tee', () => {
    const split = build(row({ feed: 'centre-split' })).feed!
    const [{ fedAt }] = split.laterals as [FeedFacts['laterals'][0]]
    const ways = split.pipes.filter(
      ({ role, from, to }) => role === 'lateral' && [from, to].includes(fedAt[0]!),
    )
    expect(ways).toHaveLength(2)
    expect(ways[0]!.lossK).toBeCloseTo(ways[1]!.lossK, 9)
    expect(toInches(ways[0]!.lengthMm)).toBeCloseTo(7.5, 6)
  })
})
