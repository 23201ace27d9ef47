import { describe, expect, test } from 'vitest'
import { gutterOf } from '../../../src/catalogue/gutter'
import { trough } from '../../../src/parts/trough/kind'
import { troughSchema, type Trough } from '../../../src/parts/trough/schema'
import { inches, toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf, siteOn } from '../../support/site'

const make = (more: Partial<Trough> = {}): Trough =>
  troughSchema.parse({ kind: 'trough', id: 'trough-1', at: at(50, 20), ...more })

const counts = (part: Trough, item: string): number =>
  trough.derive(part, flatSite()).fittings.filter((fitting) => fitting.item === item).length

describe('sections', () => {
  test('10 ft is one section as it comes, without a joiner', () => {
    const { sticks } = trough.derive(make(), flatSite())
    expect(sticks.map(({ lengthMm, cut }) => [toInches(lengthMm), cut.kind])).toEqual([[120, 'uncut']])
    expect(counts(make(), 'gutter-joiner-5in')).toBe(0)
    expect(counts(make(), 'gutter-end-cap-5in')).toBe(2)
  })

  test('250 in is two sections and a cut of 10 in, with two joiners', () => {
    const part = make({ lengthMm: inches(250) })
    const { sticks } = trough.derive(part, flatSite())
    expect(sticks.map(({ lengthMm, cut }) => [toInches(lengthMm), cut.kind])).toEqual([
      [120, 'uncut'],
      [120, 'uncut'],
      [10, 'exact'],
    ])
    expect(counts(part, 'gutter-joiner-5in')).toBe(2)
  })

  test('each begins where the one uphill of it ends', () => {
    const { sticks } = trough.derive(make({ lengthMm: inches(400) }), flatSite())
    sticks.slice(1).forEach((stick, index) => {
      const above = sticks[index]!.to
      expect(stick.from.y).toBeCloseTo(above.y, 9)
      expect(stick.from.z).toBeCloseTo(above.z, 9)
    })
  })
})

describe('levels', () => {
  test('invert 9 in over the floor at the high end, 1/16 in/ft lower at the outlet 105 in on', () => {
    // Hand arithmetic: 105 / 12 / 16 = 0.547 in.
    const { sticks, mouths } = trough.derive(make(), flatSite(-4))
    expect(toInches(sticks[0]!.from.z)).toBeCloseTo(5, 9)
    expect(toInches(mouths[0]!.at.z)).toBeCloseTo(5 - 0.547, 3)
    expect(mouths).toMatchObject([{ role: 'trough-outlet', line: 1 }])
  })

  test('the body stands between the lowest invert and the highest lip above its own floor', () => {
    // The floor falls 1/16 in/ft faster than the trough, so the trough comes clear of it by 0.625 in over 10 ft.
    const steep = siteOn((_, y) => -((y - inches(20)) * 2) / (12 * 16))
    const [body] = bodiesOf(trough.derive(make(), steep), 'trough')
    const [west, south, east, , from, to] = extentOf(body!)
    expect([west, south, east]).toEqual([47.5, 20, 52.5])
    expect(from).toBeCloseTo(9, 3)
    expect(to).toBeCloseTo(9.625 + toInches(gutterOf('gutter-5in').depthMm), 2)
  })
})

describe('blocks', () => {
  test('stand on the floor, 24 in apart or less', () => {
    const { supports } = trough.derive(make({ lengthMm: inches(200) }), flatSite(-3))
    expect(supports.every(({ rests, at: place }) => rests === 'floor' && place.z === inches(-3))).toBe(true)
    const gaps = supports.slice(1).map(({ at: place }, index) => place.y - supports[index]!.at.y)
    expect(Math.max(...gaps)).toBeLessThanOrEqual(inches(24))
  })

  test.each([15, 27, 50, 98])('none stands under an outlet %i in from the low end', (inch) => {
    const part = make({ outletFromLowMm: inches(inch) })
    const { supports, mouths } = trough.derive(part, flatSite())
    const nearest = Math.min(...supports.map(({ at: place }) => Math.abs(place.y - mouths[0]!.at.y)))
    // Half a block and half a 2 in tube.
    expect(toInches(nearest)).toBeGreaterThan(4 + 1)
  })

  test('lie across the trough whichever way it runs', () => {
    const halves = (heading: Trough['heading']) => {
      const { halfXMm, halfYMm } = trough.derive(make({ heading }), flatSite()).supports[0]!
      return [toInches(halfXMm), toInches(halfYMm)]
    }
    expect(halves(0)).toEqual([4, 8])
    expect(halves(90)).toEqual([8, 4])
  })
})

describe('handles', () => {
  test('the low end is pulled along the trough', () => {
    const longer = trough.drag(make(), 'low', at(80, 200))
    expect(toInches(longer.lengthMm)).toBeCloseTo(180, 2)
    expect(longer.at).toEqual(at(50, 20))
  })

  test('the high end is pulled while the low end stays', () => {
    const low = (part: Trough) => trough.handles(part).find(({ id }) => id === 'low')!.at
    const longer = trough.drag(make(), 'high', at(50, -40))
    expect(toInches(longer.at.y)).toBeCloseTo(-40, 2)
    expect(toInches(low(longer).y)).toBeCloseTo(toInches(low(make()).y), 3)
  })

  test('no end is pulled past the shortest trough', () => {
    expect(inchesOf(trough.drag(make(), 'low', at(50, -300)).lengthMm)).toBe(12)
  })
})
