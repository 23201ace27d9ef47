import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { centredOn, fitted, panned, toFloor, toScreen, zoomedAt } from '../../src/store/view'

const views = fc.record({
  x: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
  y: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
  pxPerMm: fc.double({ min: 0.005, max: 3, noNaN: true }),
})
const spots = fc.record({
  x: fc.double({ min: 0, max: 2000, noNaN: true }),
  y: fc.double({ min: 0, max: 2000, noNaN: true }),
})

describe('view', () => {
  test('floor and screen are each other’s inverse', () => {
    fc.assert(
      fc.property(views, spots, (view, spot) => {
        const back = toScreen(view, toFloor(view, spot))
        expect(back.x).toBeCloseTo(spot.x, 6)
        expect(back.y).toBeCloseTo(spot.y, 6)
      }),
      { seed: 11 },
    )
  })

  test('the floor under the pointer stays under it while zooming', () => {
    fc.assert(
      fc.property(views, spots, fc.double({ min: 0.2, max: 5, noNaN: true }), (view, spot, factor) => {
        const before = toFloor(view, spot)
        const after = toFloor(zoomedAt(view, spot, factor), spot)
        expect(after.x).toBeCloseTo(before.x, 4)
        expect(after.y).toBeCloseTo(before.y, 4)
      }),
      { seed: 12 },
    )
  })

  test('panning moves the floor with the pointer; north is up', () => {
    const view = { x: 0, y: 1000, pxPerMm: 0.5 }
    const moved = panned(view, 30, 20)
    expect(toScreen(moved, { x: 100, y: 100 })).toEqual({ x: 50 + 30, y: 450 + 20 })
    expect(toScreen(view, { x: 0, y: 200 }).y).toBeLessThan(toScreen(view, { x: 0, y: 100 }).y)
  })

  test('fitting shows the whole box', () => {
    const size = { width: 800, height: 500 }
    const view = fitted({ x0: 0, y0: 0, x1: 9000, y1: 21000 }, size)
    const low = toScreen(view, { x: 0, y: 0 })
    const high = toScreen(view, { x: 9000, y: 21000 })
    expect(low.x).toBeGreaterThan(0)
    expect(low.y).toBeLessThan(size.height)
    expect(high.x).toBeLessThan(size.width)
    expect(high.y).toBeGreaterThan(0)
  })

  test('jumping to a place puts it in the middle', () => {
    const at = toScreen(
      centredOn({ x: 0, y: 0, pxPerMm: 0.02 }, { x: 500, y: 700 }, { width: 800, height: 600 }, 0.1),
      { x: 500, y: 700 },
    )
    expect(at.x).toBeCloseTo(400)
    expect(at.y).toBeCloseTo(300)
  })
})
