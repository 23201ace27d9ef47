import { expect, test } from 'vitest'
import { beforeChecks } from '../../../src/evaluate/beforeChecks'
import { type Alternative, alternatives } from '../../../src/evaluate/shop/alternatives'
import { centsEach, sharedBy } from '../../../src/evaluate/shop/costFigures'
import { feet } from '../../../src/units/length'
import { kestrelBend } from '../../support/scenarios/kestrelBend'

const layout = kestrelBend().layout()

const found = (longestFt: number): readonly Alternative[] => {
  const steps = alternatives(layout, feet(longestFt))
  let step = steps.next()
  while (!step.done) step = steps.next()
  return step.value
}

const allFrom = (choices: readonly Alternative[], ft: number): Alternative | undefined =>
  choices.find(({ lumberMm }) => lumberMm.length === 1 && Math.round(lumberMm[0]! / feet(1)) === ft)

const sixteen = found(16)

test('all from 12 ft: 196 boards and 8.2 % waste, worked example of the trade notes', () => {
  // 196 x 12 = 2,352 ft bought for 2,158.7 ft.
  const twelve = allFrom(sixteen, 12)
  expect(twelve?.boards).toBe(196)
  expect(twelve?.waste).toBeCloseTo(0.082, 3)
})

test('all from 16 ft: about 140 boards, worked example of the trade notes', () => {
  // Risers are not halved from 16 ft, and runners have fewer splices, so the pieces are not quite those of the example.
  expect(Math.abs((allFrom(sixteen, 16)?.boards ?? 0) - 140)).toBeLessThanOrEqual(1)
})

test('as chosen is one of them, with the boards of the bay as it is drawn', () => {
  const chosen = sixteen.filter(({ isChosen }) => isChosen)
  const list = beforeChecks(layout).cuts.find(({ stock }) => stock === 'lumber-2x4')
  expect(chosen).toHaveLength(1)
  expect(chosen[0]?.boards).toBe(list?.bought.reduce((sum, { count }) => sum + count, 0))
  expect(chosen[0]?.cents).toBe(list?.cents)
})

test('a truck of 12 ft carries nothing longer', () => {
  const longest = Math.max(...found(12).flatMap(({ lumberMm }) => lumberMm))
  expect(longest).toBeCloseTo(feet(12), 6)
})

test('what can make all pieces comes first, the cheaper before the dearer', () => {
  const order = sixteen.map(({ unmade, cents }) => unmade * 1e9 + (cents ?? 1e8))
  expect(order).toEqual(order.toSorted((a, b) => a - b))
})

test('comparing leaves what is remembered of the drawn bay as it is', () => {
  const [before, , after] = [beforeChecks(layout), found(12), beforeChecks(layout)]
  expect(after.bay.built.every((built, index) => built === before.bay.built[index])).toBe(true)
})

test('7,496 shared by 480 towers is 15.62, by 4,320 sites 1.74: worked example of the trade notes', () => {
  const { towers, sites, areaMm2, zones } = sharedBy(beforeChecks(layout))
  expect([centsEach(749_600, towers), centsEach(749_600, sites)]).toEqual([1562, 174])
  // 352 x 856 in = 301,312 in2 = 2,092.4 ft2; 7,496 / 2,092.4 = 3.58. 7,496 / 6 zones = 1,249.33.
  expect(centsEach(749_600, areaMm2 / feet(1) ** 2)).toBe(358)
  expect(centsEach(749_600, zones)).toBe(124_933)
})

test('nothing to share by is no figure', () => {
  expect(centsEach(100, 0)).toBeUndefined()
})
