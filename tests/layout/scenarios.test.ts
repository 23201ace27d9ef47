import { describe, expect, test } from 'vitest'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { readLayout, writeLayout } from '../../src/layout/file'
import type { Layout } from '../../src/layout/schema'
import { samples } from '../../src/layout/samples'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { inches } from '../../src/units/length'
import { firstTry } from '../support/firstTry'
import { expectGolden } from '../support/golden'
import { expectFileRoundTrip } from '../support/laws'
import { scenarios } from '../support/scenarios'

const rowsOf = ({ parts }: Layout): RackRow[] => parts.filter((part) => part.kind === 'rack-row')

const sum = (rows: readonly RackRow[], of: (row: RackRow) => number): number =>
  rows.reduce((total, row) => total + of(row), 0)

const towers = (rows: readonly RackRow[]): number =>
  sum(rows, (row) => row.racks * row.barsPerRack * row.lines)

const sites = (rows: readonly RackRow[]): number =>
  sum(rows, (row) => row.racks * row.barsPerRack * row.lines * row.sites)

describe.each(Object.entries(scenarios))('the sample %s', (id, build) => {
  test('is kept as a file for the program to open', () => {
    expectGolden(`public/bays/${id}.json`, writeLayout(build()))
  })

  test('comes back from its file', () => {
    expectFileRoundTrip(build())
  })

  test('is on the list of samples with its own title and file', () => {
    const sample = samples.find((s) => s.id === id)
    expect(sample?.title).toBe(build().title)
    const file = join(import.meta.dirname, '../../public', sample?.file ?? '')
    expect(readLayout(readFileSync(file, 'utf8')).ok).toBe(true)
  })
})

test('the list of samples opens with Kestrel Bend and names no file that is not built here', () => {
  expect(samples.map(({ id }) => id)).toEqual(Object.keys(scenarios))
  expect(samples[0]?.id).toBe('kestrel-bend-house-2')
})

// Counts: worked examples of the trade notes, hand arithmetic.
test.each([
  ['kestrel-bend-house-2', 15, 480, 4320],
  ['lintel-lane-lean-to', 1, 12, 84],
  ['old-dairy-corner', 8, 256, 2304],
  ['sallow-flats-one-acre', 324, 10_368, 93_312],
  ['kestrel-bend-near-miss', 15, 480, 4320],
])('%s has %i racks, %i towers and %i plant sites', (id, racks, towerCount, siteCount) => {
  const rows = rowsOf(scenarios[id]!())
  expect([sum(rows, (row) => row.racks), towers(rows), sites(rows)]).toEqual([racks, towerCount, siteCount])
})

test('the acre has 108 blocks, eighteen pits and a drain line for each side of each', () => {
  const kinds = scenarios['sallow-flats-one-acre']!().parts.map(({ kind }) => kind)
  const count = (kind: string) => kinds.filter((k) => k === kind).length
  expect([count('rack-row'), count('sump'), count('drain-line'), count('main')]).toEqual([108, 18, 36, 18])
})

test('the first try of Kestrel Bend is the good answer with its north block 14 in further south', () => {
  const good = scenarios['kestrel-bend-house-2']!()
  const isNorth = (name: string) => /^N[0-9]$/.test(name)
  const shifted = good.parts.map((part) =>
    part.kind === 'rack-row' && isNorth(part.name) ? { ...part, at: { x: part.at.x, y: inches(396) } } : part,
  )
  expect(firstTry().parts).toEqual(shifted)
})
