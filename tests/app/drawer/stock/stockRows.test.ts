import { expect, test } from 'vitest'
import { stockRows } from '../../../../src/app/drawer/stock/stockRows'
import { measuring } from '../../../support/measuring'

/* Dressed sizes of lumber: US DOC PS 20; conduit: Steel Tube Institute, EMT Weights and Dimensions. */
const cuts = [{ stock: 'lumber-2x4' }, { stock: 'conduit-3/4' }, { stock: 'pe-3/4' }]

const cellsOf = (...args: Parameters<typeof stockRows>) =>
  stockRows(...args).map(({ title, cells }) => [
    title,
    ...cells.map(({ label, shown, catalogue }) => `${label}: ${shown || '-'} (${catalogue})`),
  ])

test('each stick of the bay with what can be measured of it; coils are sold by their length', () => {
  expect(cellsOf(cuts, [], 'feet-inches')).toEqual([
    ['2x4 lumber', 'Longer than its name: - (0")', 'Thickness: - (1-1/2")', 'Width: - (3-1/2")'],
    ['3/4 in thin-wall conduit', 'Longer than its name: - (0")', 'Outside: - (0.922")', 'Wall: - (0.049")'],
  ])
})

test('a tape reads to 1/64 in and a caliper to thousandths; what was measured of another stock stays in sight', () => {
  const measured = [measuring('lumber-2x4', { thick: 1 + 9 / 16 }), measuring('conduit-1', { od: 1.171 })]
  expect(cellsOf(cuts.slice(0, 1), measured, 'feet-inches')).toEqual([
    ['2x4 lumber', 'Longer than its name: - (0")', 'Thickness: 1-9/16" (1-1/2")', 'Width: - (3-1/2")'],
    [
      '1 in thin-wall conduit',
      'Longer than its name: - (0")',
      'Outside: 1.171" (1.163")',
      'Wall: - (0.057")',
    ],
  ])
})
