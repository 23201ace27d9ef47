import { describe, expect, test } from 'vitest'
import { feedName, feedRow } from '../../../src/app/drawer/feedRows'
import { clock, mainRow, zoneRow } from '../../../src/sheets/startUp/flushWords'
import { cutWords, groupRow } from '../../../src/sheets/tubes/tubeWords'
import {
  changeWords,
  effectWords,
  handWords,
  isSetSo,
  turnsWords,
  verdictWords,
} from '../../../src/sheets/valves/zoneWords'
import { balance, trimSettings } from '../../../src/evaluate/water/balance'
import { compareFeeds } from '../../../src/evaluate/water/compareFeeds'
import { gradedRow } from '../../../src/evaluate/water/gradedRow'
import type { ValveCard } from '../../../src/evaluate/water/valveCard'
import { setFields } from '../../../src/layout/setFields'
import { wordsFor } from '../../../src/sidebar/words'
import { gph, gpm } from '../../../src/units/flow'
import { feet, inches } from '../../../src/units/length'
import { writerFor } from '../../../src/units/writer'
import { drawnWater, rowOf } from '../../support/drawnWater'
import { scenarios } from '../../support/scenarios'

const layout = scenarios['kestrel-bend-house-2']!()
const bay = drawnWater(layout)
const words = wordsFor(layout.parts, 'feet-inches')
const writer = writerFor('feet-inches')
const [n1, s1] = [rowOf(layout, 'N1'), rowOf(layout, 'S1')]

