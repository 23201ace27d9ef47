import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { derive } from '../../src/evaluate/1-derive'
import { join } from '../../src/evaluate/2-join'
import { joinedPipes } from '../../src/evaluate/3-joined-pipes'
import { levels } from '../../src/evaluate/3-levels'
import { shift } from '../../src/geometry/motion'
import type { Layout } from '../../src/layout/schema'
import type { Built } from '../../src/model/built'
import { kindOf } from '../../src/parts'
import { fromTicks, toInches } from '../../src/units/length'
import { bay, type MainSpot, type Sketch } from '../support/bay'

const pipesOf = (layout: Layout): readonly Built[] => {
  const { site, built } = derive(layout)
  const joins = join(built, layout.settings)
  const builtOf = new Map(built.map((each) => [each.part, each]))
  return joinedPipes(built, joins, { builtOf, levels: levels(built, joins, site, layout.settings.datum) })
}

/** Each pipe as `zone-pipe pe-1 48.48`, its length in inches. */
const pipes = (sketch: Sketch): string[] =>
  pipesOf(sketch.layout()).flatMap(({ tubes }) =>
    tubes.map(({ role, stock, lengthMm }) => `${role} ${stock} ${toInches(lengthMm).toFixed(2)}`),
  )

/** How many of each fitting, without clamps: `elbow-pe-1 2`. */
const counted = (sketch: Sketch, isCounted = (item: string) => !item.startsWith('clamp')): string[] => {
  const counts = new Map<string, number>()
  for (const { fittings } of pipesOf(sketch.layout()))
    for (const { item } of fittings) if (isCounted(item)) counts.set(item, (counts.get(item) ?? 0) + 1)
  return [...counts].map(([item, count]) => `${item} ${count}`).sort()
}

/** Floor at 0; the row's riser pipe stands at (180, 300), its foot 4 in over the floor. */
const withRow = (height: number): Sketch =>
  bay('60 x 60 ft')
    .row('Row', [200, 300], { racks: 1 })
    .main(
      'Main',
      [
        [100, 240],
        [300, 240],
      ],
      { height },
    )

describe('from the main to a row', () => {
  test('a main on the floor: straight across to the foot of the riser pipe, and 1 % over', () => {
    // 60 in of floor, level: 60 x 1.01.
    expect(pipes(withRow(4))).toEqual(['zone-pipe pe-1 60.60'])
    // A saddle on the 2 in main gives the 1 in pipe its water.
    expect(counted(withRow(4))).toEqual(['main-cap-pe-2 2', 'saddle-pe-2-to-pe-1 1'])
  })

  test('a main overhead: across, then down, with an elbow at the corner and one before the foot', () => {
    // 60 in across and 80 in down: 140 x 1.01.
    expect(pipes(withRow(84))).toEqual(['zone-pipe pe-1 141.40'])
    expect(counted(withRow(84))).toEqual(['elbow-pe-1 2', 'main-cap-pe-2 2', 'saddle-pe-2-to-pe-1 1'])
  })

  test('a main that passes right over the foot drops straight down', () => {
    const over = bay('60 x 60 ft')
      .row('Row', [200, 300], { racks: 1 })
      .main(
        'Main',
        [
          [180, 200],
          [180, 400],
        ],
        { height: 84 },
      )
    expect(pipes(over)).toEqual(['zone-pipe pe-1 80.80'])
    expect(counted(over)).toEqual(['elbow-pe-1 1', 'main-cap-pe-2 2', 'saddle-pe-2-to-pe-1 1'])
  })

  test('a main no bigger than the pipe has a tee in it, not a saddle on it', () => {
    const small = bay('60 x 60 ft')
      .row('Row', [200, 300], { racks: 1 })
      .main(
        'Main',
        [
          [100, 240],
          [300, 240],
        ],
        { height: 4, pipe: 'pe-1' },
      )
    expect(counted(small)).toEqual(['main-cap-pe-1 2', 'tee-pe-1 1'])
  })

  test('the foot of a row on a low floor is as much lower as its datum', () => {
    // The whole floor lies 10 in under the benchmark, and the main with it: nothing changes.
    const low = (height: number) => withRow(height).level([0, 0], -10)
    expect(pipes(low(84))).toEqual(pipes(withRow(84)))
  })
})

