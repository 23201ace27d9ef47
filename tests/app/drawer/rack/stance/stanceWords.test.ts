import { describe, expect, test } from 'vitest'
import {
  heldWords,
  leastTip,
  mustHoldN,
  ruleRows,
  standsWords,
  tipCells,
  tipWords,
} from '../../../../../src/app/drawer/rack/stance/stanceWords'
import { poundsForce } from '../../../../../src/units/force'
import { inches } from '../../../../../src/units/length'
import { writerFor } from '../../../../../src/units/writer'
import { stanceWith, tipOf } from '../../../../support/handStrength'

const write = writerFor('feet-inches')
const push = poundsForce(50)

// The bare rack of the trade notes, hand arithmetic: 24.4 lb on a base of 30 in, pushed at 64 in: 24.4 x 15 / 64 = 5.7 lb, 0.11 of 50.
const bare = tipOf({
  weightN: poundsForce(24.4),
  armMm: inches(15),
  tipsAtN: poundsForce(5.72),
  safety: 0.114,
  state: 'Tips',
})
// The same with ten 25 lb towers: 299.3 x 15 / 64 = 70.2 lb, 1.40.
const full = tipOf({
  under: 'full',
  weightN: poundsForce(299.3),
  armMm: inches(15),
  tipsAtN: poundsForce(70.2),
  safety: 1.403,
})
const stance = stanceWith({ railMm: inches(64), tips: [bare, full], state: 'Tips' })

describe('how a row stands, in words', () => {
  test('what tips it, and who would', () => {
    expect(tipWords(bare, stance, push, write)).toBe(
      'With nothing hung, 6 lb across the row at its rails, 64" up, tips it; a person leans or pulls with 50 lb (assumed).',
    )
    expect(tipWords({ ...bare, tipsAtN: 0 }, stance, push, write)).toBe(
      'With nothing hung, it falls over by itself across the row.',
    )
  })

  test('what is to be done, or by what it stands', () => {
    expect(standsWords(stance, push, write)).toMatch(
      /^Anchor it to the ground, tie it to the next row, or widen its base/,
    )
    expect(standsWords({ ...stance, state: 'Stands' }, push, write)).toBe(
      'It stands by its weight: nothing under 1.5 times the 50 lb of a person tips it.',
    )
    expect(standsWords({ ...stance, state: 'Stands', heldBy: 'tied' }, push, write)).toMatch(/^It is tied/)
    expect(standsWords({ ...stance, tips: [] }, push, write)).toMatch(/^It hangs from the house/)
  })

  test('the state that takes least is shown first', () => {
    expect(leastTip({ ...stance, tips: [full, bare] })).toBe(bare)
    expect(leastTip({ ...stance, tips: [] })).toBeUndefined()
  })

  // 1.5 x 50 = 75 lb asked: 75 - 5.72 = 69.3 and 75 - 70.2 = 4.8 lb are missing.
  test('the table, with what is missing to one and a half times the push', () => {
    expect(tipCells(bare, push, write)).toEqual([
      'nothing hung',
      '24 lb',
      'across',
      '15"',
      '6 lb',
      '0.11',
      '69 lb',
    ])
    expect(tipCells(full, push, write)).toEqual([
      'all hung',
      '299 lb',
      'across',
      '15"',
      '70 lb',
      '1.40',
      '5 lb',
    ])
    expect(mustHoldN({ ...full, tipsAtN: poundsForce(80) }, push)).toBe(0)
  })

  // Common practice, no source: 18 of 18.6 in at four lines 18 in apart, riser 72 in over a base of 46.5 in.
  test('the two rules of the trade', () => {
    const kept = stanceWith({ oneSideMm: inches(18), oneSideLimitMm: inches(18.6), heightToBase: 1.548 })
    expect(ruleRows(kept, write).map((row) => row.slice(1))).toEqual([
      ['18"', '18-5/8"'],
      ['1.55', '2.5'],
    ])
  })

  test('what holds it, as its own field says', () => {
    expect(heldWords({ hold: 'free', carriedBy: 'floor' })).toBe('Nothing but its weight holds it')
    expect(heldWords({ hold: 'tied', carriedBy: 'house' })).toBe('The house holds it up')
  })
})
