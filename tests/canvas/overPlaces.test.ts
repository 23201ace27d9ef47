import { describe, expect, test } from 'vitest'
import { crowdsIn } from '../../src/canvas/places/overPlaces'
import { lensOf } from '../../src/canvas/lens'
import { paperTheme } from '../../src/drawing/theme'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { placesOf } from '../../src/evaluate/places'
import { scenarios } from '../support/scenarios'

const size = { width: 576, height: 380 }

/** The bay over the width of a plan that shares the page with the drawer. */
const lensAt = (pxPerMm: number) => lensOf({ x: -500, y: 80_000, pxPerMm }, size, paperTheme, 'feet-inches')

/** A number of so many digits, 12 px high, is at least this wide. */
const halfWidth = (count: number) => String(count).length * 3

describe.each(Object.entries(scenarios))('rings of %s', (_, layoutOf) => {
  const evaluation = beforeChecks(layoutOf())

  test.each(['screw', 'tower', 'gutter-joiner-5in'])('no number of %s lies on another', (item) => {
    const places = placesOf(evaluation, item)
    for (const pxPerMm of [0.004, 0.02, 0.1]) {
      const many = crowdsIn(places, lensAt(pxPerMm)).filter(({ count }) => count > 1)
      const over = many.filter((a) =>
        many.some(
          (b) =>
            a !== b &&
            Math.abs(a.x - b.x) < halfWidth(a.count) + halfWidth(b.count) &&
            Math.abs(a.y - b.y) < 10,
        ),
      )
      expect(over).toEqual([])
    }
  })

  test('every piece is in one of them', () => {
    const places = placesOf(evaluation, 'screw')
    const crowds = crowdsIn(places, lensAt(0.004))
    expect(crowds.reduce((sum, { count }) => sum + count, 0)).toBe(places.points.length / 2)
  })
})