test('a row behind another’s valve has a tee at the head of that row’s riser pipe', () => {
  const pair = withRow(4).row('Behind', [260, 300], { racks: 1, valveSet: 'shared' })
  // From riser pipe to riser pipe, both at the laterals: 60 in.
  expect(pipes(pair)).toEqual(['zone-pipe pe-1 60.60', 'zone-pipe pe-1 60.60'])
  expect(counted(pair)).toEqual(['main-cap-pe-2 2', 'saddle-pe-2-to-pe-1 1', 'tee-pe-1 1'])
})

/** The pump's water leaves the pit at its rim, at x 118 and y 139 in, level 0. */
const withPit = (points: readonly MainSpot[], values = {}): Sketch =>
  bay('60 x 60 ft')
    .pit('Pit', { x: [100, 136], y: [43, 157] }, values)
    .main('Main', points, { height: 84 })

describe('from the pit to its mains', () => {
  test('up at the pump, across, and round into the main', () => {
    const east = withPit([
      [118, 150],
      [400, 150],
    ])
    // 84 in up and 11 in north, then the main goes east: 95 x 1.01.
    expect(pipes(east)).toEqual(['pump-pipe pe-2 95.95'])
    expect(counted(east)).toEqual(['elbow-pe-2 2', 'main-cap-pe-2 1'])
  })

  test('straight on into a main that runs the same way, by a coupling', () => {
    const north = withPit([
      [118, 150],
      [118, 400],
    ])
    expect(counted(north)).toEqual(['coupling-pe-2 1', 'elbow-pe-2 1', 'main-cap-pe-2 1'])
  })

  test('into the middle of a main by a tee, with both its ends capped', () => {
    const halves = withPit([
      [20, 150],
      [400, 150],
    ])
    expect(counted(halves)).toEqual(['elbow-pe-2 1', 'main-cap-pe-2 2', 'tee-pe-2 1'])
    // Elbow 2 barbs, tee 3, two caps 1 each, two clamps a barb on 2 in pipe: (2 + 3 + 2) x 2.
    expect(counted(halves, (item) => item.startsWith('clamp'))).toEqual(['clamp-pe-2 14'])
  })

  test('into a smaller main by a reducing coupling', () => {
    const small = bay('60 x 60 ft')
      .pit('Pit', { x: [100, 136], y: [43, 157] })
      .main(
        'Main',
        [
          [118, 150],
          [118, 400],
        ],
        { height: 84, pipe: 'pe-1-1/2' },
      )
    expect(counted(small)).toEqual([
      'elbow-pe-2 1',
      'main-cap-pe-1-1/2 1',
      'reducing-coupling-pe-2-to-1-1/2 1',
    ])
  })

  test('to two mains of its own by a tee over the pump', () => {
    const two = withPit([
      [118, 150],
      [118, 400],
    ]).main(
      'Other',
      [
        [118, 128],
        [118, 20],
      ],
      { height: 84 },
    )
    expect(counted(two)).toEqual(['coupling-pe-2 2', 'elbow-pe-2 2', 'main-cap-pe-2 2', 'tee-pe-2 1'])
  })
})

