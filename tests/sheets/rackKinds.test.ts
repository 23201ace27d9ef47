import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { sheets } from '../../src/sheets'
import { pagesOf } from '../../src/sheets/pagesOf'
import type { PlanOnPaper, SheetOptions } from '../../src/sheets/sheet'
import { piecesText } from '../../src/sheets/sheetText'
import { bay } from '../support/bay'
import { brokenLaws } from '../support/pageLaws'

/** A row of every kind of joint, braced and held in every way, and one that the house carries, over one drain and pit. */
const layout = bay('60 x 60 ft', 'Every kind of rack')
  .row('Sleeved', [60, 60], { racks: 2, hold: 'anchored', endIn: 30 })
  .row('Parted', [160, 60], { racks: 3, joint: 'J2', hold: 'tied', drips: 'painted' })
  .row('Doweled', [260, 60], { racks: 2, joint: 'J4', bracing: 'along' })
  .row('Lapped', [360, 60], { racks: 3, joint: 'J5', rackLength: 108 })
  .row('Bare', [460, 60], { racks: 1, bracing: 'none', midPairs: 0, endIn: 30, treated: 'all' })
  .row('Hung', [560, 60], { racks: 2, carriedBy: 'house', joint: 'J2' })
  .row('Short', [650, 60], {
    racks: 2,
    joint: 'J5',
    rackLength: 100,
    base: 'short-runners',
    bracing: 'across',
    footPlate: 0,
    lines: 2,
  })
  .drain('Drain', [
    [690, 480],
    [30, 480],
  ])
  .pit('Pit', { x: [10, 40], y: [500, 560] })
  .layout()

const now = evaluate(layout)
const plan: PlanOnPaper = { now, issued: { number: 11, dateText: '1 April 2027', was: now } }

const papers: readonly SheetOptions[] = (
  [
    ['letter', 'feet-inches'],
    ['A4', 'metric'],
  ] as const
).map(([paper, units]) => ({
  paper,
  orientation: 'auto',
  scale: 'fit',
  units,
  dateText: '1 May 2027',
  issue: '12',
}))

describe.each(sheets.map((sheet) => [sheet.id, sheet] as const))('the %s sheet', (_, sheet) => {
  test.each(papers.map((options) => [options.units, options] as const))(
    'keeps the laws of pages, and says no number that is none, in %s',
    (_units, options) => {
      const broken = brokenLaws(pagesOf(sheet, plan, options), sheet, layout.title, options)
      // So much is wrong with this bay that numbers of findings crowd on its floor: no matter of its racks.
      expect(broken.filter((words) => !/"\d+" lies on/.test(words)).slice(0, 12)).toEqual([])
      expect(piecesText(sheet.pieces(plan, options))).not.toMatch(/NaN|Infinity|undefined|\bnull\b/)
    },
  )
})
