import { describe, expect, test } from 'vitest'
import { frameOf, placeOf, spotAt, sticksOf } from '../../../src/evaluate/loads/frame'
import type { Heading } from '../../../src/geometry/motion'
import { evaluate } from '../../../src/evaluate/evaluate'
import { bay } from '../../support/bay'
import { build, row } from '../../support/rackRows'
import { inchesOf } from '../../support/site'
import { frameOfBuilt } from './rowOf'

const headings: readonly Heading[] = [0, 90, 180, 270]

describe('a row in its own axes', () => {
  test.each(headings)(
    'heading %d: u from its start, v to the right, whichever way its gutters fall',
    (heading) => {
      for (const fallsTo of ['start', 'end'] as const) {
        const { sticks, lengthMm } = frameOfBuilt(build(row({ heading, fallsTo })))
        const risers = sticksOf({ sticks }, 'RS-p', 'RS-s')
        expect(inchesOf(lengthMm)).toBe(360)
        expect(risers).toHaveLength(26)
        expect(new Set(risers.map(({ from }) => inchesOf(from.v)))).toEqual(new Set([-20, 20]))
        const u = sticks.get('HB')!.map(({ from }) => inchesOf(from.u))
        expect(u).toEqual(Array.from({ length: 24 }, (_, k) => 7.5 + 15 * k))
      }
    },
  )

  test('station 1 line 1 is at the start, on the left', () => {
    for (const heading of headings) {
      const { towers } = frameOfBuilt(build(row({ heading, fallsTo: 'start' })))
      const first = towers.find(({ line, station }) => line === 1 && station === 1)!
      expect([inchesOf(first.u), inchesOf(first.v)]).toEqual([7.5, -27])
    }
  })

  test('holes stay measured from the foot: a riser runs upward', () => {
    for (const riser of frameOfBuilt(build(row())).sticks.get('RS-p')!)
      expect(riser.to.z).toBeGreaterThan(riser.from.z)
  })

  test('a spot and its place on the floor are one', () => {
    const { axes } = frameOfBuilt(build(row({ heading: 270 })))
    const spot = { u: 100, v: -200, z: 300 }
    expect(spotAt(axes, placeOf(axes, spot))).toEqual(spot)
  })
})

test('only where towers hang; remembered by what is built', () => {
  const { built } = evaluate(bay('40 x 60 ft').row('A', [100, 100]).post('Post', [300, 300]).layout()).bay
  const frames = built.map(frameOf)
  expect(frames.map((frame) => frame !== undefined)).toEqual(built.map(({ rack }) => rack !== undefined))
  expect(built.map(frameOf)).toEqual(frames)
  expect(frameOf(built[0]!)).toBe(frames[0])
})
