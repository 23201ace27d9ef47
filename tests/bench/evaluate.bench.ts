import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { bench, describe } from 'vitest'
import type { Bay } from '../../src/checks/context'
import { returns } from '../../src/evaluate/4-returns'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { evaluate } from '../../src/evaluate/evaluate'
import { movePartsBy } from '../../src/layout/edits'
import { readLayout } from '../../src/layout/file'
import type { Layout, Part } from '../../src/layout/schema'
import type { PartId } from '../../src/model/ids'
import type { RowWater } from '../../src/model/water'
import { inches } from '../../src/units/length'

const textOf = (id: string): string =>
  readFileSync(join(import.meta.dirname, `../../public/bays/${id}.json`), 'utf8')

const opened = (text: string): Layout => {
  const read = readLayout(text)
  if (!read.ok) throw new RangeError(read.sentence)
  return read.layout
}

/** Frames of a drag: a row from the middle of the list goes to and fro, 1/16 in a frame, at no two frames in one place. */
const FRAMES = 200

const middleRow = ({ parts, title }: Layout): Part => {
  const rows = parts.filter(({ kind }) => kind === 'rack-row')
  const row = rows[Math.floor(rows.length / 2)]
  if (!row) throw new RangeError(`${title} has no row to drag.`)
  return row
}

const dragged = (layout: Layout): (() => void) => {
  const row = middleRow(layout)
  evaluate(layout)
  const frames = Array.from({ length: FRAMES }, (_, step) =>
    movePartsBy(layout, [row.id], inches(step / 16 - 6), inches(step / 32 - 3)),
  )
  let frame = 0
  return () => {
    const shown = frames[frame % FRAMES]
    // A frame met before would be remembered: each is a layout of its own, with a row of its own.
    if (shown)
      evaluate({ ...shown, parts: shown.parts.map((part) => (part.id === row.id ? { ...part } : part)) })
    frame += 1
  }
}

// Goals for a frame with every check and the cut lists live: 4 ms at 480 towers, 12 ms at 10,368.
describe('evaluate while a row is dragged', () => {
  bench('evaluate a frame of a drag, sample bay, 480 towers', dragged(opened(textOf('kestrel-bend-house-2'))))
  bench(
    'evaluate a frame of a drag, one acre, 10,368 towers',
    dragged(opened(textOf('sallow-flats-one-acre'))),
  )
})

/** Bays of a drag, all up to the water on its way home known. */
const BAYS = 40

const freshRows = ({ water }: Bay): [PartId, RowWater][] =>
  [...water.rows].map(([part, row]) => [part, { ...row }])

const homeOf = (layout: Layout): (() => void) => {
  const row = middleRow(layout)
  const bays = Array.from(
    { length: BAYS },
    (_, step) => beforeChecks(movePartsBy(layout, [row.id], inches(step / 4 - 5), inches(step / 8))).bay,
  )
  let frame = 0
  return () => {
    const bay = bays[frame % BAYS]
    // Water met before would be remembered: each frame has flows of its own.
    if (bay) returns({ ...bay, water: { ...bay.water, rows: new Map(freshRows(bay)) } })
    frame += 1
  }
}

// Goals for the water on its way home, troughs, drains and pits: 0.3 ms at 480 towers, 2 ms at 10,368.
describe('the water on its way home while a row is dragged', () => {
  bench('returns, sample bay, 480 towers', homeOf(opened(textOf('kestrel-bend-house-2'))))
  bench('returns, one acre, 10,368 towers', homeOf(opened(textOf('sallow-flats-one-acre'))))
})

// Goal with the page's own work: 1.5 s. Nothing is remembered: the layout read is new each time.
describe('opening', () => {
  const acre = textOf('sallow-flats-one-acre')
  bench('read and evaluate one acre', () => {
    evaluate(opened(acre))
  })
  const sample = textOf('kestrel-bend-house-2')
  bench('read and evaluate the sample bay', () => {
    evaluate(opened(sample))
  })
})
