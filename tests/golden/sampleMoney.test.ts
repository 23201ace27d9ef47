import { expect, test } from 'vitest'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { shopLines } from '../../src/evaluate/shop/shopList'
import type { ShopLine } from '../../src/model/shop'
import { scenarios } from '../support/scenarios'

/**
 * What the first sample costs by the invented prices, column by column, against the columns of the trade notes (placeholders
 * there too, only to size the columns). Towers and their hooks are in neither.
 */

const layout = scenarios['kestrel-bend-house-2']!()
const { cuts, counts } = beforeChecks(layout)
const lines = shopLines(cuts, counts, layout.counter)

const dollarsOf = (isIn: (line: ShopLine) => boolean): number =>
  lines.filter(isIn).reduce((sum, { boughtCents = 0 }) => sum + boughtCents, 0) / 100

const isOf =
  (...keys: readonly RegExp[]) =>
  ({ key }: ShopLine): boolean =>
    keys.some((pattern) => pattern.test(key))

/** Column, its sum in the notes, and what is in it here. */
const columns: readonly (readonly [string, number, (line: ShopLine) => boolean])[] = [
  ['lumber', 1386, isOf(/^lumber-/)],
  ['conduit', 1026, isOf(/^conduit-/, /^(end-cap|bar-stop|rail-stop)/)],
  ['screws', 202, isOf(/^screw$/)],
  ['foot blocks', 330, isOf(/^foot-(plate|shim)/)],
  ['gutters complete', 1277, isOf(/^gutter-/)],
  ['drain', 201, isOf(/^drain-/, /^drop$/)],
  ['pit', 900, isOf(/^(pit-|overflow-|make-up-valve)/)],
  ['pumps, filter, valves', 1100, isOf(/^(pump-middle|filter|check-valve|bypass-valve|foot-strainer)/)],
  ['poly', 279, isOf(/^pe-/)],
  ['microtube, barbs, ties', 255, isOf(/^(tube-|barb-|goof-plug|zip-tie|hook-tie)/)],
]

test.each(columns)('%s: about $%i', (_, dollars, isIn) => {
  expect(dollarsOf(isIn) / dollars).toBeGreaterThan(0.85)
  expect(dollarsOf(isIn) / dollars).toBeLessThan(1.15)
})

test('screws are 2,022 of them in 21 boxes of a hundred, at the price of 20 and more: $201.60', () => {
  expect(lines.find(({ key }) => key === 'screw')).toMatchObject({ packs: 21, boughtCents: 20_160 })
})

test('in all about $7,496: within 5 %', () => {
  expect(Math.abs(dollarsOf(() => true) / 7496 - 1)).toBeLessThan(0.05)
})

test('only what the book has no price for is in no sum', () => {
  const unpriced = lines.filter(({ boughtCents }) => boughtCents === undefined)
  expect(unpriced.map(({ key }) => key).toSorted()).toEqual(['hook', 'tower'])
})
