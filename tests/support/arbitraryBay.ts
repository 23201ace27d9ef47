import fc from 'fast-check'
import type { Layout } from '../../src/layout/schema'
import { bay, type Sketch, type Spot } from './bay'

/** Whole inches, as builders type them, so that many things touch, line up and stand at the very edge of a limit. */
const inch = (min: number, max: number) => fc.integer({ min, max })

const spot = fc.tuple(inch(0, 480), inch(0, 600))
const side = fc.constantFrom<Side[]>('south', 'east', 'north', 'west')
const heading = fc.constantFrom<(0 | 90 | 180 | 270)[]>(0, 90, 180, 270)

type Side = 'south' | 'east' | 'north' | 'west'
type Add = (sketch: Sketch) => Sketch

/** West to east and south to north, or the notch of an L cut out of that. */
const CORNERS: Readonly<Record<'box' | 'ell', readonly Spot[]>> = {
  box: [
    [0, 0],
    [480, 0],
    [480, 600],
    [0, 600],
  ],
  ell: [
    [0, 0],
    [480, 0],
    [480, 300],
    [300, 300],
    [300, 600],
    [0, 600],
  ],
}

const row = fc
  .record({
    at: spot,
    heading,
    racks: inch(1, 3),
    barsPerRack: inch(4, 12),
    lines: inch(1, 4),
    lineSpacing: inch(8, 20),
    joint: fc.constantFrom<('J1' | 'J3')[]>('J1', 'J3'),
    fallsTo: fc.constantFrom<('start' | 'end')[]>('start', 'end'),
    riser: fc.constantFrom(null, 60, 66, 72),
    gutterFall: fc.constantFrom(1 / 16, 1 / 8, 1 / 4),
  })
  .map(
    ({ at, ...values }): Add =>
      (sketch) =>
        sketch.row('Row', at, values),
  )

const drain = fc
  .record({
    points: fc.array(spot, { minLength: 2, maxLength: 4 }),
    slope: fc.constantFrom(-1 / 8, 0, 1 / 32, 1 / 16, 1 / 8, 1 / 4),
    startInvert: fc.constantFrom(null, -4, -8, -30),
    pipe: fc.constantFrom<('drain-4in' | 'drain-3in')[]>('drain-4in', 'drain-3in'),
  })
  .map(
    ({ points, ...values }): Add =>
      (sketch) =>
        sketch.drain('Drain', points, values),
  )

const pit = spot.map(
  ([x, y]): Add =>
    (sketch) =>
      sketch.pit('Pit', { x: [x, x + 36], y: [y, y + 96] }),
)

const thing = fc
  .record({
    at: spot,
    heading,
    what: fc.constantFrom<('post' | 'heater' | 'tank')[]>('post', 'heater', 'tank'),
    shape: fc.constantFrom<('box' | 'round')[]>('box', 'round'),
    size: inch(2, 48),
    footing: inch(0, 24),
    clearFront: inch(0, 40),
    clearLeft: inch(0, 10),
    underside: fc.constantFrom(0, 0, 60, 84),
  })
  .map(
    ({ at: [x, y], heading: faces, what, size, footing, underside, ...values }): Add =>
      (sketch) =>
        sketch.obstacle(what, 'Thing', { x: [x, x + size], y: [y, y + size] }, faces, {
          ...values,
          underside,
          top: underside + 24,
          footing,
          footingDeep: footing,
        }),
  )

const doorAt: Readonly<Record<Side, { readonly at: Spot; readonly heading: 0 | 90 | 180 | 270 }>> = {
  south: { at: [120, 0], heading: 90 },
  east: { at: [480, 200], heading: 180 },
  north: { at: [150, 600], heading: 270 },
  west: { at: [0, 250], heading: 0 },
}

const door = fc
  .record({
    where: side,
    width: inch(24, 72),
    leaves: fc.constantFrom<('none' | 'single' | 'double')[]>('none', 'single', 'double'),
    swing: fc.constantFrom<('in' | 'out')[]>('in', 'out'),
    hinge: fc.constantFrom<('left' | 'right')[]>('left', 'right'),
  })
  .map(
    ({ where, ...values }): Add =>
      (sketch) =>
        sketch.door('Door', doorAt[where].at, { heading: doorAt[where].heading, ...values }),
  )

const trough = fc.record({ at: spot, heading, length: inch(24, 240) }).map(
  ({ at, ...values }): Add =>
    (sketch) =>
      sketch.trough('Trough', at, values),
)

const service = fc.record({ points: fc.array(spot, { minLength: 2, maxLength: 3 }), depth: inch(6, 40) }).map(
  ({ points, depth }): Add =>
    (sketch) =>
      sketch.buried('gas', 'Gas', points, depth),
)

const wall = fc.record({ edge: inch(0, 3), low: inch(50, 90) }).map(
  ({ edge, low }): Add =>
    (sketch) =>
      sketch.curved(edge, [
        [0, low],
        [24, low + 20],
        [60, low + 40],
      ]),
)

const level = fc.tuple(spot, inch(-8, 0)).map(
  ([at, down]): Add =>
    (sketch) =>
      sketch.level(at, down),
)

const settings = fc
  .record({ wheelchair: fc.boolean(), growth: fc.constantFrom(0, 0.5, 1), cart: inch(18, 36) })
  .map(
    (values): Add =>
      (sketch) =>
        sketch.settings(values),
  )

/** Bays of a plausible size, full enough that their parts get in each other's way: every rule finds something in some of them. */
export const arbitraryBay: fc.Arbitrary<Layout> = fc
  .record({
    shape: fc.constantFrom<('box' | 'ell')[]>('box', 'ell'),
    floor: fc.array(fc.oneof(level, service, wall), { maxLength: 6 }),
    settings,
    parts: fc.array(
      fc.oneof(
        { weight: 4, arbitrary: row },
        { weight: 2, arbitrary: drain },
        { weight: 1, arbitrary: pit },
        { weight: 2, arbitrary: thing },
        { weight: 1, arbitrary: door },
        { weight: 1, arbitrary: trough },
      ),
      { minLength: 2, maxLength: 9 },
    ),
  })
  .map(({ shape, floor, settings: set, parts }) =>
    [...floor, set, ...parts]
      .reduce<Sketch>((sketch, add) => add(sketch), bay('480 x 600 in').outline(CORNERS[shape]))
      .layout(),
  )
