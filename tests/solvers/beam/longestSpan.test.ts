import { describe, expect, test } from 'vitest'
import { longestSpan } from '../../../src/solvers/beam/longestSpan'
import { ksi, poundsPerInch } from '../../../src/units/force'
import { inches, toInches } from '../../../src/units/length'
import { beamOn, bend, line } from './drawn'

// Steel Tube Institute, "EMT Weights and Dimensions"; I and S by hand from outside diameter and wall. 3/4, 1 and 1-1/4 in.
const tubes = [
  { i: 0.01284, s: 0.02786 },
  { i: 0.03036, s: 0.05222 },
  { i: 0.07717, s: 0.10221 },
].map(({ i, s }) => ({ eiNmm2: ksi(29000) * i * inches(1) ** 4, sectionMm3: s * inches(1) ** 3 }))

const allowed = { stressMpa: ksi(18), sagOver: 180 }

// Table of longest riser spacings of the trade notes, hand arithmetic: bars every 15 in, w = (towers x lb / 2 + 1) / 15 + 0.04 lb/in,
// 18 ksi and L/180, both assumed.
describe.each([
  [2, 12, [56, 75, 102]],
  [2, 18, [50, 66, 90]],
  [2, 25, [45, 60, 81]],
  [4, 12, [45, 60, 82]],
  [4, 18, [40, 53, 72]],
  [4, 25, [34, 47, 65]],
])('%d towers of %d lb a bar', (towers, lb, longest) => {
  const w = poundsPerInch(((towers * lb) / 2 + 1) / 15 + 0.04)
  test.each(longest.map((reach, k) => [['3/4 in', '1 in', '1-1/4 in'][k], reach, k] as const))(
    '%s: %d in',
    (_size, reach, k) => {
      expect(Math.abs(toInches(longestSpan(tubes[k]!, w, allowed).mm) - reach)).toBeLessThan(1)
    },
  )
})

test('at the longest span the beam has just the stress or the sag that is allowed', () => {
  for (const tube of tubes)
    for (const w of [0.1, 0.3, 0.8]) {
      const { mm, by } = longestSpan(tube, w, allowed)
      const bent = bend(beamOn(mm, [0, mm], tube.eiNmm2), line(0, mm, w))
      const stress = bent.moments(0, mm).most.value / tube.sectionMm3 / allowed.stressMpa
      const sag = (bent.sags(0, mm).most.value / mm) * allowed.sagOver
      expect(by === 'stress' ? stress : sag).toBeCloseTo(1, 9)
      expect(Math.max(stress, sag)).toBeCloseTo(1, 9)
    }
})
