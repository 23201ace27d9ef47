import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Box, corners } from '../../src/geometry/box'
import type { Heading } from '../../src/geometry/motion'
import type { Face } from '../../src/geometry/cartStand'
import { widestPassage } from '../../src/geometry/passage'
import type { Point } from '../../src/geometry/point'
import { inches } from '../../src/units/length'
import { walkWidest } from '../support/slowCart'

const box = (x0: number, y0: number, x1: number, y1: number): Box => ({ x0, y0, x1, y1 })

const faceOf = ({ x0, y0, x1, y1 }: Box, facing: Heading): Face => {
  const ends: Record<Heading, [Point, Point]> = {
    0: [
      { x: x1, y: y0 },
      { x: x1, y: y1 },
    ],
    90: [
      { x: x0, y: y1 },
      { x: x1, y: y1 },
    ],
    180: [
      { x: x0, y: y0 },
      { x: x0, y: y1 },
    ],
    270: [
      { x: x0, y: y0 },
      { x: x1, y: y0 },
    ],
  }
  const [from, to] = ends[facing]
  return { from, to, facing }
}

const allFaces = (b: Box): Face[] => ([0, 90, 180, 270] as const).map((facing) => faceOf(b, facing))

describe('three rows in two blocks with a post between (worked example of the trade notes, hand arithmetic)', () => {
  const house = corners(box(0, 0, inches(352), inches(856)))
  const door = box(inches(128), 0, inches(224), 0)
  const canopy = (x: number, y0: number, y1: number) =>
    box(inches(x - 33), inches(y0 - 6), inches(x + 33), inches(y1 + 6))
  const post = box(inches(174), inches(364), inches(178), inches(368))

  const widths = (northFrom: number) => {
    const south = [63, 165, 267].map((x) => canopy(x, 96, 336))
    const north = [63, 165, 267].map((x) => canopy(x, northFrom, northFrom + 360))
    const faces = [
      faceOf(south[0]!, 180), // west gap 30
      faceOf(south[0]!, 0), // aisle 36
      faceOf(south[2]!, 0), // east gap 52
      faceOf(south[0]!, 90), // its north end: the cart comes up the aisle
      faceOf(south[1]!, 90), // its north end: the post stands before it
      faceOf(south[2]!, 90), // its north end: the cart comes up the east gap
      faceOf(north[1]!, 270), // its south end: the post stands before it
      faceOf(north[1]!, 180), // aisle 36
    ]
    const found = widestPassage({ blocks: [...south, ...north, post], outline: house }, [door], faces)
    return found.map((mm) => mm / inches(1))
  }

  test('first try: the post leaves 22 in on either side', () => {
    const expected = [30, 36, 52, 36, 22, 48, 22, 36]
    widths(396).forEach((width, i) => expect(width).toBeCloseTo(expected[i]!, 2))
  })

  test('north block 14 in farther north: 36 in north of the post', () => {
    const expected = [30, 36, 52, 36, 22, 52, 36, 36]
    widths(410).forEach((width, i) => expect(width).toBeCloseTo(expected[i]!, 2))
  })
})

