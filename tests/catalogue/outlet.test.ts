import { expect, test } from 'vitest'
import { fittingOf } from '../../src/catalogue/fittings'
import { outletOf, outlets } from '../../src/catalogue/outlet'
import { toInches } from '../../src/units/length'

test('outlets go from the smallest up, and each is a thing to buy', () => {
  const bores = outlets.map(({ boreMm }) => boreMm)
  expect(bores).toEqual([...bores].sort((a, b) => a - b))
  for (const { key, title } of outlets)
    expect(fittingOf(`gutter-outlet-${key}`).title).toContain(title.split(' ')[0])
})

// By their names: 1/2, 3/4, 1 and 2 in. Common practice, no source.
test.each([
  ['1/2', 0.5],
  ['3/4', 0.75],
  ['1', 1],
  ['2', 2],
])('a %s in outlet is %f in wide', (key, bore) => {
  expect(toInches(outletOf(key).boreMm)).toBeCloseTo(bore, 9)
})
