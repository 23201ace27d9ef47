import { describe, expect, test } from 'vitest'
import { onPage, stancePicture } from '../../../../../src/app/drawer/rack/stance/stancePicture'
import { frameOf } from '../../../../../src/evaluate/loads/frame'
import { poundsForce } from '../../../../../src/units/force'
import { inches } from '../../../../../src/units/length'
import { stanceWith, tipOf } from '../../../../support/handStrength'
import { build, fromShelf } from '../../../../support/rackRows'

const frame = frameOf(build(fromShelf('rack-row')))!
const push = poundsForce(50)
// 299.3 lb on a half base of 15 in, pushed at 64 in: weight and push meet the floor 50 x 64 / 299.3 = 10.69 in from the middle.
const stance = stanceWith({ baseHalfMm: inches(15), railMm: inches(64), riserMm: inches(66) })
const full = tipOf({ under: 'full', weightN: poundsForce(299.3), armMm: inches(15) })

describe('a row that a person pushes', () => {
  test('weight and push together meet the floor where hand arithmetic has it', () => {
    const picture = stancePicture(frame, stance, full, push)
    expect(picture.weightMm).toBeCloseTo(0, 9)
    expect(picture.footMm / inches(1)).toBeCloseTo(10.69, 2)
    expect(picture.footMm).toBeLessThan(picture.edgeMm)
  })

  test('a light row is pushed beyond its edge', () => {
    const { footMm, edgeMm } = stancePicture(frame, stance, { ...full, weightN: poundsForce(24.4) }, push)
    expect(footMm).toBeGreaterThan(edgeMm)
  })

  test('hangs what the state hangs, each line of towers once', () => {
    const hung = (under: 'full' | 'empty' | 'one-side'): number[] =>
      stancePicture(frame, stance, { ...full, under }, push)
        .towers.filter(({ isHung }) => isHung)
        .map(({ at }) => Math.round(at / inches(1)))
        .toSorted((a, b) => a - b)
    // Four lines 18 in apart.
    expect(hung('full')).toEqual([-27, -9, 9, 27])
    expect(hung('one-side')).toEqual([9, 27])
    expect(hung('empty')).toEqual([])
  })

  test('to one scale both ways, feet on the floor', () => {
    const picture = stancePicture(frame, stance, full, push)
    const { xOf, yOf, pxPerMm } = onPage(picture, { width: 700, height: 300 })
    expect(yOf(0)).toBe(266)
    expect(xOf(100) - xOf(0)).toBeCloseTo(100 * pxPerMm, 9)
    expect(yOf(0) - yOf(100)).toBeCloseTo(100 * pxPerMm, 9)
    expect(yOf(picture.tallMm)).toBeGreaterThanOrEqual(17.9)
  })
})
