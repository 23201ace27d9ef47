import { expect, test } from 'vitest'
import {
  changeWords,
  effectsOf,
  inHandWords,
  lostWords,
  mendLabel,
  type Reader,
  refusedWords,
  takesWords,
} from '../../../../src/app/drawer/rack/mendsWords'
import { evaluate } from '../../../../src/evaluate/evaluate'
import { rackRowIn } from '../../../../src/evaluate/strengthMends/rowTrial'
import { wordsFor } from '../../../../src/sidebar/words'
import { ksi, poundsForce } from '../../../../src/units/force'
import { inches } from '../../../../src/units/length'
import { bay } from '../../../support/bay'
import { rowStrength, screen, stance, tip } from '../../../support/strength'

const layout = bay('60 x 60 ft')
  .row('A', [165, 100], { midPairs: 0 })
  .row('B', [265, 100], { midPairs: 0 })
  .layout()
const row = rackRowIn(layout, 'rack-row-1')!
const reader: Reader = { words: wordsFor(layout.parts, 'feet-inches'), currency: '$' }
const assumed = { conduitYieldMpa: ksi(30) }

const mpa = (value: number) => ({ value, unit: 'MPa' as const })
const mm = (value: number) => ({ value, unit: 'mm' as const })

test('what changes, field by field, from what to what', () => {
  expect(changeWords(row, { midPairs: 1 }, reader)).toEqual(['Riser pairs between rack ends: 0 to 1'])
  expect(changeWords(row, { endInMm: inches(25) }, reader)).toEqual(['End riser pairs, moved in: 0" to 25"'])
  expect(changeWords(row, { rail: '1', railBitMm: inches(1.1875) }, reader)).toEqual([
    'Rail: 3/4 in conduit to 1 in conduit',
    'Bit for the rail: 15/16" to 1-3/16"',
  ])
  expect(changeWords(row, { hold: 'anchored' }, reader)).toEqual([
    'Kept from tipping: by its weight alone to ground anchors at the braced pairs',
  ])
})

test('the one entry in the history names the rows and what is set', () => {
  const change = (part: string) => ({ part, values: { midPairs: 1 } })
  const values = { midPairs: 1 }
  expect(mendLabel({ values, changes: [change('rack-row-1')] }, reader)).toBe(
    'Mend A: riser pairs between rack ends 1',
  )
  expect(mendLabel({ values, changes: ['rack-row-1', 'rack-row-2'].map(change) }, reader)).toBe(
    'Mend A and 1 like it: riser pairs between rack ends 1',
  )
})

const before = rowStrength({
  state: 'Too long',
  screens: [
    screen('rail-sag', 'Too long', mm(89), mm(17)),
    screen('rail-stress', 'Too long', mpa(ksi(39.5)), mpa(ksi(18))),
    screen('bar-stress', 'Within', mpa(ksi(9)), mpa(ksi(18))),
  ],
  stance: stance({ tips: [tip('empty', 5.7, 'Tips')], state: 'Tips' }),
})

test('what it does, with the state it is then in; sag over the yield is never told in a length', () => {
  const after = rowStrength({
    screens: [
      screen('rail-sag', 'Within', mm(inches(5 / 32)), mm(17)),
      screen('rail-stress', 'Within', mpa(ksi(6.8)), mpa(ksi(18))),
      screen('bar-stress', 'Within', mpa(ksi(9)), mpa(ksi(18))),
    ],
    stance: stance({ tips: [tip('empty', 5.7, 'Tips')], heldBy: 'tied' }),
  })
  const told = effectsOf(before, after, reader, assumed).map(
    ({ what, before: was, after: is, state }) => `${what}: ${was} to ${is}, ${state}`,
  )
  expect(told).toEqual([
    'Bending of a rail: 39.5 ksi to 6.8 ksi, Within',
    'Sag of a rail: folds or stays bent to 5/32", Within',
    'Push that tips it: 6 lb to held by ties, Stands',
  ])
})

test('what still ails and is as it was is told to stay', () => {
  const [stress, ...others] = effectsOf(before, { ...before, stance: stance() }, reader, assumed)
  expect(stress).toMatchObject({ what: 'Bending of a rail', before: undefined, after: '39.5 ksi', rank: 2 })
  expect(others.map(({ what }) => what)).toEqual(['Push that tips it'])
})

test('what it costs: money, boards and hours with their signs, or nothing; no price is never no cost', () => {
  const none = { cents: 0, unpriced: 0, boards: 0, hours: 0 }
  expect(takesWords(none, '$')).toBe('Nothing')
  expect(takesWords({ cents: 1840, unpriced: 0, boards: 2, hours: 0.4 }, '$')).toBe(
    '+\u00A0$18.40, +\u00A02 boards, +\u00A00.4 h',
  )
  expect(takesWords({ cents: -500, unpriced: 0, boards: -1, hours: -12.4 }, '$')).toBe(
    '−\u00A0$5.00, −\u00A01 board, −\u00A012 h',
  )
  expect(takesWords({ ...none, unpriced: 2 }, '$')).toBe('2 things without a price')
  expect(lostWords(24)).toBe('Gives up 24 towers')
})

test('why the bay does not allow it, in the words of the rule', () => {
  const bad = evaluate(bay('60 x 60 ft').row('A', [165, 100], { racks: 1, railBit: 0.75 }).layout())
  const finding = bad.findings.find(({ rule }) => rule === 'hole-bit-min')!
  const words = refusedWords({ values: {}, findings: [finding, finding] }, reader)
  expect(words).toMatch(/^Bit and conduit\. The bit of 0\.750" that A is drilled with is smaller/)
  expect(words).toContain('And 1 more warning.')
})

test('a sound row says what it has in hand', () => {
  const sound = rowStrength({
    screens: [screen('rail-stress', 'Within', mpa(ksi(13.5)), mpa(ksi(18)))],
    stance: stance({ tips: [tip('empty', 176, 'Stands')] }),
  })
  expect(inHandWords(sound, poundsForce(50), reader)).toBe(
    'A is within and stands: nothing is to be mended. What is used most is 75.0 % of its limit (bending of a rail); 25.0 % is in hand. It takes 176 lb at its rails to tip it; a person leans with 50 lb.',
  )
})

test('what a change does away with is told too: a row on risers hangs from the house no more', () => {
  const hung = rowStrength({
    state: 'Too long',
    screens: [screen('house-load', 'Too long', { value: 0.77, unit: 'kPa' }, { value: 0, unit: 'kPa' })],
  })
  expect(effectsOf(hung, rowStrength({ state: 'Within', screens: [] }), reader, assumed)).toEqual([
    { what: 'Row hung from the house', before: '16 psf', after: 'none', state: 'Within', rank: 0 },
  ])
})
