import { expect, test } from 'vitest'
import type { RailLine, RowStrength } from '../../../src/model/strength'
import { proofSag } from '../../../src/sheets/assembly/proofSag'
import { railLine, rowStrength } from '../../support/handStrength'

/** Two racks of 1200 mm; with all hung the first sags 4 mm, the second 2. */
const rail = (v: number, more: Partial<RailLine> = {}): RailLine =>
  railLine({
    v,
    curve: {
      u: [0, 600, 1200, 1800, 2400],
      sagMm: [0, 4, 0, 2, 0],
      momentNmm: [0, 9000, -9000, 9000, 0],
    },
    reactions: [0, 1200, 2400].map((u) => ({ u, fullN: 100, mostN: 110, leastN: 0 })),
    ...more,
  })

const row = (left: RailLine, right: RailLine): RowStrength =>
  rowStrength({ rails: [left, right], towers: 9, towerN: 60 })

// Hand arithmetic: both rails carry 600 N, 9 towers of 60 N are 540 of it: 0.9; 1.5 x 0.9 x 4 = 5.4 mm, x 2 = 2.7 mm.
test('a rail goes down by what hangs on it beyond its own weight, at the proof load', () => {
  const strength = row(rail(-500), rail(500))
  expect(proofSag({ number: 1, rackMm: 1200 }, strength, 1.5).leftMm).toBeCloseTo(5.4, 9)
  expect(proofSag({ number: 2, rackMm: 1200 }, strength, 1.5).rightMm).toBeCloseTo(2.7, 9)
})

test('a rail that is too long is promised nothing, its neighbour in the next rack is', () => {
  const [first, second] = railLine({}).spans
  const long = rail(-500, { spans: [{ ...first!, state: 'Too long', used: 2 }, second!] })
  const strength = row(long, rail(500))
  expect(proofSag({ number: 1, rackMm: 1200 }, strength, 1.5)).toMatchObject({ leftMm: undefined })
  expect(proofSag({ number: 1, rackMm: 1200 }, strength, 1.5).rightMm).toBeCloseTo(5.4, 9)
  expect(proofSag({ number: 2, rackMm: 1200 }, strength, 1.5).leftMm).toBeCloseTo(2.7, 9)
})
