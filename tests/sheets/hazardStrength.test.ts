import { describe, expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate'
import { hazardsOf } from '../../src/sheets/hazards'
import type { Units } from '../../src/units/length'
import { bay } from '../support/bay'
import { scenarios } from '../support/scenarios'

const row = (values = {}) => bay('40 x 60 ft').row('A', [100, 100], values).layout()

const hazard = (key: string, layout: ReturnType<typeof row>, units: Units = 'feet-inches') =>
  hazardsOf(evaluate(layout), units).find((each) => each.key === key)

describe('conduit', () => {
  // 200 lb in the middle of 30 in: 200 x 30 / 4 = 1,500 lb-in over 0.02786 in³ = 53.8 ksi; 30 ksi is assumed of conduit.
  test('is told not to be climbed on, with what a person does to it', () => {
    const { places, words, sheets } = hazard('conduit', row())!
    expect(places).toEqual(['A: 24 bars, their rails'])
    expect(words).toMatch(/^Not rated for this use, screened only: /)
    expect(words).toContain('200 lb at mid span, 53.8 ksi, fold it.')
    expect(sheets).toEqual(['assembly', 'round', 'safety'])
    expect(hazard('conduit', row(), 'metric')!.words).toContain('90 kg at mid span, 371.2 MPa, fold it.')
  })

  test('says of a row that is not within what it is', () => {
    expect(hazard('conduit', row({ midPairs: 0 }))!.places).toEqual(['A: 24 bars, their rails: Too long'])
  })

  test('is nobody’s matter where no rack stands', () => {
    expect(hazard('conduit', bay('40 x 60 ft').layout())).toBeUndefined()
  })
})

describe('racks that tip', () => {
  test('are named with the push that tips them, and only they', () => {
    expect(hazard('tipping', row())).toBeUndefined()
    expect(hazard('tipping', row({ racks: 1, midPairs: 0 }))!.places).toEqual([
      expect.stringMatching(/^A: \d+ lb empty$/),
    ])
  })

  test('and those that something holds, until it does', () => {
    const held = row({ racks: 1, midPairs: 0, hold: 'anchored' })
    expect(hazard('tipping', held)!.places).toEqual([
      expect.stringMatching(/ lb empty until it is anchored$/),
    ])
  })
})

test('anchors are counted, where there are any', () => {
  const layout = row({ hold: 'anchored' })
  const { fittings } = evaluate(layout).bay.built[0]!
  const anchors = fittings.filter(({ item }) => item === 'ground-anchor').length
  expect(anchors).toBeGreaterThan(0)
  expect(hazard('anchors', layout)!.places).toEqual([`A: ${anchors} anchors`])
  expect(hazard('anchors', row())).toBeUndefined()
})

// The lean-to holds 12 towers on a narrow base, and stands by its weight alone.
test('a sample that tips says so to whoever puts it up, grows in it or visits it', () => {
  const found = hazard('tipping', scenarios['lintel-lane-lean-to']!())!
  expect(found.places).toEqual(['Row 1: 31 lb empty'])
  expect(found.sheets).toEqual(['assembly', 'round', 'safety'])
})

describe('loads overhead', () => {
  test('nothing hangs from the house where every row stands on its floor', () => {
    expect(hazard('overhead-loads', row())!.words).toMatch(/ Nothing hangs from the house\.$/)
  })

  test('rows that the house carries are named, with who has to allow it', () => {
    const both = bay('40 x 60 ft').row('A', [100, 100]).row('B', [300, 100], { carriedBy: 'house' })
    const { words } = hazard('overhead-loads', both.layout())!
    expect(words).not.toContain('Nothing hangs')
    expect(words).toMatch(
      / From the house hang only B, as its maker allows in writing, load test included\.$/,
    )
  })
})
