import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { waterOf } from '../../../src/evaluate/water/waterOf'
import type { WhatIf } from '../../../src/evaluate/water/whatIf'
import { type RowSketch, waterBay, type WaterSketch } from '../../support/waterBay'

/** Paths of everything in a value that is a number and no sound one. */
const unsound = (value: unknown, path = 'water'): string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (value instanceof Float64Array) return value.every(Number.isFinite) ? [] : [path]
  if (value instanceof Map)
    return [...value].flatMap(([key, each]) => unsound(each, `${path}.${String(key)}`))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => unsound(each, `${path}.${key}`))
}

const row = fc.record({
  along: fc.integer({ min: 0, max: 600 }),
  main: fc.constantFrom('M', 'N'),
  kind: fc.constantFrom('straight' as const, 'centre-split' as const),
  stations: fc.integer({ min: 2, max: 30 }),
  towers: fc.integer({ min: 1, max: 2 }),
  tube: fc.constantFrom('tube-1/8', 'tube-1/4'),
  tubeIn: fc.integer({ min: 12, max: 60 }),
  outlet: fc.integer({ min: 60, max: 90 }),
  valves: fc.record({
    isOpen: fc.boolean(),
    trimTurns: fc.constantFrom(0, 0.5, 2, 8),
  }),
  isBehindFirst: fc.boolean(),
})

const supply = fc.record({
  suction: fc.constantFrom(-24, -40, -900),
  pumps: fc.integer({ min: 1, max: 3 }),
  along: fc.integer({ min: 0, max: 600 }),
  hasCheckValve: fc.boolean(),
  isFilterDirty: fc.boolean(),
  bypass: fc.constantFrom(undefined, { boreMm: 25, lossK: 200 }),
})

const withMains = (isRing: boolean): WaterSketch =>
  waterBay()
    .main(
      'M',
      isRing
        ? [
            [0, 0],
            [200, 0],
            [200, 100],
            [0, 100],
            [0, 0],
          ]
        : [
            [0, 0],
            [600, 0],
          ],
    )
    .main('N', [
      [600, 0],
      [600, 600],
    ])

const bays = fc.record({
  isRing: fc.boolean(),
  isJoined: fc.boolean(),
  boxIn: fc.constantFrom(undefined, 70, 100),
  supplies: fc.array(supply, { maxLength: 2 }),
  rows: fc.array(row, { minLength: 1, maxLength: 5 }),
})

type Recipe = typeof bays extends fc.Arbitrary<infer T> ? T : never

const made = ({ isRing, isJoined, boxIn, supplies, rows }: Recipe) => {
  let sketch = withMains(isRing)
  if (isJoined) sketch = sketch.joined('N', [600, 0], 'M', 300)
  if (boxIn !== undefined) sketch = sketch.box('B', boxIn, { main: 'M', along: 50 })
  supplies.forEach((facts, i) => {
    sketch = sketch.pit(`P${i}`, facts)
  })
  rows.forEach(({ isBehindFirst, ...values }, i) => {
    const sketched: RowSketch = isBehindFirst && i > 0 ? { ...values, behind: 'R0' } : values
    sketch = sketch.row(`R${i}`, sketched)
  })
  return sketch.inputs()
}

const whatIfs: fc.Arbitrary<WhatIf> = fc.record(
  {
    filter: fc.constantFrom('clean' as const, 'dirty' as const),
    waterC: fc.integer({ min: 2, max: 40 }),
    pumpSpeed: fc.constantFrom(0, 0.5, 1),
    without: fc.constantFrom(new Set(['main' as const, 'header' as const]), new Set(['lateral' as const])),
  },
  { requiredKeys: [] },
)

/** A machine that does other work beside takes its time. */
const SLOW = 60_000

describe('any bay', () => {
  test(
    'is solved in sound numbers, loses no water, and says of each row whether it is fed',
    () => {
      fc.assert(
        fc.property(bays, whatIfs, (recipe, whatIf) => {
          const inputs = made(recipe)
          const water = waterOf(inputs, whatIf)
          expect(water.fault).toBeUndefined()
          expect(unsound(water)).toEqual([])
          const rows = inputs.built.filter(({ feed }) => feed).map(({ part }) => part)
          expect([...water.rows.keys(), ...water.dry.keys()].toSorted()).toEqual(rows.toSorted())
          let given = 0
          for (const { flowLph, bypassLph } of water.pumps.values()) given += flowLph - bypassLph
          for (const { inLph, outLph } of water.boxes.values()) given += outLph - inLph
          expect(Math.abs(given - water.totalLph)).toBeLessThan(0.01 + 1e-4 * water.totalLph)
          for (const { tubeLph } of water.rows.values()) expect(tubeLph.every((flow) => flow >= 0)).toBe(true)
        }),
        { seed: 20261125, numRuns: 150 },
      )
    },
    SLOW,
  )
})
