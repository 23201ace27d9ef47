import { expect, test } from 'vitest'
import { forceOf, lengthOf, stressOf } from '../../src/checks/found'
import { ksi, poundsForce } from '../../src/units/force'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { foundIn, railOf, rowStrength, saidIn, screen, span } from '../support/strength'

const RULE = 'rail-span-max'
const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()

const stress = (is: number, state: 'Proof-load' | 'Too long') =>
  screen('rail-stress', state, stressOf(ksi(is)), stressOf(ksi(18)))

const sag = (is: number, allowed: number, state: 'Proof-load' | 'Too long') =>
  screen('rail-sag', state, lengthOf(inches(is)), lengthOf(inches(allowed)))

const oneSpan = (from: number, to: number, stock = 'conduit-3/4') => [railOf([span(from, to, stock)])]

test('a row whose rails are within has no finding', () => {
  const within = screen('rail-stress', 'Within', stressOf(ksi(13.9)), stressOf(ksi(18)))
  expect(saidIn(RULE, layout, rowStrength({ screens: [within] }))).toEqual([])
})

// Worked example of the trade notes: 3/4 in conduit, risers 40 in apart, 3.44 lb/in: 24.8 ksi of 18.
test('a rail too long under its assumed yield', () => {
  const strength = rowStrength({ screens: [stress(24.77, 'Too long')], rails: oneSpan(40, 80) })
  expect(saidIn(RULE, layout, strength)).toEqual([
    'Too long: The rails of A, 3/4 in thin-wall conduit, reach 24.8 ksi between risers 40" apart with every tower hung; 18.0 ksi is allowed.',
  ])
})

// 1 in conduit, two 25 lb towers a bar 12 in apart, risers 60 in apart: 18.85 ksi and 0.419 in, hand arithmetic.
test('a rail that a proof load may speak for says so', () => {
  const strength = rowStrength({
    screens: [stress(18.85, 'Proof-load')],
    rails: oneSpan(0, 60, 'conduit-1'),
  })
  expect(saidIn(RULE, layout, strength)).toEqual([
    'Proof-load: The rails of A, 1 in thin-wall conduit, reach 18.9 ksi between risers 60" apart with every tower hung; 18.0 ksi is allowed. Try it with 1.5 times its load before anyone works under it.',
  ])
})

// The same at 120 in: 39.5 ksi and an elastic sag of 3.5 in, which never happens: the rail folds before.
test('over the assumed yield a rail folds, and nothing is said of its sag', () => {
  const strength = rowStrength({
    screens: [sag(3.51, 0.667, 'Too long'), stress(39.485, 'Too long')],
    rails: oneSpan(0, 120, 'conduit-1'),
  })
  expect(saidIn(RULE, layout, strength)).toEqual([
    'Too long: The rails of A, 1 in thin-wall conduit, reach 39.5 ksi between risers 120" apart with every tower hung; 18.0 ksi is allowed. Over 30.0 ksi, where conduit is assumed to yield, it folds or stays bent.',
  ])
})

// 3/4 in, 25 lb towers 12 in apart, 60 in: 0.511 in is over 60 / 180 = 0.333 in.
test('a rail that sags too much is told by its sag', () => {
  const strength = rowStrength({
    screens: [sag(0.511, 1 / 3, 'Too long'), stress(18.22, 'Proof-load')],
    rails: oneSpan(0, 60),
  })
  expect(saidIn(RULE, layout, strength)).toEqual([
    'Too long: The rails of A, 3/4 in thin-wall conduit, sag 1/2" between risers 60" apart with every tower hung; 5/16" is allowed.',
  ])
})

test('an overhang is called one, and at a riser the span that is used more is told', () => {
  const hung = { ...span(90, 115), isOverhang: true }
  const at = { u: inches(90), v: inches(20), z: 0 }
  const screens = [{ ...stress(20, 'Proof-load'), at }]
  const told = (used: number) =>
    saidIn(RULE, layout, rowStrength({ screens, rails: [railOf([span(60, 90), { ...hung, used }])] }))[0]
  expect(told(1.1)).toContain('reach 20.0 ksi where they overhang 25" with')
  expect(told(0.2)).toContain('between risers 30" apart')
})

test('it is found at its worst place and opens to its arithmetic', () => {
  const terms = [{ name: 'Reaction', quantity: forceOf(poundsForce(86)) }]
  const screens = [{ ...stress(24.77, 'Too long'), terms }]
  const [finding] = foundIn(RULE, layout, rowStrength({ screens }))
  // The row starts at 165, 100 in and runs north: 60 in along it and 20 in to its right, which is east.
  expect([finding!.at.x, finding!.at.y].map((mm) => mm / inches(1))).toEqual([
    expect.closeTo(185, 6),
    expect.closeTo(160, 6),
  ])
  expect(finding).toMatchObject({ key: `${RULE} rack-row-1`, subject: 'strength', terms })
})
