import { describe, expect, test } from 'vitest'
import { pageSvg } from '../../../src/drawing/svg'
import { paperTheme } from '../../../src/drawing/theme'
import { evaluate } from '../../../src/evaluate/evaluate'
import type { Evaluation } from '../../../src/evaluate/evaluation'
import { overlaps } from '../../../src/geometry/box'
import { rankOf } from '../../../src/model/finding'
import { floorPage } from '../../../src/sheets/floor/floorSheet'
import type { SheetOptions } from '../../../src/sheets/sheet'
import { bay } from '../../support/bay'
import { pageText, pageWords } from '../../support/pageText'
import { scenarios } from '../../support/scenarios'

const options: SheetOptions = {
  paper: 'tabloid',
  orientation: 'auto',
  scale: 'fit',
  units: 'feet-inches',
  dateText: '25 Nov 2026',
  issue: '3',
}

const evaluated = Object.fromEntries(Object.entries(scenarios).map(([id, build]) => [id, evaluate(build())]))
const kestrel = evaluated['kestrel-bend-house-2']!
const sheet = (evaluation: Evaluation, more: Partial<SheetOptions> = {}) =>
  floorPage(evaluation, { ...options, ...more })

const hasLine = (text: string, line: string) => text.split('\n').includes(line)

const papersAndUnits = (['letter', 'tabloid', 'A4', 'A3'] as const).flatMap((paper) =>
  (['feet-inches', 'metric'] as const).map((units) => [paper, units] as const),
)

describe.each(Object.entries(evaluated))('the floor sheet of %s', (_, evaluation) => {
  test.each(papersAndUnits)(
    'on %s in %s keeps all words on the paper and none under 2 mm',
    (paper, units) => {
      const page = sheet(evaluation, { paper, units })
      for (const { text, letterMm, box } of pageWords(page)) {
        expect(letterMm, text).toBeGreaterThanOrEqual(2)
        expect(box.x0, text).toBeGreaterThan(5)
        expect(box.y0, text).toBeGreaterThan(5)
        expect(box.x1, text).toBeLessThan(page.paper.widthMm - 5)
        expect(box.y1, text).toBeLessThan(page.paper.heightMm - 5)
      }
    },
  )

  test('is the same twice', () => {
    expect(pageSvg(sheet(evaluation), paperTheme)).toBe(pageSvg(sheet(evaluation), paperTheme))
  })

  test('carries its words of caution and its names', () => {
    const text = pageText(sheet(evaluation)).replace(/\n/g, ' ')
    expect(text).toContain("This plan is a builder's aid. It is not an engineering drawing.")
    expect(text).toContain(evaluation.layout.title)
    expect(text).toContain('25 Nov 2026')
    expect(text).toContain('Floor sheet (FS)')
  })
})

describe.each(papersAndUnits)('words on %s in %s', (paper, units) => {
  test.each(['kestrel-bend-house-2', 'lintel-lane-lean-to', 'old-dairy-corner'])(
    'of %s stand clear of each other',
    (id) => {
      const words = pageWords(sheet(evaluated[id]!, { paper, units }))
      // Racks and lines of a row are numbered by the row itself, and may meet its name on small paper.
      const others = words.filter(({ text }) => !/^[0-9]{1,2}$/.test(text))
      others.forEach((a, i) => {
        for (const b of others.slice(i + 1))
          expect(overlaps(a.box, b.box), `"${a.text}" over "${b.text}"`).toBe(false)
      })
    },
  )
})

