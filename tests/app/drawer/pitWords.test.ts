import { describe, expect, test } from 'vitest'
import { acrossMm, pitBands, pitPicture } from '../../../src/app/drawer/pit/pitPicture'
import {
  paintRows,
  pitFigureRows,
  roomBars,
  roomSentence,
  transitRows,
} from '../../../src/app/drawer/pit/pitWords'
import { pitParts, shownPit } from '../../../src/app/drawer/pit/shownPit'
import { evaluate } from '../../../src/evaluate/evaluate'
import { pitFigures, systemWater } from '../../../src/evaluate/returns/pitFigures'
import { paintMarks } from '../../../src/evaluate/returns/pitTable'
import type { PitReturn } from '../../../src/model/returns'
import { inches } from '../../../src/units/length'
import { gallons } from '../../../src/units/volume'
import { writerFor } from '../../../src/units/writer'
import { scenarios } from '../../support/scenarios'

const writer = writerFor('feet-inches')
const layout = scenarios['kestrel-bend-house-2']!()
const evaluation = evaluate(layout)
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id
const pit = evaluation.bay.builtOf.get(idOf('Pit'))!.pit!

/** The worked pit of the trade notes, hand arithmetic: 120.5 gal come home, 150.6 with a quarter more, room 151 gal. */
const spent = (values: Partial<PitReturn> = {}): PitReturn => ({
  part: 'sump-1',
  drains: [],
  rows: [],
  inLph: 0,
  transit: {
    towersL: gallons(72),
    troughsL: gallons(21.3),
    drainsL: gallons(7.7),
    mainsL: gallons(6.1),
    lateralsL: gallons(13.4),
    totalL: gallons(120.5),
  },
  designL: gallons(150.6),
  deadL: gallons(142),
  swingL: gallons(116),
  roomL: gallons(151),
  freeboardL: gallons(231),
  surgeL: gallons(40),
  state: 'Holds',
  ...values,
})

describe('the room of a pit in words', () => {
  test('holds: what comes home, with a quarter more, and the room', () => {
    expect(roomSentence(spent(), writer)).toBe(
      'When the pump stops 121 gal comes home; with a quarter more that is 151 gal, and there is room for 151 gal.',
    )
  })

  test('thin and spilling say what mends it', () => {
    for (const state of ['Thin', 'Spills'] as const)
      expect(roomSentence(spent({ state, roomL: gallons(100) }), writer)).toContain('size the pit')
  })

  test('the longest bar is the most, and no bar is below nothing', () => {
    const bars = roomBars(spent({ roomL: -5 }))
    expect(Math.max(...bars.map(({ share }) => share))).toBeCloseTo(1, 9)
    expect(bars.every(({ share }) => share >= 0 && share <= 1)).toBe(true)
  })

  test('the parts of what comes home add up to their sum', () => {
    expect(transitRows(spent().transit, writer).rows).toEqual([
      ['Towers', '72 gal', '59.8 %'],
      ['Gutter troughs', '21 gal', '17.7 %'],
      ['Drains', '8 gal', '6.4 %'],
      ['Mains', '6 gal', '5.1 %'],
      ['Laterals and risers', '13 gal', '11.1 %'],
      ['Together', '121 gal', ''],
    ])
  })
})

describe('the sample’s pit', () => {
  // Worked example of the trade notes, hand arithmetic: 36 x 114 in is 17.77 gal an inch; rim 657, overflow 426, running 258,
  // pump off 142 gal over the bottom.
  test('has its marks on the wall', () => {
    const { rows } = paintRows(paintMarks(pit, inches(2)), writer)
    const at = (title: string) => rows.find((row) => row[2] === title)
    expect(at('Rim')).toEqual(['37"', '657 gal', 'Rim'])
    expect(at('Overflow')).toEqual(['24"', '426 gal', 'Overflow'])
    expect(at('Running level')?.[1]).toBe('258 gal')
    expect(rows.some(([depth]) => depth === '20"')).toBe(true)
  })

  // The same: running to pump off is empty in 3.6 min with no return, 3.1 cubic yards are dug.
  test('has its times and its dig', () => {
    const system = systemWater(evaluation.bay)
    const rows = pitFigureRows(pitFigures(evaluation.bay, idOf('Pit'), system)!, system, writer)
    const value = (name: string) => rows.find((row) => row.name.startsWith(name))!.value
    expect(value('Running to pump off')).toBe('3.6 min')
    expect(value('To dig')).toBe('3.1 yd³')
  })

  test('is shown for itself, for a drain or a row that falls to it, and for nothing chosen', () => {
    for (const chosen of [['Pit'], ['Drain N'], ['S2'], []])
      expect(shownPit(evaluation, chosen.map(idOf))).toBe(idOf('Pit'))
    expect(pitParts(evaluation)).toEqual([idOf('Pit')])
  })
})

describe('the picture of a pit', () => {
  const size = { width: 660, height: 360 }

  test('is to scale in both directions and inside its room', () => {
    const { yOf, wallsAt, pxPerMm } = pitPicture(pit, size)
    const [left, right] = wallsAt(pit.rimMm)
    expect(right - left).toBeCloseTo(inches(36) * pxPerMm, 6)
    expect(yOf(pit.bottomMm) - yOf(pit.rimMm)).toBeCloseTo(inches(37) * pxPerMm, 6)
    expect(left).toBeGreaterThan(100)
    expect(right).toBeLessThan(size.width - 100)
    expect(yOf(pit.bottomMm)).toBeLessThan(size.height)
  })

  test('leans where the sides lean, and is as wide as its shorter side', () => {
    const leaning = {
      ...pit,
      basin: {
        shape: 'sloped',
        bottomLengthMm: 900,
        bottomWidthMm: 400,
        topLengthMm: 1100,
        topWidthMm: 700,
        depthMm: pit.rimMm - pit.bottomMm,
      },
    } as const
    expect(acrossMm(leaning)).toEqual({ bottomMm: 400, rimMm: 700 })
    const { wallsAt, pxPerMm } = pitPicture(leaning, size)
    const widthAt = (levelMm: number) => (wallsAt(levelMm)[1] - wallsAt(levelMm)[0]) / pxPerMm
    expect(widthAt(pit.bottomMm)).toBeCloseTo(400, 6)
    expect(widthAt((pit.bottomMm + pit.rimMm) / 2)).toBeCloseTo(550, 6)
    expect(widthAt(pit.rimMm + 100)).toBeCloseTo(700, 6)
  })

  test('has room for the words of every volume', () => {
    const places = pitBands(pit, spent(), pitPicture(pit, size), size.height).map(({ at }) => at)
    for (let i = 1; i < places.length; i += 1)
      expect(places[i]! - places[i - 1]!).toBeGreaterThanOrEqual(31.9)
  })
})
