import { describe, expect, test } from 'vitest'
import { endWords, restartFigures, siphonWords, sourceRows } from '../../../src/app/drawer/stop/stopWords'
import { whatIfLine } from '../../../src/app/drawer/stop/whatIfWords'
import type { Words } from '../../../src/checks/context'
import type { PitFacts } from '../../../src/model/pitFacts'
import type { PitStop, StopRun } from '../../../src/model/stopRun'
import { gpm } from '../../../src/units/flow'
import { inches } from '../../../src/units/length'
import { gallons } from '../../../src/units/volume'
import { writerFor } from '../../../src/units/writer'

const words: Words = { ...writerFor('feet-inches'), name: (part) => part }
const metric: Words = { ...writerFor('metric'), name: (part) => part }

const facts: PitFacts = {
  rimMm: 0,
  overflowMm: inches(-13),
  drainBackMm: inches(-14),
  runningMm: inches(-22.5),
  makeUpMm: inches(-23.5),
  lowAlarmMm: inches(-27),
  pumpOffMm: inches(-29),
  intakeMm: inches(-35),
  hasOwnIntake: false,
  bottomMm: inches(-37),
  basin: { shape: 'box', lengthMm: inches(114), widthMm: inches(36) },
  overflowBoreMm: inches(2),
  makeUpLph: gpm(4),
}

const ended: PitStop = {
  part: 'pit',
  startMm: inches(-22.5),
  endMm: inches(-17),
  highestMm: inches(-17),
  homeL: gallons(98),
  overflowL: 0,
  overRimL: 0,
  overflowS: undefined,
  state: 'Holds',
}

describe('the end of a stop', () => {
  test('that stays in the pit says how far under the overflow', () => {
    expect(endWords(ended, facts, words, words.level)).toBe(
      '98 gal comes home, and the water ends at -1\' 5", 4" under the overflow. Nothing runs over.',
    )
  })

  test('over the drain-back level says by how much, and what to do', () => {
    const high = { ...ended, endMm: inches(-13.5) }
    expect(endWords(high, facts, words, words.level)).toContain(
      '1/2" under the overflow but 1/2" over its drain-back level. Lower the running level by as much.',
    )
  })

  test('that runs over says how much, from when on, and what to do', () => {
    const spilt = { ...ended, endMm: inches(-13), overflowL: gallons(60), overflowS: 150 }
    expect(endWords(spilt, facts, words, words.level)).toContain(
      '60 gal runs out through the overflow, from 2.5 min on. Run the pit lower, or dig it larger.',
    )
  })

  test('has a table of what comes from where, in metric too', () => {
    const run: StopRun = {
      hasCheckValve: true,
      sources: [{ kind: 'towers', litres: 272, beginsS: 33, mostHomeS: 1300 }],
      totalL: 272,
      mostHomeS: 1100,
      pits: new Map(),
      floorL: 10,
      moments: [],
    }
    expect(sourceRows(run, metric).rows).toEqual([
      ['Towers', '272 L', '33 s', '22 min'],
      ['All', '272 L', 'at once', '18 min'],
      ['Of it to the floor', '10 L', '', ''],
    ])
  })
})

describe('a start', () => {
  const pit = {
    part: 'pit',
    startMm: inches(-17),
    filledMm: inches(-19),
    settledMm: inches(-22.5),
    lowestMm: inches(-28),
    lowestS: 800,
    isPumpOff: false,
    isAlarm: true,
    leastMm: inches(-27.5),
    sucksAir: true,
  }
  const start = { pits: new Map(), lastDripS: 71, lastRow: 'N3', moments: [] }

  test('that goes under the alarm and draws air says so', () => {
    const figures = restartFigures(pit, start, facts, words, words.level)
    const of = (name: string) => figures.find((figure) => figure.name === name)!
    expect(of('Lowest').note).toBe('1" under the low alarm: it sounds.')
    expect(of('Sucks air').value).toBe('yes')
    expect(of('Pump goes off').value).toBe('no')
    expect(of('Last tower drips after').value).toBe('71 s')
  })
})

describe('a siphon', () => {
  const end = (station: number, levelMm: number) => ({ part: 'N1', station, line: 2, levelMm })

  test('names the lowest tower where they do not stand level', () => {
    const [withValve, without] = siphonWords(
      {
        hasCheckValve: true,
        lowest: end(24, 1700),
        highest: end(1, 1700 + inches(2)),
        throughTubesL: gallons(10),
        backL: gallons(23),
      },
      words,
    )
    expect(withValve).toContain(
      'The lowest tube end, at N1, station 24, line 2, runs longest: it stands 2" lower',
    )
    expect(without).toContain('all 23 gal of pipes and mains siphons back')
  })
})

describe('what may go wrong', () => {
  test('ends with what to do', () => {
    const line = whatIfLine(
      {
        kind: 'make-up-stuck',
        state: 'Spills',
        flowLph: gpm(80),
        overflowMin: 2.1,
        overMm: Infinity,
        rimMin: 5,
      },
      words,
      words.level,
    )
    expect(line.happens).toContain(
      'more than the overflow takes under the rim: it runs over the rim after 5.0 min',
    )
    expect(line.todo).toContain('Lay a larger overflow')
    expect(line.overflow).toBe('2.1 min')
  })

  test('tells water that reaches no drain as such', () => {
    const line = whatIfLine(
      {
        kind: 'return-blocked',
        state: 'Thin',
        alarmMin: 2.5,
        pumpOffMin: 3.6,
        outL: gallons(115),
        drainsHoldL: gallons(27),
      },
      words,
      words.level,
    )
    expect(line.dry).toBe('3.6 min')
    expect(line.happens).toContain(
      '115 gal is out: 27 gal stands in the drains, the rest in troughs and on the floor',
    )
  })
})