describe('the ends of mains', () => {
  const main = (sketch: Sketch, name: string, points: readonly MainSpot[]) => sketch.main(name, points)
  const long = main(bay('60 x 60 ft'), 'Long', [
    [100, 100],
    [400, 100],
  ])

  test('a branch ends in a tee on the other, and a main goes on from another by a coupling or round an elbow', () => {
    expect(
      counted(
        main(long, 'Branch', [
          [200, 100],
          [200, 300],
        ]),
      ),
    ).toEqual(['main-cap-pe-2 3', 'tee-pe-2 1'])
    expect(
      counted(
        main(long, 'On', [
          [400, 100],
          [500, 100],
        ]),
      ),
    ).toEqual(['coupling-pe-2 1', 'main-cap-pe-2 2'])
    expect(
      counted(
        main(long, 'Round', [
          [400, 100],
          [400, 300],
        ]),
      ),
    ).toEqual(['elbow-pe-2 1', 'main-cap-pe-2 2'])
  })

  test('a ring has no end: a coupling where it closes on a straight, nothing more where it closes in a corner', () => {
    const ring = (points: readonly MainSpot[]) => counted(main(bay('60 x 60 ft'), 'Ring', points))
    const square: readonly MainSpot[] = [
      [100, 100],
      [400, 100],
      [400, 400],
      [100, 400],
      [100, 100],
    ]
    const fromSide: readonly MainSpot[] = [
      [250, 100],
      [400, 100],
      [400, 400],
      [100, 400],
      [100, 100],
      [250, 100],
    ]
    expect(ring(square)).toEqual([])
    expect(ring(fromSide)).toEqual(['coupling-pe-2 1'])
  })
})

test('a head box gives by a pipe of its main’s size, down from the bottom of its water', () => {
  const box = bay('60 x 60 ft')
    .headBox('Box', { x: [188, 212], y: [91, 109] })
    .main(
      'Main',
      [
        [230, 100],
        [500, 100],
      ],
      { pipe: 'pe-1-1/2', height: 70 },
    )
  // 88 - 12 = 76 in down to 70, which the pipe takes in a bow: sqrt(30^2 + 6^2) = 30.594 in, x 1.01.
  expect(pipes(box)).toEqual(['pump-pipe pe-1-1/2 30.90'])
})

const moved = (layout: Layout, dxMm: number, dyMm: number): Layout => ({
  ...layout,
  parts: layout.parts.map((part) => kindOf(part).move(part, shift(dxMm, dyMm))),
})

const all = withPit([
  [118, 150],
  [118, 250],
  [400, 250],
])
  .row('A', [200, 300], { racks: 1 })
  .row('B', [260, 300], { racks: 1, valveSet: 'shared' })
  .layout()

test('the whole bay elsewhere has the same pipes there', () => {
  const ticks = fc.integer({ min: -3_000_000, max: 3_000_000 })
  fc.assert(
    fc.property(ticks, ticks, (x, y) => {
      const [dx, dy] = [fromTicks(x), fromTicks(y)]
      const here = pipesOf(all)
      const there = pipesOf(moved(all, dx, dy))
      expect(there.map(({ part, fittings }) => [part, fittings.map(({ item }) => item)])).toEqual(
        here.map(({ part, fittings }) => [part, fittings.map(({ item }) => item)]),
      )
      here.forEach(({ tubes }, part) =>
        tubes.forEach(({ path, lengthMm }, tube) => {
          const other = there[part]!.tubes[tube]!
          expect(other.lengthMm).toBeCloseTo(lengthMm, 4)
          path.forEach((at, k) => {
            expect(other.path[k]!.x - dx).toBeCloseTo(at.x, 4)
            expect(other.path[k]!.y - dy).toBeCloseTo(at.y, 4)
            expect(other.path[k]!.z).toBeCloseTo(at.z, 4)
          })
        }),
      )
    }),
    { seed: 20_251_126, numRuns: 25 },
  )
})

test('one row moved makes one row’s pipes anew', () => {
  const before = pipesOf(all)
  const after = pipesOf({
    ...all,
    parts: all.parts.map((part) => (part.name === 'B' ? kindOf(part).move(part, shift(0, 25.4)) : part)),
  })
  const same = after.filter((pipe, index) => pipe === before[index]).length
  expect([before.length, same]).toEqual([4, 3])
})
