import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { bench, describe } from 'vitest'
import type { Bay } from '../../src/checks/context'
import { strengthOf } from '../../src/evaluate/5-loads'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { frameOf } from '../../src/evaluate/loads/frame'
import { rowStrength } from '../../src/evaluate/loads/rowStrength'
import { movePartsBy } from '../../src/layout/edits'
import { readLayout } from '../../src/layout/file'
import type { Layout, Part } from '../../src/layout/schema'
import { inches } from '../../src/units/length'

const acre = (): Layout => {
  const text = readFileSync(join(import.meta.dirname, '../../public/bays/sallow-flats-one-acre.json'), 'utf8')
  const read = readLayout(text)
  if (!read.ok) throw new RangeError(read.sentence)
  return read.layout
}

const middleRow = ({ parts, title }: Layout): Part => {
  const rows = parts.filter(({ kind }) => kind === 'rack-row')
  const row = rows[Math.floor(rows.length / 2)]
  if (!row) throw new RangeError(`${title} has no row to drag.`)
  return row
}

/** Bays of a drag, all of them known before step 5. */
const FRAMES = 60

const dragged = (): (() => void) => {
  const layout = acre()
  const row = middleRow(layout)
  const bays = Array.from(
    { length: FRAMES },
    (_, step) => beforeChecks(movePartsBy(layout, [row.id], inches(step / 16 + 1), inches(step / 8))).bay,
  )
  for (const bay of bays.slice(0, 1)) strengthOf(bay)
  let frame = 0
  return () => {
    const bay = bays[frame % FRAMES]
    // A row met before would be remembered: each frame has a row of its own.
    if (bay) strengthOf(withNewRow(bay, row.id))
    frame += 1
  }
}

const withNewRow = (bay: Bay, part: string): Bay => ({
  ...bay,
  built: bay.built.map((built) => (built.part === part ? { ...built } : built)),
})

// Goals: 3 ms a frame of a drag, 150 ms for the first strength of an acre.
describe('loads of an acre, 10,368 towers', () => {
  bench('a frame of a drag', dragged())

  const { bay } = beforeChecks(acre())
  bench('every row, rows of its shape known', () => {
    strengthOf({ ...bay, built: bay.built.map((built) => ({ ...built })) })
  })

  const [frame] = bay.built.flatMap((built) => frameOf(built) ?? [])
  if (!frame) throw new RangeError('The acre has no row.')
  bench('one row whose shape was never seen, its rails and bars known', () => {
    rowStrength(frame, { settings: bay.settings, measured: bay.site.measured })
  })

  // Every tower a hair heavier than ever before: no rail and no bar is known.
  let grams = 0
  bench('one row of which nothing is known', () => {
    grams += 1
    const settings = { ...bay.settings, wetTowerKg: 10 + grams / 1000 }
    rowStrength(frame, { settings, measured: bay.site.measured })
  })
})
