import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { emptyBay } from '../../src/layout/empty'
import type { Layout } from '../../src/layout/schema'
import { cautions } from '../../src/sheets/cautions'
import { cautionOf, cautionsFor, hazardsOf } from '../../src/sheets/hazards'
import { namesTogether, placesOf } from '../../src/sheets/hazard'
import { sheets } from '../../src/sheets/index'
import type { Units } from '../../src/units/length'
import { bay, type Sketch } from '../support/bay'
import { scenarios } from '../support/scenarios'

const in30x60 = () => bay('30 x 60 ft')

const hazardsIn = (sketch: Sketch | Layout, units: Units = 'feet-inches') =>
  hazardsOf(evaluate('parts' in sketch ? sketch : sketch.layout()), units)

const keysIn = (sketch: Sketch | Layout): string[] => hazardsIn(sketch).map(({ key }) => key)

const placesIn = (sketch: Sketch | Layout, key: string, units: Units = 'feet-inches'): string =>
  hazardsIn(sketch, units)
    .filter((hazard) => hazard.key === key)
    .flatMap(({ places }) => places)
    .join('; ')

const pitOf = (depth: number): Sketch =>
  in30x60().pit('Pit', { x: [20, 56], y: [100, 200] }, { rim: 0, bottom: -depth })

describe('only what this bay has', () => {
  test('nothing in an empty bay', () => {
    expect(hazardsIn(emptyBay(9000, 18000, 'Empty'))).toEqual([])
  })

  test('a heater alone is a heater alone, and so is a panel', () => {
    expect(keysIn(in30x60().obstacle('heater', 'Heater', { x: [10, 45], y: [10, 50] }, 0))).toEqual([
      'heater',
    ])
    expect(keysIn(in30x60().obstacle('panel', 'Panel', { x: [10, 16], y: [10, 40] }, 0))).toEqual(['panel'])
    expect(keysIn(in30x60().post('Post', [90, 90]))).toEqual([])
  })

  test('a tote on the floor is no dig, and nobody goes into it', () => {
    const keys = keysIn(scenarios['lintel-lane-lean-to']!())
    expect(keys).toContain('pit')
    expect(keys).not.toContain('digging')
    expect(keys).not.toContain('services')
    expect(cautionOf('pit', evaluate(scenarios['lintel-lane-lean-to']!()), 'feet-inches')).not.toMatch(
      /alone/,
    )
  })

  test('a rack brings what hangs, what is sawn and what is eaten, and no water home brings no chlorine', () => {
    const keys = keysIn(in30x60().row('A', [100, 100], { racks: 1 }))
    for (const key of ['saw', 'drill', 'overhead-loads', 'conduit', 'handling', 'food', 'dripping-steel'])
      expect(keys).toContain(key)
    expect(keys).not.toContain('electricity')
    expect(keys).not.toContain('heater')
  })
})

describe('digs', () => {
  // OSHA 29 CFR 1926.651(c)(2): a ladder from 4 ft of depth; 1926.652(a)(1): protection of the sides from 5 ft.
  test.each([
    [35, ['digging']],
    [47, ['digging']],
    [50, ['digging', 'trench-ladder']],
    [62, ['digging', 'trench-ladder', 'trench-sides']],
  ])('%d in deep', (depth, keys) => {
    expect(keysIn(pitOf(depth)).filter((key) => /^(?:digging|trench)/.test(key))).toEqual(keys)
    expect(placesIn(pitOf(depth), 'digging')).toBe(`Pit: ${depth}" deep`)
  })

  test('the ladder is told of the dig that is so deep, not of the one beside it', () => {
    const two = pitOf(35).pit('Deep pit', { x: [200, 236], y: [100, 200] }, { rim: 0, bottom: -50 })
    expect(placesIn(two, 'digging')).toBe('Deep pit: 50" deep; Pit: 35" deep')
    expect(placesIn(two, 'trench-ladder')).toBe('Deep pit: 50" deep')
  })

  test('a trench is as deep as at its deepest peg', () => {
    const layout = scenarios['kestrel-bend-house-2']!()
    const now = evaluate(layout)
    for (const { part, pegs } of now.bay.levels.drains.values()) {
      const name = layout.parts.find(({ id }) => id === part)!.name
      const deepest = pegs.toSorted((a, b) => b.digMm - a.digMm)[0]!
      const eighths = Math.round((deepest.digMm / 25.4) * 8) / 8
      expect(eighths).toBeCloseTo(11.25, 6)
      expect(placesIn(layout, 'digging')).toContain(`trench of ${name}`)
      expect(placesIn(layout, 'digging')).toContain(`11-1/4" deep at the most, by peg ${deepest.number}`)
    }
  })

  test('a buried line is named with the dig that meets it; where none is drawn, that is said', () => {
    const wire = pitOf(35).buried(
      'wire',
      'Feed',
      [
        [0, 150],
        [300, 150],
      ],
      18,
    )
    expect(placesIn(wire, 'services')).toBe('Feed: drawn 18" down, met by Pit (35" deep)')
    const away = pitOf(35).buried(
      'gas',
      'Gas',
      [
        [300, 0],
        [300, 600],
      ],
      18,
    )
    expect(placesIn(away, 'services')).toBe('Gas: drawn 18" down, met by no dig')
    expect(cautionOf('services', evaluate(pitOf(35).layout()), 'feet-inches')).toMatch(
      /no proof that there is none/,
    )
  })

  test('a footing near a dig is told with its distance', () => {
    // The post stands 40 in from the pit's east edge at x 56; its footing is 12 in across: 40 - 6 = 34 in of ground between.
    const near = pitOf(35).post('Post', [96, 150], { footing: 12, footingDeep: 30 })
    expect(placesIn(near, 'footings')).toBe('Post: footing 30" down, 34" from Pit')
    const far = pitOf(35).post('Post', [180, 150], { footing: 12, footingDeep: 30 })
    expect(keysIn(far)).not.toContain('footings')
  })
})

