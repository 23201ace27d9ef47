import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { bench, describe } from 'vitest'
import type { Bay } from '../../src/checks/context'
import { evaluate } from '../../src/evaluate/evaluate'
import { troughReturns } from '../../src/evaluate/returns/troughs'
import { readLayout } from '../../src/layout/file'
import type { Water } from '../../src/model/water'

const bayOf = (id: string): Bay => {
  const read = readLayout(readFileSync(join(import.meta.dirname, `../../public/bays/${id}.json`), 'utf8'))
  if (!read.ok) throw new RangeError(read.sentence)
  return evaluate(read.layout).bay
}

const FRAMES = 200

/** The same water with every flow a hair other: what a drag makes of it, frame after frame. */
const nudged = (water: Water, by: number): Water => ({
  ...water,
  rows: new Map(
    [...water.rows].map(([part, row]) => [part, { ...row, tubeLph: row.tubeLph.map((lph) => lph * by) }]),
  ),
})

const frames = (bay: Bay, step: number): (() => void) => {
  const bays = Array.from({ length: FRAMES }, (_, k) => ({ ...bay, water: nudged(bay.water, 1 + step * k) }))
  let frame = 0
  return () => {
    const shown = bays[frame % FRAMES]
    if (shown) troughReturns(shown)
    frame += 1
  }
}

// Goal: well under 1 ms for all rows of the acre while flows move by the hair that a drag elsewhere moves them.
describe('water in troughs', () => {
  const acre = bayOf('sallow-flats-one-acre')
  bench('troughs of one acre, 108 rows, flows a hair other each frame', frames(acre, 1e-6))
  bench('troughs of one acre, 108 rows, flows a thousandth other each frame', frames(acre, 1e-3))
  bench('troughs of the sample bay, 6 rows', frames(bayOf('kestrel-bend-house-2'), 1e-6))
})
