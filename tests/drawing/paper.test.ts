import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { joined, overlaps, type Box } from '../../src/geometry/box'
import { fitScale, orient, papers, roomsOf, standardScales } from '../../src/drawing/paper'

const mmPerInch = 25.4

describe('papers', () => {
  // Sources: ASME Y14.1, table of sizes A and B; ISO 216, table of the A series.
  test.each([
    ['letter', 8.5 * mmPerInch, 11 * mmPerInch],
    ['tabloid', 11 * mmPerInch, 17 * mmPerInch],
    ['A4', 210, 297],
    ['A3', 297, 420],
  ] as const)('%s is %f x %f mm', (name, shortMm, longMm) => {
    expect(papers[name].shortMm).toBeCloseTo(shortMm)
    expect(papers[name].longMm).toBeCloseTo(longMm)
    expect(orient(papers[name], 'landscape').widthMm).toBeCloseTo(longMm)
    expect(orient(papers[name], 'portrait').heightMm).toBeCloseTo(longMm)
  })

  test('A3 is two A4 side by side', () => {
    expect(papers.A3.longMm).toBe(2 * papers.A4.shortMm)
    expect(papers.A3.shortMm).toBe(papers.A4.longMm)
  })
})

describe('scales', () => {
  test('are said as a builder reads them off a scale rule', () => {
    const said = (units: 'feet-inches' | 'metric', ratio: number) =>
      standardScales(units).find((scale) => scale.ratio === ratio)?.words
    expect(said('feet-inches', 48)).toBe('1/4 in = 1 ft (1:48)')
    expect(said('feet-inches', 24)).toBe('1/2 in = 1 ft (1:24)')
    expect(said('feet-inches', 96)).toBe('1/8 in = 1 ft (1:96)')
    expect(said('feet-inches', 192)).toBe('1/16 in = 1 ft (1:192)')
    expect(said('metric', 50)).toBe('1:50')
  })

  test('an inch scale says the ratio that it is', () => {
    for (const { ratio, words } of standardScales('feet-inches')) {
      const [, over, under, ft] = /^(\d+)(?:\/(\d+))? in = (\d+) ft/.exec(words)!
      expect((Number(ft) * 12) / (Number(over) / Number(under ?? 1))).toBe(ratio)
    }
  })

  test('the fitting scale is the largest that fits, for any bay and paper (seed 2)', () => {
    const size = (max: number) =>
      fc.record({ widthMm: fc.integer({ min: 50, max }), heightMm: fc.integer({ min: 50, max }) })
    fc.assert(
      fc.property(
        size(300_000),
        size(400),
        fc.constantFrom('feet-inches', 'metric'),
        (floor, room, units) => {
          const fits = (ratio: number) =>
            floor.widthMm / ratio <= room.widthMm && floor.heightMm / ratio <= room.heightMm
          const { ratio } = fitScale(floor, room, units)
          expect(fits(ratio)).toBe(true)
          for (const larger of standardScales(units))
            if (larger.ratio < ratio) expect(fits(larger.ratio)).toBe(false)
        },
      ),
      { seed: 2 },
    )
  })

  test('no bay is too large for a scale', () => {
    const { ratio } = fitScale(
      { widthMm: 2e6, heightMm: 2e6 },
      { widthMm: 100, heightMm: 100 },
      'feet-inches',
    )
    expect(2e6 / ratio).toBeLessThanOrEqual(100)
  })
})

describe('rooms of a sheet', () => {
  test.each(Object.values(papers))('$name keeps its rooms inside the margins and apart', (paper) => {
    for (const orientation of ['landscape', 'portrait'] as const) {
      const { frame, ...rooms } = roomsOf(orient(paper, orientation), 12)
      const all = Object.entries(rooms)
      for (const [name, room] of all) {
        expect(joined(frame, room), name).toEqual(frame)
        for (const [other, its] of all)
          if (other !== name) expect(overlaps(room, its), `${name}, ${other}`).toBe(false)
      }
      const areaOf = (box: Box) => (box.x1 - box.x0) * (box.y1 - box.y0)
      expect(all.reduce((sum, [, room]) => sum + areaOf(room), 0)).toBeCloseTo(areaOf(frame))
    }
  })
})
