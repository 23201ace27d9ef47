import { describe, expect, test } from 'vitest'
import { obstacle } from '../../../src/parts/obstacle/kind'
import { obstacleSchema, type Obstacle } from '../../../src/parts/obstacle/schema'
import type { BodyRole } from '../../../src/model/built'
import { inches, toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite } from '../../support/site'

const take = (id: string, x: number, y: number): Obstacle => {
  const preset = obstacle.presets.find((p) => p.id === id)!
  return obstacle.create('obstacle-1', '', at(x, y), preset)
}

const extents = (part: Obstacle, role: BodyRole): number[][] =>
  bodiesOf(obstacle.derive(part, flatSite()), role).map(extentOf)

// The sample bay is invented; its numbers are those of the worked example of the trade notes, hand arithmetic.
describe('what stands in the sample bay', () => {
  test('post 4 x 4 in at (176, 366) on a footing 12 in across and 30 in deep', () => {
    const post = take('post', 176, 366)
    expect(extents(post, 'post')).toEqual([[174, 364, 178, 368, 0, 96]])
    expect(extents(post, 'footing')).toEqual([[170, 360, 182, 372, -30, 0]])
    expect(extents(post, 'keep-clear')).toEqual([])
  })

  test('heater hung over x 100 to 140, y 815 to 850, its front to the south', () => {
    const heater: Obstacle = { ...take('heater', 120, 832.5), heading: 270 }
    expect(extents(heater, 'equipment')).toEqual([[100, 815, 140, 850, 84, 114]])
    // 36 in clear in front, and as much below the underside.
    expect(extents(heater, 'keep-clear')).toEqual([[100, 779, 140, 850, 48, 114]])
  })
})

describe('electrical panel', () => {
  // Working space 30 in wide, 36 in deep, 78 in high: National Electrical Code 110.26, from memory.
  test('keeps its width clear, 36 in in front and from the floor to 78 in', () => {
    const [west, south, east, north, from, to] = extents(take('panel', 100, 50), 'keep-clear')[0]!
    const [, , front] = extents(take('panel', 100, 50), 'equipment')[0]!
    expect(east! - front!).toBe(36)
    expect(north! - south!).toBe(30)
    expect([west, from, to]).toEqual([97, 0, 78])
  })
})

describe('shapes', () => {
  test('a round tank is as wide as its diameter and no corner of it reaches beyond a square about it', () => {
    const tank = take('tank', 18, 118)
    expect(extents(tank, 'equipment')).toEqual([[3, 103, 33, 133, 0, 36]])
    const { outline } = obstacle.derive(tank, flatSite()).bodies[0]!
    const radii = outline.map(({ x, y }) => Math.hypot(toInches(x) - 18, toInches(y) - 118))
    expect(Math.min(...radii)).toBeGreaterThanOrEqual(15)
    expect(Math.max(...radii)).toBeLessThan(15 * 1.01)
  })

  test('a thing whose top was typed below its underside is thin, not inside out', () => {
    const odd = { ...take('other', 0, 0), undersideMm: inches(80), topMm: inches(10) }
    expect(extents(odd, 'equipment')[0]!.slice(4)).toEqual([80, 80])
  })

  test('keep-clear heights the wrong way round keep nothing clear', () => {
    const odd = { ...take('panel', 0, 0), clearFromMm: inches(90) }
    expect(extents(odd, 'keep-clear')).toEqual([])
  })

  test.each([
    [0, [-12, -12, 22, 32]],
    [90, [-32, -12, 12, 22]],
    [180, [-22, -32, 12, 12]],
    [270, [-12, -22, 32, 12]],
  ] as const)('front 10 and left 20 in at heading %i', (heading, box) => {
    const part = {
      ...take('other', 0, 0),
      heading,
      clearFrontMm: inches(10),
      clearLeftMm: inches(20),
    }
    expect(extents(part, 'keep-clear')[0]!.slice(0, 4)).toEqual(box)
  })
})

describe('editing', () => {
  test('a mirror changes what is left for what is right', () => {
    const part = { ...take('other', 10, 0), clearLeftMm: inches(5) }
    const mirrored = obstacle.mirror(part, { axis: 'x', atMm: 0 })
    expect(extents(mirrored, 'keep-clear')[0]!.slice(0, 4)).toEqual([-22, -12, 2, 17])
    expect(extents(part, 'keep-clear')[0]!.slice(0, 4)).toEqual([-2, -12, 22, 17])
  })

  test('a tank is made wider at its edge, about its middle', () => {
    const tank = take('tank', 50, 50)
    expect(obstacle.handles(tank).map(({ id }) => id)).toEqual(['edge'])
    const wider = obstacle.drag(tank, 'edge', at(50, 70))
    expect(toInches(wider.lengthMm)).toBe(40)
    expect(wider.at).toEqual(tank.at)
  })

  test('every kind of thing in the schema stands on the shelf', () => {
    const choices = obstacle.presets.map(({ values }) => values.what ?? 'other')
    expect(new Set(choices)).toEqual(
      new Set(['post', 'heater', 'panel', 'tank', 'tap', 'floor-drain', 'other']),
    )
    for (const preset of obstacle.presets) {
      const part = obstacle.create('obstacle-1', 'Thing', at(0, 0), preset)
      expect(obstacleSchema.parse(part)).toEqual(part)
    }
  })
})

describe('the drawing', () => {
  test('a post is a crossed box', () => {
    const post = take('post', 0, 0)
    const marks = obstacle.draw(post, obstacle.derive(post, flatSite()))
    expect(marks.filter((mark) => mark.as === 'path' && !mark.closed)).toHaveLength(2)
    expect(marks).toContainEqual(expect.objectContaining({ wash: 'post', closed: true }))
  })

  test('a heater overhead is a hidden line over what it keeps clear', () => {
    const heater = take('heater', 0, 0)
    const [first, second] = obstacle.draw(heater, obstacle.derive(heater, flatSite()))
    expect(first).toMatchObject({ pen: 'keep-clear', wash: 'keep-clear' })
    expect(second).toMatchObject({ pen: 'hidden' })
  })
})