describe('the floor sheet of the sample bay', () => {
  const text = pageText(sheet(kestrel))

  // Centrelines at 63, 165 and 267 in, row ends at 96, 336, 410 and 770 in, house 352 x 856 in: worked example of the
  // trade notes, hand arithmetic.
  test.each([
    'CL 5\' 3"',
    'CL 13\' 9"',
    'CL 22\' 3"',
    '29\' 4"',
    '8\' 0"',
    '28\' 0"',
    '34\' 2"',
    '64\' 2"',
    '71\' 4"',
  ])('reads %s along the tape', (reading) => {
    expect(hasLine(text, reading)).toBe(true)
  })

  // Aisles of 36 in, 30 in to the west wall and 52 in to the east wall: worked example of the trade notes.
  test('writes the widths of its aisles', () => {
    const count = (width: string) => text.split('\n').filter((line) => line.startsWith(width)).length
    expect(count('36"')).toBeGreaterThanOrEqual(4)
    expect(count('30"')).toBeGreaterThanOrEqual(2)
    expect(count('52"')).toBeGreaterThanOrEqual(2)
    expect(text).not.toContain('find no room')
  })

  test('is drawn at 3/16 in to the foot upright on tabloid', () => {
    expect(sheet(kestrel).paper.orientation).toBe('portrait')
    expect(hasLine(text, '3/16 in = 1 ft (1:64)')).toBe(true)
  })

  test('names every row, the benchmark with its value, and what each drain falls', () => {
    for (const row of ['N1', 'N2', 'N3', 'S1', 'S2', 'S3']) expect(hasLine(text, row), row).toBe(true)
    expect(hasLine(text, 'BM 100\' 0"')).toBe(true)
    expect(text.split('\n').filter((line) => line === 'falls 1/8 in/ft')).toHaveLength(2)
  })

  test('numbers on the plan what it lists, and counts what is open', () => {
    const open = kestrel.findings.filter((finding) => rankOf(finding) > 0)
    const mustFix = open.filter((finding) => rankOf(finding) === 2)
    expect(text).toContain(
      `Must fix: ${mustFix.length}. Watch: ${open.length - mustFix.length}. Accepted: 0.`,
    )
  })

  test('says in millimetres what it says in inches', () => {
    const metric = pageText(sheet(kestrel, { units: 'metric', paper: 'A3' }))
    expect(hasLine(metric, 'CL 1600 mm')).toBe(true)
    expect(metric).toContain('914 mm')
    expect(hasLine(metric, 'Millimetres')).toBe(true)
    expect(metric).not.toMatch(/\d"/)
  })

  test('has grid marks every 10 ft', () => {
    for (const mark of ['A', 'B', 'C']) expect(hasLine(text, mark)).toBe(true)
    expect(hasLine(text, 'D')).toBe(false)
    expect(hasLine(text, '8')).toBe(true)
  })
})

test.each(papersAndUnits)('what is buried is named on %s in %s', (paper, units) => {
  for (const orientation of ['portrait', 'landscape'] as const) {
    expect(hasLine(pageText(sheet(kestrel, { paper, units, orientation })), 'Old lighting feed, 120 V')).toBe(
      true,
    )
    const dairy = sheet(evaluated['old-dairy-corner']!, { paper, units, orientation })
    expect(hasLine(pageText(dairy), 'Gas line')).toBe(true)
  }
})

describe.each(papersAndUnits)('findings on %s in %s', (paper, units) => {
  const ways = Object.keys(evaluated).flatMap((id) =>
    (['portrait', 'landscape'] as const).map((orientation) => [id, orientation] as const),
  )
  test.each(ways)('of %s %s are all told', (id, orientation) => {
    const text = pageText(sheet(evaluated[id]!, { paper, units, orientation }))
    expect(text).not.toContain('more on the screen')
    expect(text).toContain('How the plan stands')
  })
})

describe('more findings than any paper holds', () => {
  const reason = 'The owner has looked at it, stood in it, measured it twice and will live with it. '.repeat(
    2,
  )
  // An acre whose rails are all on one level: 90 rows want too much shim.
  const acre = evaluated['sallow-flats-one-acre']!.layout
  const layout = { ...acre, settings: { ...acre.settings, datum: 'bay' as const } }
  const open = evaluate(layout).findings
  const accepted = open.map(({ key }) => ({ key, reason, by: '' }))
  const text = pageText(
    sheet(evaluate({ ...layout, settings: { ...layout.settings, accepted } }), { paper: 'letter' }),
  )

  test('are counted where they are left out, and none is lost in between', () => {
    const told = text.replace(/\n/g, ' ').split('Accepted: The owner has looked').length - 1
    const [, left] = /and (\d+) more on the screen/.exec(text)!
    expect(told).toBeGreaterThan(0)
    expect(told + Number(left)).toBe(open.length)
  })
})

describe('the scale', () => {
  test('may be chosen, and what does not fit is said', () => {
    const page = sheet(kestrel, { scale: 24 })
    expect(page.items[0]?.placement.scale).toBeCloseTo(1 / 24)
    expect(pageText(page)).toContain('At 1/2 in = 1 ft (1:24) not all of the bay fits this paper')
    expect(pageText(sheet(kestrel))).not.toContain('not all of the bay')
  })

  test('is in the units of the sheet', () => {
    expect(pageText(sheet(kestrel, { units: 'metric', paper: 'A3' }))).toMatch(/^1:\d+$/m)
  })
})

describe('what the builder accepted', () => {
  const open = kestrel.findings.find((finding) => rankOf(finding) > 0)!
  const { settings } = kestrel.layout
  const accepted = [{ key: open.key, reason: 'The wire is dead and will be pulled', by: 'Foreman' }]
  const evaluation = evaluate({ ...kestrel.layout, settings: { ...settings, accepted } })
  const text = pageText(sheet(evaluation)).replace(/\n/g, ' ')

  test('prints with its reason and who gave it', () => {
    expect(text).toContain('Accepted as it is')
    expect(text).toContain('The wire is dead and will be pulled (Foreman).')
  })

  test('is no longer counted as open', () => {
    const openNow = kestrel.findings.filter((finding) => rankOf(finding) > 0).length - 1
    const [, mustFix, watch, count] = /Must fix: (\d+)\. Watch: (\d+)\. Accepted: (\d+)\./.exec(text)!
    expect(Number(mustFix) + Number(watch)).toBe(openNow)
    expect(count).toBe('1')
  })
})

describe('words of caution', () => {
  const words = (evaluation: Evaluation, more?: Partial<SheetOptions>) =>
    pageText(sheet(evaluation, more)).replace(/\n/g, ' ')

  test('stand on a lying sheet too, in the foot', () => {
    for (const orientation of ['portrait', 'landscape'] as const) {
      expect(words(kestrel, { orientation })).toContain('a lid that bears a person')
      expect(words(kestrel, { orientation })).toContain('licensed electrician')
    }
  })

  test('name only what is there: an empty house has no pit, trench or harvest', () => {
    const empty = words(evaluate(bay('20 x 30 ft').layout()))
    for (const hazard of ['Pit:', 'Electricity', 'Digging', 'Food:']) expect(empty).not.toContain(hazard)
    expect(empty).toContain('not an engineering drawing')
  })
})
