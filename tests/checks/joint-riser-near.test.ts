import { expect, test } from 'vitest'
import { lengthOf } from '../../src/checks/found'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { rowStrength, saidIn, screen } from '../support/strength'

const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

const joint = (from: number, state: 'Within' | 'Too long') =>
  screen('rail-joint', state, lengthOf(inches(from)), lengthOf(inches(4)))

test('a joint over a riser is none to tell of, one between risers is a hinge', () => {
  expect(saidIn('joint-riser-near', layout, rowStrength({ screens: [joint(0, 'Within')] }))).toEqual([])
  expect(saidIn('joint-riser-near', layout, rowStrength({ screens: [joint(15, 'Too long')] }))).toEqual([
    'Too long: A rail joint of A lies 15" from the nearest riser, 4" is allowed: a slip joint is a hinge and bears no bending.',
  ])
})