describe('a cart', () => {
  const house = corners(box(0, 0, 4000, 4000))
  const row = box(1000, 1000, 3000, 2000)
  const door = box(0, 0, 900, 0)
  const north = faceOf(row, 90)
  const ask = (blocks: Box[], faces = [north], doors = [door], options = {}) =>
    widestPassage({ blocks: [row, ...blocks], outline: house }, doors, faces, options)

  test('is no wider than the door', () => {
    expect(ask([])).toEqual([900])
    expect(ask([], [north], [box(0, 0, 980, 0)])).toEqual([980])
  })

  test('uses the better of two doors, in any wall', () => {
    expect(ask([], [north], [door, box(4000, 2500, 4000, 3450)])).toEqual([950])
  })

  test('is no wider than the house, though the door be', () => {
    const lane = corners(box(0, 0, 5000, 600))
    const wall = { from: { x: 1000, y: 600 }, to: { x: 2000, y: 600 }, facing: 270 } as const
    expect(widestPassage({ blocks: [], outline: lane }, [box(0, -200, 0, 1400)], [wall])).toEqual([600])
  })

  test('does not come from no door', () => {
    expect(ask([], [north], [])).toEqual([0])
  })

  test('passes a gap of its own width however the gap was computed', () => {
    const gap = inches(36)
    const east = box(3000 + (gap / 3 + gap / 3 + gap / 3), 0, 4000, 4000)
    const west = box(0, 1900, 1000, 2000)
    const wide = [box(0, 0, 2000, 0)]
    expect(ask([east, west], [north], wide)[0]).toBeCloseTo(gap, 2)
  })

  test('under 10 in is none at all, unless asked for', () => {
    const wall = [box(0, 1500, 750, 1600), box(3000, 1500, 4000, 1600)]
    expect(ask(wall)).toEqual([0])
    expect(ask(wall, [north], [door], { leastMm: 100 })).toEqual([250])
  })

  test('wider than asked for is not looked for', () => {
    expect(ask([], [north], [box(0, 0, 4000, 0)], { mostMm: 700 })).toEqual([700])
  })

  test('must have the whole face beside it', () => {
    const crate = box(2900, 2000, 3000, 2300)
    expect(ask([crate])).toEqual([0])
    expect(ask([box(2900, 2300, 3000, 2500)])).toEqual([300])
  })

  test('wider than the face covers it', () => {
    const stub = box(1800, 3900, 1900, 4000)
    expect(ask([stub], [faceOf(stub, 270)])).toEqual([900])
  })

  test('from a door whose box straddles the wall starts inside', () => {
    expect(ask([], [north], [box(0, -100, 900, 100)])).toEqual([900])
  })

  test('stays inside of a slanted wall, and loses no more than a stair to it', () => {
    const outline = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 4000 },
      { x: 3000, y: 4000 },
      { x: 0, y: 1000 },
    ]
    const low = box(1000, 0, 3000, 500)
    const face = faceOf(low, 90)
    // A square with its south side at 500 and its south-west corner at x has its north-west corner on the wall y = x + 1000.
    const [width] = widestPassage({ blocks: [low], outline }, [box(3000, 0, 4000, 0)], [face], {
      mostMm: 9000,
    })
    expect(width).toBe(1000)
    const [tight] = widestPassage({ blocks: [low], outline }, [box(4000, 0, 4000, 4000)], [face], {
      mostMm: 9000,
    })
    expect(tight).toBeLessThanOrEqual(1500)
    expect(tight).toBeGreaterThanOrEqual(1475)
  })
})

const whole = (least: number, most: number) => fc.integer({ min: least, max: most })
const SIDE = 14

const block = fc
  .tuple(whole(0, SIDE), whole(0, SIDE), whole(1, 6), whole(1, 6))
  .map(([x, y, width, depth]) => box(x, y, Math.min(SIDE, x + width), Math.min(SIDE, y + depth)))

const square = corners(box(0, 0, SIDE, SIDE))
const ell = [
  { x: 0, y: 0 },
  { x: 9, y: 0 },
  { x: 9, y: 6 },
  { x: SIDE, y: 6 },
  { x: SIDE, y: SIDE },
  { x: 0, y: SIDE },
]
const outlines = fc.constantFrom<Point[]>(square, ell)

const southDoor = fc.tuple(whole(0, 6), whole(1, 9)).map(([x, width]) => box(x, 0, x + width, 0))
const westDoor = fc.tuple(whole(0, 10), whole(2, 4)).map(([y, width]) => box(0, y, 1, y + width))
const doors = fc.array(fc.oneof(southDoor, westDoor), { minLength: 1, maxLength: 2 })

describe('against walking every half unit of the floor', () => {
  const options = { leastMm: 1, mostMm: 12 }

  test.each([
    ['few blocks', 48, 4],
    ['many blocks', 49, 9],
  ])('%s', (_, seed, maxLength) => {
    fc.assert(
      fc.property(outlines, fc.array(block, { minLength: 1, maxLength }), doors, (outline, blocks, gaps) => {
        const faces = blocks.flatMap(allFaces)
        const fast = widestPassage({ blocks, outline }, gaps, faces, options)
        expect(fast).toEqual(walkWidest({ blocks, outline }, gaps, faces, options))
      }),
      { seed, numRuns: 300 },
    )
  })

  test('an added block never widens a way', () => {
    fc.assert(
      fc.property(
        outlines,
        fc.array(block, { minLength: 2, maxLength: 8 }),
        doors,
        (outline, blocks, gaps) => {
          const faces = allFaces(blocks[0]!)
          const free = widestPassage({ blocks: blocks.slice(0, -1), outline }, gaps, faces, options)
          const fuller = widestPassage({ blocks, outline }, gaps, faces, options)
          fuller.forEach((width, i) => expect(width).toBeLessThanOrEqual(free[i]!))
        },
      ),
      { seed: 50, numRuns: 200 },
    )
  })
})
