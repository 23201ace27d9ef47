import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readLayout, writeLayout } from '../../src/layout/file'
import type { Layout } from '../../src/layout/schema'
import { inches } from '../../src/units/length'
import { arbitraryLayout, LAYOUT_SEED } from '../support/arbitraryLayout'
import { linesLost } from '../support/linesLost'
import { type Json, sentenceOf, sketch, text } from '../support/sketchFile'

describe('writeLayout', () => {
  test('keeps the order of the schema and of the parts, whatever the order of keys in memory', () => {
    const layout = sketch()
    const shuffled = {
      parts: layout.parts.map((part) => Object.fromEntries(Object.entries(part).toReversed())),
      settings: layout.settings,
      version: layout.version,
      house: layout.house,
      format: layout.format,
      title: layout.title,
    } as unknown as Layout // the same values, keys in another order
    expect(writeLayout(shuffled)).toBe(writeLayout(layout))
    const file = JSON.parse(writeLayout(shuffled))
    expect(Object.keys(file).join(' ')).toBe('format version title house parts settings bench counter papers')
    expect(file.parts.map((part: Json) => part['name'])).toEqual(['Row 1', 'Row 2', 'Post', 'Drain 1'])
  })

  test('is two-space JSON with a newline at the end', () => {
    const file = writeLayout(sketch())
    expect(file.startsWith('{\n  "format": "kerf-and-fall/layout",\n  "version": 1,\n')).toBe(true)
    expect(file.endsWith('}\n')).toBe(true)
  })

  test('prints lengths with the few digits of a tick', () => {
    const layout = sketch()
    const post = layout.parts[2]!
    // 1/64 in is 127 ticks of 1/320 mm, so 0.396875 mm.
    const moved = { ...post, at: { x: inches(1 / 64), y: 0.1 + 0.2 } } as Layout['parts'][number] // a post with a place
    const file = JSON.parse(writeLayout({ ...layout, parts: [moved] }))
    expect(JSON.stringify(file.parts[0].at)).toBe('{"x":0.396875,"y":0.3}')
  })

  test('writes a layout that no reader would open rather than lose it', () => {
    const broken = { ...sketch(), title: '' }
    expect(JSON.parse(writeLayout(broken))).toEqual(JSON.parse(JSON.stringify(broken)))
  })
})

describe('readLayout', () => {
  test('gives back what was written, for any layout', () => {
    fc.assert(
      fc.property(arbitraryLayout, (layout) => {
        expect(readLayout(writeLayout(layout))).toEqual({ ok: true, layout })
      }),
      { seed: LAYOUT_SEED, numRuns: 200 },
    )
  })

  test('reads a file of version 1 as it was written then', () => {
    const file = readFileSync(join(import.meta.dirname, '../fixtures/layout-v1.json'), 'utf8')
    const read = readLayout(file)
    expect(read.ok && read.layout.title).toBe('Fixture of version 1')
    expect(read.ok && read.layout.parts.map(({ id, name }) => `${id} ${name}`)).toEqual([
      'rack-row-1 N1',
      'trough-1 Nursery trough',
      'drain-line-1 Drain',
      'sump-1 Pit',
      'main-1 Main',
      'obstacle-1 Post',
      'opening-1 South door',
    ])
    // Written again every line of it stands where it stood; between them are fields that came later, at their defaults.
    expect(linesLost(file, read.ok ? writeLayout(read.layout) : '')).toEqual([])
    expect(read.ok && read.layout.settings).toMatchObject({ datum: 'bay', waterC: 20, bucket: null })
  })

  test('fills in what a hand-written file leaves out', () => {
    const read = readLayout(
      JSON.stringify({
        format: 'kerf-and-fall/layout',
        version: 1,
        title: 'By hand',
        house: {
          outline: [
            { x: 0, y: 0 },
            { x: 9000, y: 0 },
            { x: 9000, y: 20000 },
            { x: 0, y: 20000 },
          ],
        },
        parts: [{ kind: 'rack-row', id: 'rack-row-1', at: { x: 2000, y: 2000 } }],
        settings: {},
      }),
    )
    expect(read).toMatchObject({ ok: true, layout: { parts: [{ racks: 3, lines: 4, rail: '3/4' }] } })
  })

  test('takes a byte order mark before the text', () => {
    expect(readLayout(`\uFEFF${text()}`).ok).toBe(true)
  })

  test('takes the longest lengths that the schema gives, in inches', () => {
    const file = text((f) => {
      f['settings'].leafReachMm = inches(24)
      f['parts'][0].rackLengthMm = inches(120)
      f['parts'][0].riserMm = inches(24)
    })
    expect(sentenceOf(file)).toBe('opened')
  })
})