describe('electricity near a pit', () => {
  const withPanel = (from: number) =>
    pitOf(35).obstacle('panel', 'Panel', { x: [56 + from, 62 + from], y: [110, 140] }, 0)

  // Within 6 ft of water's edge is where NEC 210.8 begins for receptacles, from memory.
  test('distances are from edge to edge, and what is nearer than 6 ft is told so', () => {
    expect(placesIn(withPanel(48), 'electricity')).toContain(`Panel: 4' 0" from Pit: nearer than 6 ft`)
    expect(placesIn(withPanel(120), 'electricity')).toMatch(/Panel: 10' 0" from Pit$/)
  })

  test('an outlet that is drawn as something else is known by its name', () => {
    const outlet = pitOf(35).obstacle('other', 'Duplex outlet', { x: [80, 84], y: [110, 114] }, 0)
    expect(placesIn(outlet, 'electricity')).toContain(`Duplex outlet: 2' 0" from Pit`)
  })
})

test('what a head box holds is weighed', () => {
  // Hand arithmetic: 24 x 18 x 12 in is 5,184 in3; 231 in3 a gallon makes 22.44 gal; 8.34 lb a gallon makes 187 lb, told as 190.
  const box = in30x60().headBox('Head box', { x: [20, 38], y: [20, 44] })
  expect(placesIn(box, 'head-box')).toBe(`Head box: 190 lb of water, its top 7' 4" over the floor`)
  expect(placesIn(box, 'head-box', 'metric')).toMatch(/^Head box: 85 kg of water, its top 2235 mm/)
})

test('what hangs on a row is told in towers and weight', () => {
  // Hand arithmetic: 3 racks of 8 bars of 4 towers are 96; 96 x 25 lb = 2,400 lb; 1.5 x 4 x 25 lb = 150 lb on a bar.
  const row = in30x60().row('A', [100, 100], {})
  expect(placesIn(row, 'overhead-loads')).toBe('A: 96 towers, 2,400 lb at 25 lb each')
  expect(cautionOf('overhead-loads', evaluate(row.layout()), 'feet-inches')).toMatch(/150 lb on a bar of 4/)
})

test('a low row needs no ladder', () => {
  expect(keysIn(in30x60().row('A', [100, 100], {}))).toContain('ladders')
  const low = in30x60().row('A', [100, 100], { tower: 36 })
  expect(keysIn(low)).not.toContain('ladders')
  expect(keysIn(low)).toContain('handling')
})

describe.each(Object.keys(scenarios))('the hazards of %s', (name) => {
  const now = evaluate(scenarios[name]!())
  const ids = new Set(sheets.map(({ id }) => id))

  test.each<Units>(['feet-inches', 'metric'])('stand on sheets that there are, in %s', (units) => {
    const hazards = hazardsOf(now, units)
    expect(new Set(hazards.map(({ key }) => key)).size).toBe(hazards.length)
    for (const { sheets: on, words, source } of hazards) {
      expect(on).toContain('safety')
      for (const id of on) expect(ids).toContain(id)
      expect(words).toMatch(/\.$/)
      expect(source).not.toBe('')
    }
  })

  test('are in the units of their reader', () => {
    for (const { words } of hazardsOf(now, 'metric'))
      expect(words).not.toMatch(/\d(?:"|'| in\b(?! 1\b)| ft\b| lb| gal| psi)/)
    for (const { words } of hazardsOf(now, 'feet-inches')) expect(words).not.toMatch(/\d (?:mm|m|kg|kPa|L)\b/)
  })

  test('are the same words on every paper', () => {
    const floor = cautions(now, 'feet-inches')
    const papers = cautionsFor('floor', now, 'feet-inches').map(({ text }) => text)
    expect(papers.length).toBe(floor.length)
    for (const [index, text] of papers.entries()) expect(text.startsWith(floor[index]!)).toBe(true)
  })

  test('name places that there are', () => {
    const names = new Set(now.layout.parts.map((part) => part.name))
    for (const { spots } of hazardsOf(now, 'feet-inches'))
      for (const spot of spots) {
        const plain = spot.name.replace(/^(?:trench|footing) of /, '')
        const isService = now.layout.house.services.some((service) => service.name === plain)
        expect(names.has(plain) || isService).toBe(true)
      }
  })
})

describe('many places alike', () => {
  test('share a line', () => {
    expect(namesTogether(['A'])).toBe('A')
    expect(namesTogether(['A', 'B'])).toBe('A and B')
    expect(namesTogether(['A', 'B', 'C', 'D', 'E', 'F'])).toBe('A, B, C and 3 more')
    expect(
      placesOf([
        { name: 'A', says: '1' },
        { name: 'B', says: '2' },
        { name: 'C', says: '1' },
      ]),
    ).toEqual(['A and C: 1', 'B: 2'])
  })

  test('beyond six lines only their number is told', () => {
    const many = Array.from({ length: 9 }, (_, i) => ({ name: `P${i}`, says: `${i}` }))
    expect(placesOf(many)).toHaveLength(6)
    expect(placesOf(many).at(-1)).toBe('and 4 more such places')
  })
})
