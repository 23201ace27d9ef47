import { test } from 'vitest'
import { pageSvg } from '../../src/drawing/svg'
import { paperTheme } from '../../src/drawing/theme'
import { evaluate } from '../../src/evaluate/evaluate'
import { floorPage } from '../../src/sheets/floor/floorSheet'
import { pagesOf } from '../../src/sheets/pagesOf'
import { pegTable } from '../../src/sheets/pegs/pegTable'
import { sawList } from '../../src/sheets/saw/sawList'
import type { SheetOptions } from '../../src/sheets/sheet'
import { shopSheet } from '../../src/sheets/shop/shopSheet'
import { expectGolden } from '../support/golden'
import { scenarios } from '../support/scenarios'

const options: SheetOptions = {
  paper: 'letter',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '1 May 2027',
  issue: '1',
}

test('the floor sheet of the lean-to is the kept page', () => {
  const now = evaluate(scenarios['lintel-lane-lean-to']!())
  const page = floorPage(now, { ...options, orientation: 'portrait' })
  expectGolden('tests/golden/floor-sheet-lean-to.svg', pageSvg(page, paperTheme))
})

test.each([pegTable, sawList, shopSheet].map((sheet) => [sheet.id, sheet] as const))(
  'the first page of the sample bay’s %s sheet is the kept page',
  (id, sheet) => {
    const now = evaluate(scenarios['kestrel-bend-house-2']!())
    const [page] = pagesOf(sheet, { now, issued: undefined }, options)
    expectGolden(`tests/golden/${id}-sample.svg`, page === undefined ? '' : pageSvg(page, paperTheme))
  },
)
