import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { criticalDepthMm } from '../../../src/solvers/gravity/critical'
import {
  crestHeadMm,
  crestLph,
  DISCHARGE,
  notchLph,
  orificeHeadMm,
  orificeLph,
  unwinCoefficient,
} from '../../../src/solvers/gravity/orifice'
import { outletDepthMm, outletLph, ventedLph } from '../../../src/solvers/gravity/outlet'
import { areaMm2, heightMm, type Section, topWidthMm } from '../../../src/solvers/gravity/section'
import { fromM3PerS, gpm, toGpm, toM3PerS } from '../../../src/units/flow'
import { feet, inches, toInches } from '../../../src/units/length'

const isWithin = (value: number, wanted: number, share: number): void => {
  expect(Math.abs(value / wanted - 1), `${value} against ${wanted}`).toBeLessThan(share)
}

describe('holes', () => {
  // N.J. Administrative Code 7:9A-9.7, discharge of holes, gpm; its rows at 2-1/2 ft run 1-1/2 % high, hence 2-1/2 % of room.
  test.each([
    [2.5, [1.18, 1.85, 2.66, 3.63, 4.73]],
    [3, [1.28, 1.99, 2.87, 3.91, 5.1]],
    [4, [1.47, 2.3, 3.31, 4.51, 5.89]],
    [5, [1.65, 2.57, 3.71, 5.04, 6.59]],
  ])('under %f ft', (head, flows) => {
    const bores = [1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2]
    flows.forEach((flow, k) => {
      isWithin(toGpm(orificeLph(inches(bores[k] ?? NaN), feet(head), 0.6)), flow, 0.025)
    })
  })

  // University of Minnesota, worksheet for pressure distribution, gpm.
  test.each([
    [3 / 16, [0.42, 0.59, 0.94]],
    [7 / 32, [0.56, 0.8, 1.26]],
    [1 / 4, [0.74, 1.04, 1.65]],
  ])('a %f in hole under 1, 2 and 5 ft', (bore, flows) => {
    const heads = [1, 2, 5]
    flows.forEach((flow, k) => {
      isWithin(toGpm(orificeLph(inches(bore), feet(heads[k] ?? NaN), 0.6)), flow, 0.02)
    })
  })

  // Bovey's experiments, sharp hole 1/2 in wide, in: Encyclopaedia Britannica, 11th ed., vol. 14 (1910), Hydraulics. The fit stands in
  // the same article; it was made for bigger holes, and comes within 1 %.
  test.each([
    [1, 0.62],
    [2, 0.613],
    [4, 0.608],
    [6, 0.607],
    [10, 0.605],
    [20, 0.603],
  ])('under %i ft a 1/2 in hole has coefficient %f', (head, coefficient) => {
    isWithin(unwinCoefficient(inches(1 / 2), feet(head)), coefficient, 0.01)
  })

  test('Unwin: 1 in under 1 ft, 0.6075 + 0.0098 - 0.0037', () => {
    expect(unwinCoefficient(inches(1), feet(1))).toBeCloseTo(0.6136, 6)
    expect(() => unwinCoefficient(inches(1), 0)).toThrow('A hole under 0 mm of head has no coefficient')
  })

  // The same article: contraction 0.64 times velocity 0.97 is 0.62; a short tube 0.82; a re-entrant one 0.5149 (Borda), 0.5547
  // (Bidone), 0.5324 (Weisbach), 1/2 in theory; well rounded 0.97.
  test('a tube passes a third more than a hole, one that reaches in a seventh less', () => {
    isWithin(DISCHARGE.sharp, 0.64 * 0.97, 0.005)
    const under = (c: number): number => orificeLph(inches(1), feet(2), c)
    isWithin(under(DISCHARGE.shortTube) / under(DISCHARGE.sharp), 0.82 / 0.62, 1e-9)
    expect(DISCHARGE.reentrant).toBeGreaterThan(0.5)
    expect(DISCHARGE.reentrant).toBeLessThan(0.5547)
    isWithin(under(DISCHARGE.rounded) / under(1), 0.97, 1e-9)
  })

  // Hand arithmetic: 19.637 x 0.62 x 0.25 x 1 = 3.04 gpm.
  test('a 1/2 in hole under 1 ft passes 3.04 gpm', () => {
    expect(toGpm(orificeLph(inches(1 / 2), feet(1), 0.62))).toBeCloseTo(3.04, 2)
  })
})

describe('weirs', () => {
  // Francis, 3.33 L h^1.5 in ft and ft3/s (from memory): 3.33 x 0.1^1.5 = 0.1053 ft3/s, x 448.83 = 47.3 gpm over 1 ft of lip.
  test('0.1 ft over 1 ft of lip is 47.3 gpm', () => {
    isWithin(toGpm(crestLph(feet(1), feet(0.1))), 47.3, 0.003)
  })

  // USBR, Water Measurement Manual, 2.49 h^2.48 (from memory): 2.49 x 0.25^2.48 = 0.0800 ft3/s, x 448.83 = 35.9 gpm.
  test('a notch of 90 degrees under 1/4 ft passes 35.9 gpm', () => {
    isWithin(toGpm(notchLph(feet(0.25))), 35.9, 0.002)
  })

  test('heads and flows of a crest and a hole are each other’s inverse', () => {
    const size = fc.double({ min: 1, max: 300, noNaN: true })
    fc.assert(
      fc.property(size, size, (mm, headMm) => {
        isWithin(crestHeadMm(mm, crestLph(mm, headMm)), headMm, 1e-9)
        isWithin(orificeHeadMm(mm, orificeLph(mm, headMm, 0.61), 0.61), headMm, 1e-9)
      }),
      { seed: 61 },
    )
  })
})

