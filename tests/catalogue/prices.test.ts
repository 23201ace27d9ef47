import { describe, expect, test } from 'vitest'
import { fittingOf, fittings } from '../../src/catalogue/fittings'
import { polyOf, polys } from '../../src/catalogue/pipe'
import { centsOfLength, priceOf, prices } from '../../src/catalogue/prices'
import { feet } from '../../src/units/length'

describe.each(prices)('$key', ({ key, cents, per, source }) => {
  test('is in the catalogue, and costs whole cents by what it is sold by', () => {
    expect((per === 'foot' ? polyOf(key) : fittingOf(key)).key).toBe(key)
    expect(Number.isInteger(cents)).toBe(true)
    expect(cents).toBeGreaterThan(0)
  })

  test('says that it is invented', () => expect(source).toBe('Placeholder, invented; put your own'))
})

test('no key has two prices', () => {
  expect(new Set(prices.map(({ key }) => key)).size).toBe(prices.length)
})

test('all pipe, tube and fittings of a lateral have one; what is chosen by its label, or put together by hand, has none', () => {
  for (const { key } of polys) expect(priceOf(key)?.per).toBe('foot')
  const sized = fittings.filter(({ key }) => /-(pe|drip)-/.test(key))
  expect(sized.length).toBeGreaterThan(100)
  for (const { key } of sized) expect(priceOf(key), key).toBeDefined()
  for (const key of ['pump', 'filter', 'head-box', 'family-adapter', 'tower'])
    expect(priceOf(key)).toBeUndefined()
})

test('a bigger fitting of one family costs more', () => {
  for (const noun of ['elbow', 'tee', 'union', 'clamp']) {
    const cents = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2'].map(
      (size) => priceOf(`${noun}-pe-${size}`)?.cents ?? NaN,
    )
    expect(cents).toEqual(cents.toSorted((a, b) => a - b))
  }
})

test('a coil of 100 ft costs a hundred times a foot, and a piece has no length', () => {
  const pipe = { key: 'x', cents: 40, per: 'foot', source: '' } as const
  expect(centsOfLength(pipe, feet(100))).toBe(4000)
  expect(centsOfLength(pipe, -feet(2.5))).toBe(-100)
  expect(centsOfLength({ ...pipe, per: 'piece' }, feet(1))).toBeUndefined()
})
