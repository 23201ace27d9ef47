import { inchesPerFoot } from '../../../src/units/slope'
import { describe, expect, test } from 'vitest'
import { drainLine } from '../../../src/parts/drain-line/kind'
import { drainLineSchema, type DrainLine } from '../../../src/parts/drain-line/schema'
import { inches, toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { at, flatSite, inchesOf, sampleFloor, siteOn } from '../../support/site'

const line = (more: Partial<DrainLine> = {}): DrainLine =>
  drainLineSchema.parse({
    kind: 'drain-line',
    id: 'drain-line-1',
    points: [at(30, 425), at(304, 425)],
    ...more,
  })

describe('a drain line', () => {
  test('of the sample bay lies at -8.23 in and comes out at -11.08 in', () => {
    // Worked example of the trade notes, hand arithmetic.
    const built = drainLine.derive(line(), siteOn(sampleFloor))
    const [tube] = built.tubes
    expect(tube!.path.map(({ z }) => Number(toInches(z).toFixed(2)))).toEqual([-8.23, -11.08])
    expect(built.zFrom).toBe('benchmark')
  })

  test('a start typed by the builder stands, whatever the cover', () => {
    const built = drainLine.derive(line({ startInvertMm: inches(-20) }), flatSite())
    expect(built.tubes[0]!.path[0]!.z).toBe(inches(-20))
  })

  test('ends in one mouth at the invert of its last point', () => {
    const { mouths, tubes } = drainLine.derive(line(), siteOn(sampleFloor))
    expect(mouths).toEqual([{ role: 'drain-end', at: tubes[0]!.path.at(-1), line: 0, station: 0 }])
  })

  test('has a trench a leg, 10 in wide and as deep as the bed under its low end', () => {
    const built = drainLine.derive(line({ points: [at(0, 0), at(96, 0), at(96, 48)] }), flatSite())
    const trenches = bodiesOf(built, 'trench').map(extentOf)
    // Hand arithmetic: 3 cover + 4.215 pipe + 2 bed at the start, 1/8 in/ft over 8 and 12 ft more.
    expect(trenches).toEqual([
      [0, -5, 96, 5, -10.215, 0],
      [91, 0, 101, 48, -10.715, 0],
    ])
  })

  test('has a cleanout at the high end, a bend and a cleanout at each corner', () => {
    const points = [at(0, 0), at(50, 0), at(96, 0), at(96, 48)]
    const { fittings } = drainLine.derive(line({ points }), flatSite())
    expect(fittings.map(({ item, at: place }) => [item, inchesOf(place.x), inchesOf(place.y)])).toEqual([
      ['drain-bend-4in', 96, 0],
      ['drain-cleanout-4in', 0, 0],
      ['drain-cleanout-4in', 96, 0],
    ])
  })

  test('without cleanouts it has a cap at the high end, in the size of its pipe', () => {
    const { fittings } = drainLine.derive(line({ cleanouts: 'none', pipe: 'drain-3in' }), flatSite())
    expect(fittings.map(({ item }) => item)).toEqual(['drain-cap-3in'])
  })

  test.each([
    ['none', [], []],
    ['bends', [0, 1300], []],
    // 1300 in to the bend and 1250 in after it: 100 ft are 1200 in, so each leg has one more in its middle.
    ['spaced', [0, 1300], [650, 1300 + 625]],
  ] as const)('with cleanouts “%s” has them there', (cleanouts, atStops, between) => {
    const points = [at(0, 0), at(1300, 0), at(1300, 1250)]
    const { fittings, tubes } = drainLine.derive(line({ points, cleanouts }), flatSite())
    const alongs = fittings
      .filter(({ item }) => item === 'drain-cleanout-4in')
      .map(({ at: { x, y } }) => inchesOf(x + y))
    expect(alongs).toEqual([...atStops, ...between])
    const [first] = tubes[0]!.path
    // On the invert: 1/8 in a foot from the high end.
    for (const { item, at: place } of fittings.filter((fitting) => fitting.item === 'drain-cleanout-4in'))
      expect([item, toInches(first!.z - place.z)]).toEqual([
        item,
        expect.closeTo(toInches(place.x + place.y) / 96, 6),
      ])
  })

  test('tells the checks its fall, least fall, cover, bed and trench, its pegs and its first stick', () => {
    const { slope, coverMm, bedMm, trenchMm, pegTopMm } = line()
    expect(drainLine.derive(line(), flatSite()).drain).toEqual({
      slopeMmPerM: slope,
      // International Plumbing Code, Table 704.1: 1/8 in a foot for 4 in pipe.
      leastSlopeMmPerM: inchesPerFoot(1 / 8),
      leastCoverMm: coverMm,
      bedMm,
      trenchMm,
      pegTopMm,
      firstStickMm: null,
    })
  })

  test('with all points on one place has no trench, and finite levels', () => {
    const built = drainLine.derive(line({ points: [at(5, 5), at(5, 5)] }), flatSite())
    expect(built.bodies).toEqual([])
    expect(built.tubes[0]!.path.every(({ z }) => Number.isFinite(z))).toBe(true)
    expect(drainLine.draw(line({ points: [at(5, 5), at(5, 5)] }), built).length).toBeGreaterThan(0)
  })

  // International Plumbing Code, Table 704.1: 2-1/2 in or less 1/4 in/ft, 3 to 6 in 1/8 in/ft.
  test.each([
    ['drain-2in', 1 / 4],
    ['drain-4in', 1 / 8],
    ['drain-6in', 1 / 8],
  ])('off the shelf, %s falls %f in/ft', (id, fall) => {
    const preset = drainLine.presets.find((p) => p.id === id)!
    const part = drainLine.create('drain-line-1', 'Drain', at(100, 100), preset)
    const [high, low] = drainLine.derive(part, flatSite()).tubes[0]!.path
    expect(toInches(high!.z - low!.z)).toBeCloseTo(fall * 10, 9)
  })
})

describe('the drawing', () => {
  test('shows the fall by arrows from high to low, with name and size', () => {
    const part = line({ name: 'Drain N' })
    const marks = drainLine.draw(part, drainLine.derive(part, flatSite()))
    const run = marks.find((mark) => mark.as === 'path' && mark.pen === 'drain')
    expect(run).toMatchObject({ arrows: 'middle', closed: false })
    const words = marks.flatMap((mark) => (mark.as === 'text' ? [mark.text] : []))
    expect(words).toEqual(['Drain N, 4 in drain pipe'])
  })
})
