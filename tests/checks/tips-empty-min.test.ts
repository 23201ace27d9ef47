import { expect, test } from 'vitest'
import { applyMend } from '../../src/layout/mend'
import { bay } from '../support/bay'
import { foundIn, rowStrength, saidIn, stance, tip } from '../support/strength'

const RULE = 'tips-empty-min'
const layout = bay('40 x 60 ft').row('A', [165, 100]).layout()
const said = (...tips: readonly ReturnType<typeof tip>[]) =>
  saidIn(RULE, layout, rowStrength({ stance: stance({ tips }) }))

// A bare rack of 24.4 lb on a base of 30 in, pushed 64 in up: 24.4 x 15 / 64 = 5.7 lb, hand arithmetic.
test('a bare rack tips', () => {
  expect(said(tip('full', 140, 'Stands'), tip('empty', 5.7, 'Tips'))).toEqual([
    'Tips: Empty, A tips across the row when it is pushed at its rails with 6 lb; a person leans with 50 lb. Give A ground anchors at its braced pairs.',
  ])
})

// With ten towers of 25 lb it weighs 299.3 lb: 299.3 x 15 / 64 = 70.2 lb, 1.40 of 50; 1.5 times 50 are asked.
test('a rack that stands a push, but not one and a half, is shaky', () => {
  expect(said(tip('full', 70.2, 'Shaky'))).toEqual([
    'Shaky: A tips across the row when it is pushed at its rails with 70 lb; a person leans with 50 lb, and 75 lb is asked. Give A ground anchors at its braced pairs.',
  ])
})

test('a wide base stands, and one side hung is another rule’s', () => {
  expect(said(tip('full', 140.3, 'Stands'), tip('empty', 80, 'Stands'))).toEqual([])
  expect(said(tip('one-side', 11.6, 'Tips'))).toEqual([])
})

test('a row that is held is not found; one press anchors it', () => {
  const tips = [tip('empty', 5.7, 'Tips')]
  const held = rowStrength({ stance: stance({ tips, heldBy: 'tied' }) })
  expect(foundIn(RULE, layout, held)).toEqual([])
  const [finding] = foundIn(RULE, layout, rowStrength({ stance: stance({ tips }) }))
  expect(finding).toMatchObject({ subject: 'stance', key: `${RULE} rack-row-1` })
  expect(applyMend(layout, finding!.mend!).parts[0]).toMatchObject({ hold: 'anchored' })
})
