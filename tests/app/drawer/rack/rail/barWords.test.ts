import { expect, test } from 'vitest'
import { barWords } from '../../../../../src/app/drawer/rack/rail/barWords'
import { settingsSchema } from '../../../../../src/layout/settings'
import type { BarScreen } from '../../../../../src/model/strength'
import { inchPounds, ksi } from '../../../../../src/units/force'
import { inches } from '../../../../../src/units/length'
import { writerFor } from '../../../../../src/units/writer'

const settings = settingsSchema.parse({})

// Four 25 lb towers 18 in apart on rails 40 in apart: 175 lb-in over the rails, 6.3 ksi in 3/4 in conduit; the moments are alike between
// twice the spacing of the lines and two and a third of it, 36 to 42 in. Worked example of the trade notes, hand arithmetic.
const bar: BarScreen = {
  u: inches(97.5),
  stock: 'conduit-3/4',
  railV: [-inches(20), inches(20)],
  loads: [],
  fromV: -inches(28.5),
  toV: inches(28.5),
  momentNmm: inchPounds(175),
  stressMpa: ksi(6.28),
  sagMm: inches(1 / 16),
  under: 'harvested',
  bestSpacingMm: inches(36),
}

test('a bar is told with what it bears and where its rails would spare it most', () => {
  expect(barWords(bar, settings, writerFor('feet-inches'))).toEqual([
    `3/4 in, 8' 1-1/2" along, with worst spans harvested: 175 lb-in, 6.3 ksi where 18.0 ksi is allowed, sag 1/16".`,
    `Its rails are 40" apart; it would bend alike over them and between them at 36", whatever is harvested.`,
  ])
})

test('and says where no other spacing is better', () => {
  const [, best] = barWords({ ...bar, bestSpacingMm: inches(40.25) }, settings, writerFor('metric'))
  expect(best).toBe('Its rails are 1016 mm apart, where it bends alike over them and between them.')
  const [, none] = barWords({ ...bar, bestSpacingMm: undefined }, settings, writerFor('metric'))
  expect(none).toContain('no other spacing')
})