describe('feeds side by side', () => {
  const choices = compareFeeds(n1, bay)
  const lineOf = (name: string) =>
    feedRow(
      choices.find((choice) => feedName(choice) === name)!,
      writer,
      '$',
    )

  test('each has a name of its own', () => {
    const names = choices.map(feedName)
    expect(new Set(names).size).toBe(names.length)
    expect(names).toContain('Straight, 3/4 in poly pipe')
    expect(names).toContain('Straight, 3/4 in poly pipe, tubes cut by station')
    expect(names).toContain('Split twice, 1 in poly pipe')
  })

  test('the row as drawn is what the others are told against', () => {
    expect(lineOf('Straight, 3/4 in poly pipe')).toMatchObject({
      pieces: 'as drawn',
      pipe: 'as drawn',
      price: 'as drawn',
    })
  })

  test('more has a plus, less a minus that is as wide', () => {
    expect(lineOf('Split once, 3/4 in poly pipe').pieces).toMatch(/^\+\d+$/)
    expect(lineOf('Straight, 1/2 in poly pipe').price).toMatch(/^−\$\d+\.\d\d$/)
  })

  test('evenness, least tower and head are in the reader’s units', () => {
    const { spread, least, head } = lineOf('Straight, 3/4 in poly pipe')
    expect(spread).toMatch(/^\d+\.\d %$/)
    expect(least).toMatch(/^\d\.\d gph$/)
    expect(head).toMatch(/^\d+(-\d\/\d)?"$/)
  })

  test('what has no price is counted, not taken for free', () => {
    const split = choices.find((choice) => feedName(choice) === 'Split once, 3/4 in poly pipe')!
    const unpriced = { ...split, difference: { ...split.difference, cents: 450, unpriced: 2 } }
    // In the job’s own currency.
    expect(feedRow(unpriced, writer, '€').price).toBe('+€4.50, 2 unpriced')
  })
})

const card = (values: Partial<ValveCard>): ValveCard => ({
  targetLph: gph(4),
  factor: 1,
  setFactor: 1,
  verdict: 'fits',
  leftMm: 0,
  zones: [],
  ...values,
})

describe('the valve card', () => {
  test.each([
    [
      {},
      'The pump fits: balanced, with the neediest zone’s valve wide open, every tower gets 4.0 gph, 100.0 % of what is wanted.',
    ],
    [
      { verdict: 'too-small', factor: 0.8 },
      'The pump is too small: balanced, with the neediest zone’s valve wide open, every tower gets 3.2 gph, 80.0 % of what is wanted.',
    ],
    [
      { verdict: 'too-large', factor: 1.25, leftMm: inches(40) },
      /^The pump is larger than need be: balanced, with the neediest zone’s valve wide open, every tower gets 5\.0 gph, 125\.0 % of what is wanted at most\. .* valve burns 40"/,
    ],
  ] as const)('%j', (values, said) => {
    expect(verdictWords(card(values), words)).toMatch(said)
  })

  test('turns are to a tenth; a valve within half a tenth of open is wide open', () => {
    const [zone] = balance(bay, 'target')!.zones
    expect(turnsWords({ ...zone!, trimTurns: 1.37, trimTurnsAll: 5 })).toBe('1.4 of 5')
    expect(turnsWords({ ...zone!, trimTurns: 4.96, trimTurnsAll: 5 })).toBe('wide open')
  })

  test('what a hand makes of it is a range, or nothing where it is not known', () => {
    const range = { leastShare: 0.95, mostShare: 1.04 }
    const hand = { offBy: 0.05, scenarios: 16, zones: new Map([[n1.id, range]]), ...range }
    expect(handWords(hand, n1.id, words)).toBe('95.0 % to 104.0 %')
    expect(handWords(hand, s1.id, words)).toBe('—')
    expect(handWords(undefined, n1.id, words)).toBe('—')
  })

  test('valves are not set so before they are, and are after', () => {
    const rows = layout.parts.filter(({ kind }) => kind === 'rack-row')
    const open = setFields(
      layout,
      rows.map(({ id }) => ({ part: id, values: { trimTurns: null } })),
    )
    if (!open.ok) throw new Error(open.sentence)
    const found = balance(drawnWater(open.layout), 'target')!
    expect(isSetSo(found, open.layout.parts)).toBe(false)
    const set = setFields(
      open.layout,
      trimSettings(found).map(({ part, trimTurns }) => ({ part, values: { trimTurns } })),
    )
    expect(set.ok && isSetSo(found, set.layout.parts)).toBe(true)
    // The card is of the bay with its valves open, so setting them does not change what it asks.
    expect(set.ok && isSetSo(balance(drawnWater(set.layout), 'target')!, set.layout.parts)).toBe(true)
  })
})

describe('a zone shut', () => {
  test('names who feels it most, and whether it is too much', () => {
    const effect = { part: n1.id, changes: new Map(), most: { part: s1.id, change: 0.123 } }
    expect(effectWords({ ...effect, isTooMuch: true }, words)).toBe(
      'Shutting N1 changes S1 most, by +12.3 %. More than 10 % is too much: open a bypass at the pump, or feed the bay from a head box.',
    )
    expect(effectWords({ ...effect, isTooMuch: false }, words)).toMatch(/the rest need not be touched\.$/)
    expect(effectWords({ ...effect, most: undefined, isTooMuch: false }, words)).toBe(
      'N1 is the only zone that is open.',
    )
  })

  test('less has a minus', () => {
    expect(changeWords(-0.031, words)).toBe('−3.1 %')
  })
})

describe('tubes cut by station', () => {
  test('a bundle: its stations, and tube for it by the foot with 3 per cent for the ends', () => {
    const group = {
      group: 0,
      label: 'A',
      lengthMm: inches(50),
      fromEntry: { from: 1, to: 6 },
      stations: [
        { from: 7, to: 12 },
        { from: 13, to: 13 },
      ],
      tubes: 12,
    }
    // 12 tubes of 50 in are 600 in; 618 in with 3 per cent, 51 ft 6 in, so 52 ft. In mm: 15240, 15697.2, so 15700.
    expect(groupRow(group, writer, 'feet-inches')).toEqual([
      'A',
      '50"',
      '7 to 12, 13',
      '1 to 6',
      '12',
      writer.length(feet(52)),
    ])
    expect(groupRow(group, writerFor('metric'), 'metric').at(-1)).toBe('15700 mm')
  })

  test('tells what it does to the row', () => {
    expect(cutWords(gradedRow(n1, bay)!, writer)).toMatch(
      /^All tubes alike: spread \d+\.\d %, Starved\. Cut in 4 lengths: spread \d+\.\d %, \w+, with no fitting more\. Exact lengths run from \d+.*" to \d+.*"\.$/,
    )
  })
})

describe('flushing', () => {
  test.each([
    [2.4, '2 s'],
    [89, '89 s'],
    [90, '2 min'],
    [121, '3 min'],
  ])('%d s is %s', (seconds, said) => {
    expect(clock(seconds)).toBe(said)
  })

  const zone = {
    part: n1.id,
    ends: [n1.id, n1.id],
    atOnce: 2,
    byHand: 2,
    slowestMS: feet(1.9) / 1000,
    endsLph: gpm(6.6),
    towersLph: 0,
    batches: 1,
    seconds: 49,
    litres: 19,
  }

  test('a zone whose ends run fast enough', () => {
    expect(zoneRow(zone, words).slice(0, 5)).toEqual(['N1', '2 of 2', '1.9 ft/s', '6.6 gpm', '49 s'])
  })

  test('a zone with not one end that does has no time to give', () => {
    const [, atOnce, , , takes] = zoneRow({ ...zone, atOnce: 0, batches: 0 }, words)
    expect([atOnce, takes]).toEqual(['none', '—'])
  })

  test('a main that is too slow says so', () => {
    const main = {
      part: n1.id,
      at: { x: 0, y: 0, z: 0 },
      velocityMS: feet(1.2) / 1000,
      flowLph: gpm(8),
      litres: 30,
    }
    expect(mainRow({ ...main, isFastEnough: false }, words)[1]).toBe('1.2 ft/s, too slow')
    expect(mainRow({ ...main, isFastEnough: true }, words)[1]).toBe('1.2 ft/s')
  })
})
