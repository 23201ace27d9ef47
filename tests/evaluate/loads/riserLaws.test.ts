import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { groundScreens } from '../../../src/evaluate/loads/ground'
import { riserScreens } from '../../../src/evaluate/loads/risers'
import type { RowInput } from '../../../src/evaluate/loads/rowInput'
import type { Screen } from '../../../src/model/strength'
import { loadsOf, railsOf, standing } from '../../support/standing'

const row = standing()

/** The default row with so many pounds on every riser, in a species, wet or dry. */
const under = (riserLb: number, settings: Partial<RowInput['settings']> = {}): readonly Screen[] => {
  const input = {
    ...row,
    rails: railsOf(row.frame, riserLb),
    loads: loadsOf(300, 96, riserLb / 4),
    settings: { ...row.settings, ...settings },
  }
  return [...riserScreens(input), ...groundScreens(input)]
}

const pounds = fc.integer({ min: 1, max: 2000 })
const species = fc.constantFrom('spf', 'hem-fir', 'southern-pine', 'douglas-fir')

const expectNoLess = (lighter: readonly Screen[], heavier: readonly Screen[]): void => {
  for (const [index, { id, used }] of heavier.entries())
    expect(used, id).toBeGreaterThanOrEqual(lighter[index]!.used - 1e-9)
}

test('heavier towers never use less of any limit', () => {
  fc.assert(
    fc.property(pounds, pounds, species, (lb, moreLb, kind) => {
      expectNoLess(under(lb, { species: kind }), under(lb + moreLb, { species: kind }))
    }),
    { seed: 81 },
  )
})

test('wet wood never uses less of any limit than dry', () => {
  fc.assert(
    fc.property(pounds, species, (lb, kind) => {
      expectNoLess(under(lb, { species: kind, woodIs: 'dry' }), under(lb, { species: kind, woodIs: 'wet' }))
    }),
    { seed: 82 },
  )
})