describe('outlets of a trough', () => {
  // 3/4 in, hand arithmetic: as a weir 3.33 x pi x 0.0625 ft x (0.125 / 12)^1.5 = 0.000695 ft3/s = 0.312 gpm at 1/8 in; 0.88 at 1/4.
  // As a hole 19.637 x 0.61 x 0.5625 x (1/12)^0.5 = 1.945 gpm at 1 in.
  test.each([
    [0.75, 1 / 8, 0.312],
    [0.75, 1 / 4, 0.882],
    [0.75, 1 / 2, 1.38],
    [0.75, 1, 1.95],
    [0.75, 2, 2.75],
    [1.049, 1, 3.81],
    [1.38, 2, 9.31],
  ])('a %f in outlet under %f in of water passes %f gpm', (bore, depth, flow) => {
    isWithin(toGpm(outletLph(inches(bore), inches(depth))), flow, 0.006)
  })

  test('the rim governs up to a third of the bore or so, then the bore', () => {
    const regimeAt = (depth: number) => outletDepthMm(inches(1), outletLph(inches(1), inches(depth))).regime
    expect([0.1, 0.3, 0.5, 1].map(regimeAt)).toEqual(['weir', 'weir', 'orifice', 'orifice'])
  })

  test('its depth is the depth that passes its flow, and nothing stands without flow', () => {
    expect(outletDepthMm(20, 0)).toEqual({ depthMm: 0, regime: 'weir' })
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 100, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        (bore, flow) => isWithin(outletLph(bore, outletDepthMm(bore, flow).depthMm), flow, 1e-9),
      ),
      { seed: 62 },
    )
  })

  // Froude 0.3 on the full bore, hand arithmetic: 3/4 in is 0.01905 m, V 0.3 x (9.80665 x 0.01905)^0.5 = 0.1297 m/s, x 2.850e-4 m2 =
  // 3.70e-5 m3/s = 0.586 gpm, what 8 towers at 4 gph or 14 at 2-1/2 give.
  test.each([
    [0.75, 0.59],
    [0.824, 0.74],
    [1.049, 1.36],
    [1.38, 2.69],
  ])('a %f in outlet vents itself up to %f gpm', (bore, flow) => {
    isWithin(toGpm(ventedLph(inches(bore))), flow, 0.01)
  })

  test('14 towers at 2.5 gph vent through 3/4 in, 15 do not', () => {
    expect(Math.floor((toGpm(ventedLph(inches(0.75))) * 60) / 2.5)).toBe(14)
  })

  // 3/4 in takes 1.5^2.5 = 2.76 times what 1/2 in does.
  test('3/4 in takes 2.8 times what 1/2 in takes', () => {
    expect(ventedLph(inches(0.75)) / ventedLph(inches(0.5))).toBeCloseTo(2.76, 2)
  })

  // Published example of the Froude method for gravity drains (P. D. Hills, Chemical Engineering (1983)): 36 m3/h in 180 mm, 0.296.
  test('36 cubic metres an hour in 180 mm have Froude 0.296: just vented', () => {
    const velocity = toM3PerS(36_000) / ((Math.PI * 0.18 ** 2) / 4)
    expect(velocity / Math.sqrt(9.80665 * 0.18)).toBeCloseTo(0.296, 3)
    isWithin(ventedLph(180), (36_000 * 0.3) / 0.2957, 0.001)
  })
})

describe('critical depth', () => {
  // In a box y = (q^2 / g)^(1/3): 0.1 m3/s a metre, (0.01 / 9.80665)^(1/3) = 0.1006 m.
  test('0.1 m3/s a metre of box is 100.6 mm deep', () => {
    const box: Section = { shape: 'trapezoid', bottomMm: 1000, topMm: 1000, heightMm: 500 }
    expect(criticalDepthMm(box, fromM3PerS(0.1))).toBeCloseTo(100.65, 1)
  })

  const anySection: fc.Arbitrary<Section> = fc.oneof(
    fc.record({
      shape: fc.constant('circle' as const),
      diameterMm: fc.double({ min: 20, max: 300, noNaN: true }),
    }),
    fc.record({
      shape: fc.constant('half-round' as const),
      diameterMm: fc.double({ min: 20, max: 300, noNaN: true }),
    }),
    fc
      .record({
        bottomMm: fc.double({ min: 10, max: 300, noNaN: true }),
        wider: fc.double({ min: 0, max: 200, noNaN: true }),
      })
      .map(({ bottomMm, wider }) => ({
        shape: 'trapezoid' as const,
        bottomMm,
        topMm: bottomMm + wider,
        heightMm: 80,
      })),
  )

  test('there the flow runs as fast as its waves, over the lip too', () => {
    fc.assert(
      fc.property(anySection, fc.double({ min: 0.01, max: 1.4, noNaN: true }), (section, share) => {
        const depth = heightMm(section) * (section.shape === 'circle' ? share * 0.65 : share)
        const metres = (mm: number): number => mm / 1000
        const area = metres(metres(areaMm2(section, depth)))
        const flow = Math.sqrt((9.80665 * area ** 3) / metres(topWidthMm(section, depth)))
        isWithin(criticalDepthMm(section, fromM3PerS(flow)), depth, 1e-6)
      }),
      { seed: 63 },
    )
  })

  test('no flow has none, and more than a pipe can carry stays in the pipe', () => {
    const pipe: Section = { shape: 'circle', diameterMm: 100 }
    expect(criticalDepthMm(pipe, 0)).toBe(0)
    expect(criticalDepthMm(pipe, gpm(10_000))).toBeLessThan(100)
    expect(toInches(criticalDepthMm(pipe, gpm(1)))).toBeGreaterThan(0)
  })
})
