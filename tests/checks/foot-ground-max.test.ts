import { expect, test } from 'vitest'
import { pressureOf } from '../../src/checks/found'
import { psf } from '../../src/units/force'
import { bay } from '../support/bay'
import { rowStrength, saidIn, screen } from '../support/strength'

const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

const pressed = (is: number, bears: number, state: 'Within' | 'Too long') =>
  screen('ground-bearing', state, pressureOf(psf(is)), pressureOf(psf(bears)))

// 299 lb on two runners of 3-1/2 by 60 in are 103 psf, hand arithmetic; 1,500 is presumed of firm ground.
test('a rack on firm ground, and on mud', () => {
  expect(saidIn('foot-ground-max', layout, rowStrength({ screens: [pressed(103, 1500, 'Within')] }))).toEqual(
    [],
  )
  expect(
    saidIn('foot-ground-max', layout, rowStrength({ screens: [pressed(239, 150, 'Too long')] })),
  ).toEqual([
    'Too long: A foot of A presses 239 psf on the ground with every tower hung; it is taken to bear 150 psf.',
  ])
})
