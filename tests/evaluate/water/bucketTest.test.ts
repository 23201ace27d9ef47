import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boresOf } from '../../../src/evaluate/water/bores'
import { bucketFault, type ExplainedTest, testedTube } from '../../../src/evaluate/water/bucketTest'
import type { BucketTest } from '../../../src/layout/bucketTest'
import { gph } from '../../../src/units/flow'
import { feet, inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'

const bucket = (values: Partial<BucketTest> = {}): BucketTest => ({
  stock: 'tube-1/8',
  lengthMm: inches(36),
  headMm: inches(7.1),
  flowLph: gph(4),
  waterC: 20,
  ...values,
})

const explained = (values: Partial<BucketTest> = {}): ExplainedTest => {
  const tested = testedTube(bucket(values))
  if (tested.kind !== 'explained') throw new Error(tested.kind)
  return tested
}

const fault = (values: Partial<BucketTest>, units: 'feet-inches' | 'metric' = 'feet-inches') =>
  bucketFault(bucket(values), testedTube(bucket(values)), writerFor(units))

describe('a tube that is as it is marked', () => {
  // Worked table of the trade notes, hand arithmetic at 20 °C: head in inches for 0.125 in tube of so many inches at 4 and 2 gph,
  // and for 0.170 in tube. The table gives a tenth of an inch.
  test.each([
    ['tube-1/8', 18, 4, 4.0],
    ['tube-1/8', 24, 4, 5.0],
    ['tube-1/8', 36, 4, 7.1],
    ['tube-1/8', 48, 4, 9.1],
    ['tube-1/8', 36, 2, 3.3],
    ['tube-1/4', 36, 4, 2.1],
  ] as const)('%s of %d in passes %d gph under %d in', (stock, length, flow, head) => {
    const tested = explained({ stock, lengthMm: inches(length), flowLph: gph(flow), headMm: inches(head) })
    expect(Math.abs(tested.boreMm / tested.markedMm - 1)).toBeLessThan(0.01)
    expect(Math.abs(tested.markedLph / gph(flow) - 1)).toBeLessThan(0.03)
    expect(tested).toMatchObject({ isInBetween: false, isUnlikely: false })
  })

  test('has nothing said against it, and is what the bay is reckoned with', () => {
    expect(fault({})).toBeUndefined()
    const test = bucket({ flowLph: gph(4.3) })
    const { boreMm, markedMm } = explained(test)
    expect(boreMm).toBeGreaterThan(markedMm)
    expect(boresOf(test)('tube-1/8') * 1000).toBeCloseTo(boreMm, 12)
    expect(boresOf(test)('tube-1/4') * 1000).toBeCloseTo(inches(0.17), 9)
  })

  // By hand: in smooth flow the loss along the tube goes with 1 / d^4, so 8 % more flow at one head is 2 % more bore, less
  // what the ends take.
  test('grows by a quarter of what its flow grows by', () => {
    const more = explained({ flowLph: gph(2 * 1.08), headMm: inches(3.3) }).boreMm
    const as = explained({ flowLph: gph(2), headMm: inches(3.3) }).boreMm
    expect(Math.abs(more / as - 1.02)).toBeLessThan(0.002)
  })
})

describe('a test that can not be', () => {
  // By hand: a 25 mm bore is no tube any more; under 1/2 in it passes sqrt(2 g h / 1.5) = 0.41 m/s, 190 gph.
  test('gives more than any tube passes', () => {
    const wrong = { flowLph: gph(400), headMm: inches(1 / 2) }
    expect(testedTube(bucket(wrong)).kind).toBe('too-much')
    expect(fault(wrong)).toMatch(/^No tube does this: .*400.* were measured\. It is left out; .* again\.$/)
  })

  // By hand: 0.5 mm bore of 3 in passes pi g d^4 h / (128 nu L) = 1.1 gph under 20 ft.
  test('gives less than any tube lets through', () => {
    const wrong = { flowLph: gph(0.1), headMm: feet(20), lengthMm: inches(3) }
    expect(testedTube(bucket(wrong)).kind).toBe('too-little')
    expect(fault(wrong)).toMatch(/^No tube does this/)
    expect(boresOf(bucket(wrong))('tube-1/8') * 1000).toBeCloseTo(inches(0.125), 9)
  })
})

test('a bore a fifth off its mark is asked for again, in the reader’s units', () => {
  const wrong = { flowLph: gph(14) }
  expect(explained(wrong).isUnlikely).toBe(true)
  expect(fault(wrong)).toMatch(/gph.* larger than marked\. Measure/)
  expect(fault({ flowLph: gph(1) }, 'metric')).toMatch(/L\/h.* smaller than marked\. Measure/)
})

// Trade notes: above Reynolds 2,000, 4.76 gph in this tube, single tubes flip between smooth and churned flow.
test('a tube between smooth and churned tells little', () => {
  expect(explained({ flowLph: gph(4.6), headMm: inches(8.4) }).isInBetween).toBe(false)
  expect(explained({ flowLph: gph(6), headMm: inches(15) }).isInBetween).toBe(true)
  expect(fault({ flowLph: gph(6), headMm: inches(15) })).toMatch(/Reynolds \d{4}\).*under less water/)
})

test('any test is told apart, and the bore that is found passes what was measured', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 60, noNaN: true }),
      fc.double({ min: 0.5, max: 240, noNaN: true }),
      fc.double({ min: 3, max: 240, noNaN: true }),
      fc.double({ min: 2, max: 40, noNaN: true }),
      (flow, head, length, waterC) => {
        const measured = { flowLph: gph(flow), headMm: inches(head), lengthMm: inches(length), waterC }
        const tested = testedTube(bucket(measured))
        if (tested.kind !== 'explained') return
        const isMore = measured.flowLph > tested.markedLph
        expect(tested.boreMm > tested.markedMm).toBe(isMore)
      },
    ),
    { seed: 61 },
  )
})
