import { describe, expect, test } from 'vitest'
import {
  choiceSentence,
  collectorRow,
  depthAsks,
  pipeWords,
  wayWords,
} from '../../../src/app/drawer/collectors/collectorWords'
import type { CollectorChoice } from '../../../src/evaluate/returns/collectors'
import { gpm } from '../../../src/units/flow'
import { feet, inches } from '../../../src/units/length'
import { inchesPerFoot } from '../../../src/units/slope'
import { writerFor } from '../../../src/units/writer'

const writer = writerFor('feet-inches')

const drawn: CollectorChoice = {
  way: 'as-drawn',
  axis: undefined,
  pipe: undefined,
  slopeMmPerM: undefined,
  collectors: 0,
  pits: 18,
  flowLph: gpm(19.2),
  share: 0.273,
  state: 'Falls',
  fallMm: inches(2.875),
  deepestTrenchMm: inches(12),
  deepestPitMm: inches(39),
  digL: 56_600,
  pipeMm: feet(819),
}

const collected: CollectorChoice = {
  ...drawn,
  way: 'collected',
  axis: 'x',
  pipe: 'drain-8in',
  slopeMmPerM: inchesPerFoot(1 / 16),
  collectors: 3,
  pits: 3,
  deepestPitMm: inches(52.25),
  digL: 100_200,
}

describe('pits or collectors in words', () => {
  test('each way and its pipe', () => {
    expect(wayWords(drawn)).toBe('As drawn')
    expect(pipeWords(drawn, writer)).toBe('each drain to its pit')
    expect(wayWords(collected)).toBe('Collectors, east and west')
    expect(pipeWords(collected, writer)).toBe('8 in drain pipe at 1/16 in/ft')
    expect(wayWords({ ...collected, way: 'carried-on', axis: 'y' })).toBe(
      'Drains carried on, north and south',
    )
  })

  // Thresholds of 24, 48 and 60 in: 29 CFR 1926.651 and 652 for the last two, common practice for the first.
  test('a depth says what it asks for from each threshold on', () => {
    expect([23.9, 24, 47.9, 48, 59.9, 60].map((depth) => depthAsks(inches(depth)))).toEqual([
      '',
      'fenced',
      'fenced',
      'ladder',
      'ladder',
      'sides held',
    ])
  })

  test('a line of the table', () => {
    expect(collectorRow(collected, writer)).toMatchObject({
      pits: '3',
      pit: '52-1/4", ladder',
      trench: '12"',
    })
    expect(collectorRow({ ...collected, share: 1 }, writer).full).toBe('full')
  })

  test('the sentence weighs pits, depth and digging', () => {
    expect(choiceSentence([drawn, collected], writer)).toBe(
      'The gentlest on the spade is collectors, east and west in 8 in drain pipe at 1/16 in/ft: 3 pits instead of 18, ' +
        'the deepest 52-1/4" deep instead of 39", and 57.0 yd³ more to dig. A dig so deep asks for a ladder and for a ' +
        'competent person’s look at its sides every day.',
    )
  })

  test('and says so where nothing is to be joined, or nothing takes the water', () => {
    expect(choiceSentence([{ ...drawn, pits: 1 }], writer)).toContain('nothing to join up')
    expect(choiceSentence([drawn], writer)).toContain('stand in one line')
    expect(choiceSentence([drawn, { ...collected, state: 'Backs up' }], writer)).toContain(
      'as they are drawn',
    )
  })
})
