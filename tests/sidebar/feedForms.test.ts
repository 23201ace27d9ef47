import { describe, expect, test } from 'vitest'
import { setField } from '../../src/layout/setField'
import { groupLetter, nextGroup, withGroup } from '../../src/sidebar/tubeGroups'
import { readTurns, turnsText } from '../../src/sidebar/trimWords'
import { waterFromNote, waterGiverChoices } from '../../src/sidebar/waterGivers'
import { inches } from '../../src/units/length'
import { bay } from '../support/bay'
import { rowOf } from '../support/drawnWater'

const layout = bay('30 x 96 ft')
  .row('A', [100, 60])
  .row('B', [200, 60])
  .row('C', [300, 60], { valveSet: 'shared' })
  .main('West main', [
    [60, 40],
    [120, 40],
  ])
  .main('East main', [
    [160, 40],
    [220, 40],
  ])
  .layout()
const idOf = (name: string): string => layout.parts.find((part) => part.name === name)!.id

describe('what a row can take its water from', () => {
  const words = (name: string, waterFrom: string | null = null) =>
    waterGiverChoices({ ...rowOf(layout, name), waterFrom }, layout.parts).map((choice) => choice.words)

  test('a row with valves: mains', () => {
    expect(words('A')).toEqual(['Nearest in reach', 'West main', 'East main'])
  })

  test('a row behind another’s valve: rows that have valves', () => {
    expect(words('C')).toEqual(['Nearest in reach', 'A', 'B'])
  })

  test('one that is no more, and one that can give no water to it, stay in the list and say so', () => {
    expect(words('A', 'main-99').at(-1)).toBe('Gone: nearest in reach')
    expect(words('A', idOf('B')).at(-1)).toBe('B can’t give it: nearest in reach')
    expect(words('A', idOf('East main'))).toHaveLength(3)
  })

  test('says which is the nearest now, and that none is', () => {
    expect(waterFromNote({ waterFrom: null, valveSet: 'own' }, 'West main')).toBe('That is West main now.')
    expect(waterFromNote({ waterFrom: 'main-1', valveSet: 'own' }, 'West main')).toBeUndefined()
    expect(waterFromNote({ waterFrom: null, valveSet: 'shared' }, undefined)).toMatch(
      /No row with a valve set/,
    )
  })
})

describe('turns of a trim valve', () => {
  test.each([
    ['1.5', 1.5],
    ['2,5 turns', 2.5],
    ['5', 5],
    ['1 turn', 1],
  ])('%s', (text, turns) => {
    expect(readTurns(text, 5)).toEqual({ ok: true, value: turns })
  })

  test.each([
    ['6', 'This trim valve has 5 turns from shut to open, and not 6.'],
    ['0.1', /next to shut. Open the trim valve 0.25 or more, or shut the ball valve/],
    ['half', '“half” is not a number.'],
  ])('%s is refused', (text, sentence) => {
    const typed = readTurns(text, 5)
    expect(typed.ok ? '' : typed.sentence).toMatch(sentence)
  })

  test('are read to a tenth', () => {
    expect(turnsText(0.9273)).toBe('0.9')
    expect(turnsText(2)).toBe('2.0')
  })
})

describe('tubes cut by station', () => {
  // Three racks of eight bars: 24 stations, a quarter of which are 6.
  const row = rowOf(layout, 'A')

  test('the first group takes a quarter of the row, cut as its tubes were', () => {
    expect(nextGroup(row)).toEqual({ stations: 6, lengthMm: row.microtubeMm })
  })

  test('the next one is like the last', () => {
    const last = { stations: 4, lengthMm: inches(41) }
    expect(nextGroup({ ...row, gradedTubes: [nextGroup(row), last] })).toEqual(last)
  })

  test('go by letters, and one changes without the others', () => {
    const groups = [nextGroup(row), { stations: 4, lengthMm: inches(41) }]
    expect(groups.map((_, group) => groupLetter(group))).toEqual(['A', 'B'])
    expect(withGroup(groups, 1, { stations: 5 })).toEqual([groups[0], { stations: 5, lengthMm: inches(41) }])
  })

  test.each([
    [[{ stations: 0, lengthMm: 900 }], 'tube group 1: Stations is 0; it can be 1 to 240'],
    [[{ stations: 4, lengthMm: 10 }], /^tube group 1: Tube length is 10 mm; it can be 152\.4 mm to 6096 mm/],
  ])('the schema refuses %j in words', (groups, sentence) => {
    const metric = { ...layout, settings: { ...layout.settings, units: 'metric' as const } }
    const edited = setField(metric, row.id, 'gradedTubes', groups)
    expect(edited.ok ? '' : edited.sentence.toLowerCase()).toMatch(
      typeof sentence === 'string' ? sentence.toLowerCase() : new RegExp(sentence, 'i'),
    )
  })
})
