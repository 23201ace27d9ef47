import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readLayout } from '../../src/layout/file'
import { LAYOUT_SEED } from '../support/arbitraryLayout'
import { type Json, sentenceOf, text } from '../support/sketchFile'

const UNTOUCHED = 'Your bay is untouched.'

describe('a file that is not JSON', () => {
  test.each([
    ['', `This file is empty, so it was not opened. ${UNTOUCHED}`],
    ['  \n', `This file is empty, so it was not opened. ${UNTOUCHED}`],
    ['hello', `This file is not JSON from line 1, column 1, on, so it was not opened. ${UNTOUCHED}`],
    [
      '{"a": 1,\n "b": NaN}',
      `This file is not JSON from line 2, column 7, on, so it was not opened. ${UNTOUCHED}`,
    ],
    ['{"a": [1, 2}', `This file is not JSON from line 1, column 12, on, so it was not opened. ${UNTOUCHED}`],
    ['{"a": 1} x', `This file is not JSON from line 1, column 10, on, so it was not opened. ${UNTOUCHED}`],
  ])('%j', (file, sentence) => {
    expect(sentenceOf(file)).toBe(sentence)
  })

  test('cut off in a part, it says in which', () => {
    const file = text()
    expect(sentenceOf(file.slice(0, file.indexOf('"obstacle"') + 4))).toBe(
      `This file ends in the middle of part 3, so it was not opened. ${UNTOUCHED}`,
    )
  })

  test('cut off in the house', () => {
    const file = text()
    expect(sentenceOf(file.slice(0, file.indexOf('"outline"') + 30))).toBe(
      `This file ends in the middle of the house, so it was not opened. ${UNTOUCHED}`,
    )
  })

  test('broken in a part, it says the line, the column and the part', () => {
    const file = text().replace('"racks": 3', '"racks": three')
    expect(sentenceOf(file)).toMatch(/^This file is not JSON from line \d+, column 16, in part 1, on, so/)
  })

  test('cut anywhere it never opens and never throws', () => {
    const file = text()
    fc.assert(
      fc.property(fc.integer({ min: 0, max: file.trimEnd().length - 1 }), (end) => {
        expect(sentenceOf(file.slice(0, end))).toMatch(/^This file (is empty|ends in the middle)/)
      }),
      { seed: LAYOUT_SEED, numRuns: 300 },
    )
  })
})

describe('JSON that is not a layout of this program', () => {
  test.each([
    'null',
    '3',
    '[]',
    '"kerf-and-fall/layout"',
    '{}',
    '{"type":"FeatureCollection","features":[]}',
  ])('%s', (file) => {
    expect(sentenceOf(file)).toBe(
      `This file is JSON, but not a Kerf & Fall layout, so it was not opened. ${UNTOUCHED}`,
    )
  })

  test('a newer version', () => {
    expect(sentenceOf(text((f) => (f['version'] = 9)))).toBe(
      `This file was made by a newer Kerf & Fall (version 9; this one reads up to 1), so it was not opened. ${UNTOUCHED}`,
    )
  })

  test.each([0, -1, 1.5, '1', null])('version %j', (version) => {
    expect(sentenceOf(text((f) => (f['version'] = version)))).toMatch(
      /^This file says no version that there ever was/,
    )
  })

  test('lists in lists without end', () => {
    const deep = '['.repeat(200_000)
    expect(sentenceOf(`${deep}${']'.repeat(200_000)}`)).toContain('was not opened')
    expect(sentenceOf(deep)).toContain('was not opened')
    expect(
      sentenceOf(text((f) => (f['parts'][0] = 'deep')).replace('"deep"', `${deep}${']'.repeat(200_000)}`)),
    ).toContain('part 1')
  })

  test('more text than any layout', () => {
    expect(sentenceOf(' '.repeat(33 * 1024 * 1024))).toMatch(/^This file is larger than 32 MB/)
  })
})

