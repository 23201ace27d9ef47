import { describe, expect, test } from 'vitest'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Judged } from '../../../src/evaluate/evaluation'
import { balance } from '../../../src/evaluate/water/balance'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import { emptyBay } from '../../../src/layout/empty'
import { pagesOf, paperFor } from '../../../src/sheets/pagesOf'
import { type Piece, tablesIn } from '../../../src/sheets/piece'
import { leastTower } from '../../../src/sheets/round/roundSteps'
import { roundCard } from '../../../src/sheets/round/roundCard'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { valveCard } from '../../../src/sheets/valves/valveCard'
import { scenarios } from '../../support/scenarios'

const optionsFor = (family: 'inch' | 'metric'): SheetOptions => ({
  paper: paperFor(roundCard, family),
  orientation: 'auto',
  scale: 'fit',
  units: family === 'inch' ? 'feet-inches' : 'metric',
  dateText: '2027-05-01',
  issue: '1',
})

const inInches = optionsFor('inch')

const bays: Readonly<Record<string, Judged>> = Object.fromEntries(
  Object.entries(scenarios).map(([name, layout]) => [name, evaluate(layout())]),
)

const piecesOf = (now: Judged, options = inInches): readonly Piece[] =>
  roundCard.pieces({ now, issued: undefined }, options)

const stepsOf = (now: Judged) =>
  piecesOf(now).flatMap((piece) => (piece.as === 'steps' ? [...piece.steps] : []))

const textsIn = (now: Judged, table: string, options = inInches): string[][] =>
  tablesIn(piecesOf(now, options))
    .filter(({ id }) => id === table)
    .flatMap(({ rows }) => rows.map(({ cells }) => cells.map(({ text }) => text)))

const demo = bays['kestrel-bend-house-2']!
const leanTo = bays['lintel-lane-lean-to']!

describe('limits of the demo bay', () => {
  test('marks of the pit are over its bottom', () => {
    // Hand arithmetic: bottom 37 in under the rim; alarm at 27, make-up at 23-1/2, running at 22-1/2, drain-back at 14 in under it.
    expect(textsIn(demo, 'round-pits')).toEqual([['Pit', '10"', '13-1/2"', '14-1/2"', '23"']])
  })

  test('a filter is due at the rise that it was chosen for, as the square of the flow', () => {
    // Chosen to rise by 12 in at 32 gpm. Demo: 37.6 gpm less 15 % bypass is 32.0 gpm, so 12 in.
    expect(textsIn(demo, 'round-pumps')).toEqual([['Pit', '37.6 gpm', '16.3 ft', '12"']])
    // Corner: 73 L/min are 19.3 gpm; (19.3 / 32)^2 x 305 mm = 111 mm.
    const [row] = textsIn(bays['old-dairy-corner']!, 'round-pumps', optionsFor('metric'))
    expect(row?.[1]).toBe('73 L/min')
    expect(Math.abs(Number.parseFloat(row?.[3] ?? '') - 111)).toBeLessThanOrEqual(1)
  })

  test('sight tubes are those of the tags at the valves', () => {
    const tags = valveCard
      .pieces({ now: demo, issued: undefined }, inInches)
      .flatMap((piece) => (piece.as === 'words' && piece.tone === 'big' ? [piece.text] : []))
    const shown = textsIn(demo, 'round-zones').map(([, sight]) => `Sight tube ${sight}`)
    expect(new Set(tags)).toEqual(new Set(shown))
  })

  test('the tower to look at first is the one that gets least of all with the valves set', () => {
    const card = balance(demo.bay, 'target')!
    const set = waterOf(demo.bay, {
      trimTurns: new Map(card.zones.map(({ part, trimTurns }) => [part, trimTurns])),
    })
    const flows = [...set.rows.values()].flatMap(({ tubeLph }) => [...tubeLph])
    const least = leastTower(demo, card)!
    expect(least.flowLph).toBeCloseTo(Math.min(...flows), 6)
    const name = demo.layout.parts.find(({ id }) => id === least.part)!.name
    expect(stepsOf(demo).find(({ key }) => key === 'least')!.text).toContain(
      `${name}, station ${least.station}, line ${least.line}`,
    )
  })
})

describe('steps', () => {
  test('are of what this bay has', () => {
    const keys = stepsOf(demo).map(({ key }) => key)
    for (const key of [
      'pit',
      'sight-tubes',
      'least',
      'filter',
      'ground-fault',
      'power-cut',
      'clamps',
      'shims',
    ])
      expect(keys).toContain(key)
    expect(stepsOf(leanTo).map(({ key }) => key)).not.toContain('filter')
  })

  test('have keys of their own', () => {
    const keys = stepsOf(demo).map(({ key }) => key)
    expect(new Set(keys).size).toBe(keys.length)
  })

  test('count the clamps of the take-off', () => {
    // By the take-off of the demo: 108 + 8 + 48 + 60 clamps of four sizes are 224.
    expect(stepsOf(demo).find(({ key }) => key === 'clamps')!.text).toContain('all 224 clamps')
  })

  test('carry the caution of what may hurt there', () => {
    const cautionAt = (key: string) => stepsOf(demo).find((step) => step.key === key)?.caution
    expect(cautionAt('ground-fault')).toMatch(/^Electricity near the pit/)
    expect(cautionAt('spot-test')).toMatch(/^Ladders/)
    expect(cautionAt('slow-tubes')).toMatch(/15 psi/)
    expect(cautionAt('make-up')).toMatch(/dechlorinate/)
  })

  test('what no step is about stands at the end', () => {
    const last = piecesOf(demo).at(-1)!
    const text = last.as === 'words' && last.tone === 'caution' ? last.text : ''
    for (const words of [/Food:/, /Lime wash:/, /Heater:/, /Lifting/]) expect(text).toMatch(words)
  })
})

describe.each(Object.keys(scenarios))('the card of %s', (name) => {
  test.each<'inch' | 'metric'>(['inch', 'metric'])('has two sides of %s paper', (family) => {
    const pages = pagesOf(roundCard, { now: bays[name]!, issued: undefined }, optionsFor(family))
    expect(pages.length).toBeLessThanOrEqual(2)
    expect(pages.length).toBeGreaterThan(0)
  })
})

test('an empty bay needs no round', () => {
  expect(piecesOf(evaluate(emptyBay(5000, 8000, 'Empty')))).toEqual([])
})
