import { expect, test } from 'vitest'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { rowStrength, saidIn, stance } from '../support/strength'

const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()
const said = (riser: number, half: number, heldBy?: 'tied') =>
  saidIn(
    'row-height-max',
    layout,
    rowStrength({
      stance: stance({
        riserMm: inches(riser),
        baseHalfMm: inches(half),
        heightToBase: riser / (2 * half),
        heldBy,
      }),
    }),
  )

// 72 / 46.5 = 1.55; 75 / 30 = 2.5 exactly; 72 / 20.5 = 3.51.
test('risers up to two and a half times as high as the base is wide', () => {
  expect(said(72, 23.25)).toEqual([])
  expect(said(75, 15)).toEqual([])
  expect(said(72, 10.25, 'tied')).toEqual([])
  expect(said(72, 10.25)).toEqual([
    'Shaky: A stands 72" high on a base of 20-1/2", 3.51 to 1; over 2.5 it is tied. Give A ground anchors at its braced pairs.',
  ])
})
