import { expect, test } from 'vitest'
import { forceOf, pressureOf } from '../../src/checks/found'
import { applyMend } from '../../src/layout/mend'
import { poundsForce, psf } from '../../src/units/force'
import { bay } from '../support/bay'
import { foundIn, rowStrength, saidIn, screen } from '../support/strength'

const RULE = 'house-load-max'
const hung = bay('40 x 60 ft').row('A', [165, 100], { carriedBy: 'house' })

// A 25 lb tower on every 4 ft² is 6.25 psf, hand arithmetic; a maker may give 5.
const screens = [screen('house-load', 'Too long', pressureOf(psf(6.25)), pressureOf(psf(5)))]

test('more than the maker of the house gives', () => {
  const given = hung.settings({ houseKpa: psf(5) }).layout()
  expect(saidIn(RULE, given, rowStrength({ screens }))).toEqual([
    'Too long: A hangs 6 psf from the house frame with every tower hung; its maker gives 5 psf. Set the rails of A on risers that stand on the floor.',
  ])
})

// Bartok, citing the National Greenhouse Manufacturers Association: 100 lb at mid span of a purlin.
test('more at one hanger than a purlin takes', () => {
  const given = hung.settings({ houseKpa: psf(15) }).layout()
  const atHanger = [screen('house-load', 'Too long', forceOf(poundsForce(120)), forceOf(poundsForce(100)))]
  expect(saidIn(RULE, given, rowStrength({ screens: atHanger }))).toEqual([
    'Too long: One hanger of A pulls at the house frame with 120 lb with every tower hung; a purlin takes 100 lb in mid span. Set the rails of A on risers that stand on the floor.',
  ])
})

test('without a figure of the maker nothing hangs; one press sets the row on the floor', () => {
  const layout = hung.layout()
  expect(saidIn(RULE, layout, rowStrength({ screens }))).toEqual([
    'Too long: A hangs 6 psf from the house frame with every tower hung, and no figure of its maker says that it bears anything. Set the rails of A on risers that stand on the floor.',
  ])
  const [finding] = foundIn(RULE, layout, rowStrength({ screens }))
  expect(applyMend(layout, finding!.mend!).parts[0]).toMatchObject({ carriedBy: 'floor' })
})
