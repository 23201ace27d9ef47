import loadHighs from 'highs'
import { describe, expect, test } from 'vitest'
import { solverOver } from '../../src/app/proof/solverOver'
import { evaluate } from '../../src/evaluate/evaluate'
import { shopList } from '../../src/evaluate/shop/shopList'
import { withProof } from '../../src/evaluate/withProof'
import { writeLayout } from '../../src/layout/file'
import { rankOf } from '../../src/model/finding'
import { readArguments, reportAnswer, type ReportCommand } from '../../src/report/command'
import { sortedByAcceptance } from '../../src/sidebar/warningGroups'
import { firstPlan } from '../../src/solvers/cutting/firstPlan'
import { prove } from '../../src/solvers/cutting/prove/prove'
import { scenarios } from '../support/scenarios'

/** Fields of rows that are looked at here, of whatever table. */
type Numbers =
  | 'towers'
  | 'flowLph'
  | 'leastLph'
  | 'mustFix'
  | 'toLookAt'
  | 'tooLong'
  | 'count'
  | 'lengthMm'
  | 'board'
  | 'boards'
  | 'measuredMm'
  | 'cost'
  | 'packs'
  | 'packCents'
  | 'cents'
  | 'boughtCents'
  | 'highInvertMm'
  | 'lowInvertMm'
  | 'fallMmPerM'
type Words = 'standing' | 'stock' | 'fate' | 'key'
type Row = Readonly<Record<Numbers, number> & Record<Words, string>>
type Tables =
  'towers' | 'findings' | 'cutLists' | 'pieces' | 'boards' | 'boardPieces' | 'shop' | 'money' | 'drains'
type Report = Readonly<Record<Tables, readonly Row[]> & { bay: Row }>

const commandOf = (...given: string[]): ReportCommand => {
  const parsed = readArguments(given)
  if (!parsed.ok || parsed.command.does !== 'report') throw new Error(JSON.stringify(parsed))
  return parsed.command
}

const sum = <T>(list: readonly T[], of: (item: T) => number): number =>
  list.reduce((total, item) => total + of(item), 0)

const highs = solverOver(loadHighs())

