import { expect, test } from 'vitest'
import { judged, told } from '../support/judged'
import { fedRow } from '../support/fedRow'
import { ruleTable } from '../support/ruleTable'

/*
 * Pipeline practice of air valves at high points (NRCS Washington Engineering Technical Note 16, from memory); a lateral by half
 * its bore, 0.824 / 2 = 0.412 in, a tube by 2 in under its barb: common practice, no source.
 */
ruleTable('air-trap-vent', {
  passes: [
    ['level laterals with sight tubes', fedRow()],
    ['laterals that rise to their sight tubes', fedRow({ lateralRise: 2 })],
    ['a far end lower by less than half a bore', fedRow({ lateralRise: -0.4 })],
    ['sag of less than half a bore', fedRow({ lateralSag: 0.4 })],
    ['a main at one height', fedRow({}, {}, { height: 84 })],
  ],
  fails: [
    [
      'laterals that fall away from their riser pipe',
      fedRow({ lateralRise: -1 }),
      'Drifting, 1 of 0.412',
      'A lateral of A lies 1" higher than its sight tube: more than 7/16" holds air where no vent stands. Lay the laterals of A level.',
    ],
    [
      'laterals without a sight tube',
      fedRow({ sightTube: false }),
      'Drifting, 0 of 0.412',
      'No end of a lateral of A has a sight tube: nothing lets the air out when it fills, nor in when it empties. Give the laterals of A sight tubes.',
    ],
    [
      'laterals that sag between their ties',
      fedRow({ lateralSag: 1 }),
      'Drifting, 1 of 0.412',
      'The laterals of A sag 1" between ties: more than 7/16" holds air at each tie. Let the laterals of A sag no more than 1/8".',
    ],
  ],
})

test('36 in tubes from under the rails can hang about half their length', () => {
  // Two legs of one slope: sqrt(36^2 - 9^2) = 34.9, of which half and half the height of the barb over the tower's top.
  expect(judged('air-trap-vent', fedRow({ lateralAt: 'under-rail' }))[0]).toMatch(
    /^Drifting, 1[78]\.\d+ of 2$/,
  )
})

test('a main that goes over a door and down again holds air at its top', () => {
  const layout = fedRow().layout()
  const heights = [4, 4, 100, 100, 4, 4].map((inch) => inch * 25.4)
  const points = [38, 80, 80, 120, 120, 300].map((x, k) => ({
    x: x * 25.4,
    y: 130 * 25.4,
    heightMm: heights[k]!,
  }))
  const raised = {
    ...layout,
    parts: layout.parts.map((part) => (part.kind === 'main' ? { ...part, points } : part)),
  }
  expect(judged('air-trap-vent', raised)).toEqual(['Drifting, 96 of 2.067'])
  expect(told('air-trap-vent', raised)[0]).toMatch(/^Main rises 96" and comes down again/)
})
