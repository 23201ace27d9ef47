import { test } from 'vitest'
import { pageSvg } from '../../src/drawing/svg'
import { paperTheme } from '../../src/drawing/theme'
import { evaluate } from '../../src/evaluate/evaluate'
import { floorPage } from '../../src/sheets/floor/floorSheet'
import { expectGolden } from '../support/golden'
import { scenarios } from '../support/scenarios'

test('the floor sheet of the lean-to is the kept page', () => {
  const page = floorPage(evaluate(scenarios['lintel-lane-lean-to']!()), {
    paper: 'letter',
    orientation: 'portrait',
    scale: 'fit',
    units: 'feet-inches',
    dateText: '1 May 2027',
    issue: '1',
  })
  expectGolden('tests/golden/floor-sheet-lean-to.svg', pageSvg(page, paperTheme))
})