const faults: readonly [string, (file: Json) => void, string][] = [
  [
    'a count too great',
    (f) => (f['parts'][1].racks = 4000),
    'part 2, the rack row "Row 2": Racks chained is 4000; it can be 1 to 20',
  ],
  [
    'a count that is a fraction',
    (f) => (f['parts'][1].racks = 2.5),
    'part 2, the rack row "Row 2": Racks chained is 2.5; it can be 1 to 20',
  ],
  [
    'a length too short',
    (f) => (f['parts'][0].rackLengthMm = 3),
    'part 1, the rack row "Row 1": Rack length is 3 mm; it can be 1219.2 mm to 3048 mm',
  ],
  [
    'a length as text',
    (f) => (f['parts'][0].towerMm = '60 in'),
    'part 1, the rack row "Row 1": Tower, hook ring to tip is "60 in"; it can be 609.6 mm to 2438.4 mm',
  ],
  [
    'a fixed riser too long',
    (f) => (f['parts'][0].riserMm = 9000),
    'part 1, the rack row "Row 1": Riser length is 9000 mm; it can be 609.6 mm to 3048 mm',
  ],
  [
    // 2 lb are 0.90718474 kg and 200 lb 90.718474 kg.
    'a tower too heavy',
    (f) => (f['parts'][0].weighedKg = 900),
    'part 1, the rack row "Row 1": Tower, weighed planted and flooded is 900 kg; it can be 0.90718474 kg to 90.718474 kg',
  ],
  [
    'an unknown choice',
    (f) => (f['parts'][0].joint = 'J9'),
    'part 1, the rack row "Row 1": Rail joint is "J9"; it can be J1, J2, J3, J4 or J5',
  ],
  [
    'a slanting row',
    (f) => (f['parts'][0].heading = 45),
    'part 1, the rack row "Row 1": heading is 45; it can be 0, 90, 180 or 270',
  ],
  [
    'a place without x',
    (f) => delete f['parts'][2].at.x,
    'part 3, the obstacle "Post", at: x is missing; it can be -2000000 to 2000000',
  ],
  [
    'a point far away',
    (f) => (f['parts'][3].points[1].y = 9e9),
    'part 4, the drain line "Drain 1", point 2: y is 9000000000; it can be -2000000 to 2000000',
  ],
  [
    'a line of one point',
    (f) => f['parts'][3].points.pop(),
    'part 4, the drain line "Drain 1": points is a list of 1; it can be a list of 2 to 200',
  ],
  [
    'an unknown kind',
    (f) => (f['parts'][2].kind = 'teapot'),
    'part 3, the teapot "Post": kind is "teapot"; it must be a known kind of part',
  ],
  ['a part that is a number', (f) => (f['parts'][2] = 7), 'part 3 is 7; it must be a record'],
  [
    'a switch that is a word',
    (f) => (f['parts'][2].locked = 'yes'),
    'part 3, the obstacle "Post": Locked in place is "yes"; it can be true or false',
  ],
  [
    'an id of the wrong form',
    (f) => (f['parts'][2].id = '../x'),
    'part 3, the obstacle "Post": id is "../x"; it must be a text of the right form',
  ],
  [
    'a name too long',
    (f) => (f['parts'][2].name = 'x'.repeat(99)),
    `part 3, the obstacle "${'x'.repeat(40)}...": Name is "${'x'.repeat(40)}..."; it can be a text of 0 to 60 letters`,
  ],
  ['no house', (f) => delete f['house'], 'the house is missing; it must be a record'],
  [
    'a roof too low',
    (f) => (f['house'].headroomMm = 1),
    'the house: Headroom is 1 mm; it can be 914.4 mm to 30480 mm',
  ],
  [
    'a setting',
    (f) => (f['settings'].cartMm = null),
    'the settings: Cart width is null; it can be 254 mm to 2438.4 mm',
  ],
  ['a fall', (f) => (f['parts'][0].gutterFall = 900), 'Gutter fall is 900 mm/m; it can be'],
  [
    'one id twice',
    (f) => (f['parts'][1].id = 'rack-row-1'),
    'part 1 and part 2 have the same id, rack-row-1',
  ],
  [
    'a field of no layout',
    (f) => (f['parts'][1].raks = 3),
    'part 2, the rack row "Row 2" has a field that no layout has, "raks"',
  ],
  [
    'a field of no layout at the top',
    (f) => (f['extra'] = 3),
    'the layout has a field that no layout has, "extra"',
  ],
  [
    'walls that cross',
    (f) => f['house'].outline.splice(1, 2, f['house'].outline[2], f['house'].outline[1]),
    "the house's outline crosses itself: wall 1 meets wall 3",
  ],
  [
    'walls that run back on themselves',
    (f) => f['house'].outline.splice(1, 0, { x: 20000, y: 0 }),
    "the house's outline crosses itself",
  ],
  [
    'a house without area',
    (f) => f['house'].outline.forEach((p: Json) => (p['y'] = 0)),
    "the house's outline has no area",
  ],
  [
    'corners listed clockwise',
    (f) => f['house'].outline.reverse(),
    "the house's outline runs clockwise; its corners must be listed anticlockwise",
  ],
  [
    'a curved wall on no edge',
    (f) => (f['house'].curvedWalls = [{ edge: 4, profile: [{}] }]),
    'curved wall 1 of the house stands on edge 4, and the last edge is 3',
  ],
]

describe('a layout with something wrong in it says where', () => {
  test.each(faults)('%s', (_, change, words) => {
    const sentence = sentenceOf(text(change))
    expect(sentence).toContain(words)
    expect(sentence).toMatch(/^This file was not opened\. In it, .*[^.]\. Your bay is untouched\.$/)
  })

  test('a number too large for any machine', () => {
    const file = text().replace('"racks": 3', '"racks": 1e999')
    expect(sentenceOf(file)).toContain('Racks chained is too large a number to hold; it can be 1 to 20')
  })

  test('a key that is no field but part of every object', () => {
    const file = text().replace('"racks": 3', '"__proto__": { "racks": 7 }, "racks": 3')
    expect(sentenceOf(file)).toContain('has a field that no layout has, "__proto__"')
    expect(({} as Json)['racks']).toBeUndefined()
  })

  test('any value anywhere: read whole or refused with a sentence, never an exception', () => {
    const pathsOf = (value: unknown, path: string[] = []): string[][] =>
      typeof value === 'object' && value !== null
        ? [path, ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))]
        : [path]
    const paths = pathsOf(JSON.parse(text())).slice(1)
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.json(), (path, value) => {
        const file = text((f) => {
          const holder = path.slice(0, -1).reduce((at, key) => at[key], f)
          holder[path.at(-1)!] = JSON.parse(value)
        })
        const read = readLayout(file)
        if (!read.ok) expect(read.sentence).toMatch(/^This file .* Your bay is untouched\.$/)
      }),
      { seed: LAYOUT_SEED, numRuns: 500 },
    )
  })

  test('any text: never an exception', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (file) => {
        expect(readLayout(file).ok).toBe(false)
      }),
      { seed: LAYOUT_SEED, numRuns: 500 },
    )
  })
})