describe.each(Object.keys(scenarios))('the report on %s', async (name) => {
  const layout = scenarios[name]!()
  const plan = evaluate(layout)
  const answer = await reportAnswer(
    commandOf('bay.json', '--format', 'json'),
    { name: 'bay.json', text: writeLayout(layout) },
    '2027-05-01',
  )
  // What the command has written, as any script reads it.
  const report = JSON.parse(answer.print) as Report
  const built = [...plan.bay.built, ...plan.bay.joinedPipes]

  test('has as many towers as heads hang in the built bay, and the flow that they take together', () => {
    const heads = sum(built, ({ mouths }) => mouths.filter(({ role }) => role === 'tower-head').length)
    expect(report.towers.length).toBe(heads)
    expect(report.bay.towers).toBe(heads)
    expect(sum(report.towers, ({ flowLph }) => flowLph ?? 0)).toBeCloseTo(
      sum([...plan.bay.water.rows.values()], ({ totalLph }) => totalLph),
      1,
    )
    if (plan.bay.water.bay)
      expect(report.bay.leastLph).toBeCloseTo(
        Math.min(...report.towers.flatMap(({ flowLph }) => flowLph ?? [])),
        3,
      )
  })

  test('has the warnings that the sidebar has, open and accepted', () => {
    const { open, accepted } = sortedByAcceptance(plan.findings, layout.settings.accepted)
    const standing = report.findings.map(({ standing: word }) => word)
    expect(standing.filter((word) => word === 'open').length).toBe(open.length)
    expect(standing.filter((word) => word === 'accepted').length).toBe(accepted.length)
    expect(report.bay.mustFix + report.bay.toLookAt).toBe(open.length)
    expect(report.bay.mustFix).toBe(open.filter((finding) => rankOf(finding) === 2).length)
  })

  test('ends with 1 where something of the usual list is open, as counted by hand', () => {
    const { open } = sortedByAcceptance(plan.findings, layout.settings.accepted)
    const bad = open.filter(({ state }) =>
      ['Clash', 'Backs up', 'Starved', 'Spills', 'Too long', 'Tips'].includes(state),
    )
    const tooLong = sum(report.cutLists, (list) => list.tooLong)
    expect(answer.code).toBe(bad.length + tooLong > 0 ? 1 : 0)
  })

  test('has every stick of lumber that is built among its pieces', () => {
    const sticks = sum(built, (each) => each.sticks.filter(({ stock }) => stock === 'lumber-2x4').length)
    const pieces = report.pieces.filter(({ stock }) => stock === 'lumber-2x4')
    expect(sum(pieces, ({ count }) => count)).toBe(sticks)
  })

  test('its boards make just the pieces that are to be cut, and hold them', () => {
    for (const { stock } of report.cutLists) {
      const boards = report.boards.filter((board) => board.stock === stock)
      const made = new Map<number, number>()
      for (const board of boards) {
        const its = report.boardPieces.filter((piece) => piece.stock === stock && piece.board === board.board)
        expect(sum(its, ({ lengthMm, count }) => lengthMm * count)).toBeLessThanOrEqual(
          board.measuredMm + 0.01,
        )
        for (const { lengthMm, count } of its)
          made.set(lengthMm, (made.get(lengthMm) ?? 0) + count * board.count)
      }
      const wanted = new Map<number, number>()
      for (const { lengthMm, count, fate, stock: of } of report.pieces)
        if (of === stock && fate === 'to cut') wanted.set(lengthMm, (wanted.get(lengthMm) ?? 0) + count)
      expect(made).toEqual(wanted)
    }
  })

  test('has the boards that the page has, which asks an integer solver too', async () => {
    for (const list of plan.cuts) {
      const proof = await prove(list.problem, firstPlan(list.problem), { integerSolver: highs })
      const shown = withProof(list, proof)
      const told = report.cutLists.find(({ stock }) => stock === list.stock)!
      expect([told.standing, told.cost, told.boards]).toEqual([
        shown.standing.kind,
        shown.cost,
        sum(shown.boards, ({ count }) => count),
      ])
    }
  })

  test('its money is packs times price, line by line, and the sum that the shop list has', async () => {
    const cuts = await Promise.all(
      plan.cuts.map(async (list) => withProof(list, await prove(list.problem, firstPlan(list.problem)))),
    )
    const { totals } = shopList(cuts, plan.counts, layout.counter)
    const priced = report.shop.filter(({ packCents }) => packCents !== null)
    const paid = sum(priced, ({ packs, packCents }) => packs * packCents)
    const told = new Map(report.money.map(({ key, cents }) => [key, cents]))
    expect(told.get('bought')).toBe(totals.boughtCents)
    // A line is rounded to the cent.
    expect(Math.abs(paid - totals.boughtCents)).toBeLessThanOrEqual(priced.length / 2)
    expect(report.shop.filter(({ boughtCents }) => boughtCents === null).length).toBe(totals.unpriced)
  })

  test('its drains fall by their slope times their length', () => {
    for (const { highInvertMm, lowInvertMm, fallMmPerM, lengthMm } of report.drains)
      expect(highInvertMm - lowInvertMm).toBeCloseTo((fallMmPerM * lengthMm) / 1000, 2)
  })

  test('is the same text when it is asked for again', async () => {
    const again = await reportAnswer(
      commandOf('bay.json', '--format', 'json'),
      { name: 'bay.json', text: writeLayout(scenarios[name]!()) },
      '2028-01-01',
    )
    expect(again).toEqual(answer)
  })

  test('has no line longer than a terminal is wide', async () => {
    const { print } = await reportAnswer(
      commandOf('bay.json', '--units', 'metric'),
      { name: 'bay.json', text: writeLayout(layout) },
      '2027-05-01',
    )
    const long = print.split('\n').filter((line) => line.length > 96)
    expect(long).toEqual([])
    expect(print).toContain(layout.title)
  })
})
