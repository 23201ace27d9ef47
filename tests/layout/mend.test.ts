import { describe, expect, test } from 'vitest'
import { replacePart } from '../../src/layout/edits'
import { applyMend } from '../../src/layout/mend'
import type { Layout } from '../../src/layout/schema'
import type { Mend } from '../../src/model/finding'
import { inches, onTick } from '../../src/units/length'
import { inchesPerFoot } from '../../src/units/slope'
import { bay } from '../support/bay'
import { firstTry } from '../support/firstTry'
import { expectEditLaws } from '../support/laws'
import { scenarios } from '../support/scenarios'

const sketch = (): Layout =>
  bay('30 x 96 ft')
    .settings({ leastDrop: 1 / 4 })
    .row('Row 1', [60, 100])
    .row('Row 2', [170, 100])
    .layout()

const mended = (layout: Layout, mend: Mend): Layout => expectEditLaws(layout, (l) => applyMend(l, mend))

describe('applyMend', () => {
  test('moving the north block 14 in north makes the first try of Kestrel Bend its good answer', () => {
    const layout = firstTry()
    const parts = layout.parts.filter(({ name }) => /^N[0-9]$/.test(name)).map(({ id }) => id)
    const after = mended(layout, { kind: 'move', parts, dxMm: 0, dyMm: inches(14) })
    expect(after).toEqual(scenarios['kestrel-bend-house-2']!())
  })

  test('sets a field of one part', () => {
    const one = mended(sketch(), { kind: 'set', part: 'rack-row-1', field: 'gutter', value: 'gutter-4in' })
    expect(one.parts).toMatchObject([{ gutter: 'gutter-4in' }, { gutter: 'gutter-5in' }])
  })

  test('lays a drain line with the least fall that the bay asks for', () => {
    const points = [
      { x: 500, y: 9000 },
      { x: 8000, y: 9000 },
    ]
    const after = mended(sketch(), { kind: 'lay', what: 'drain-line', points })
    const fall = inchesPerFoot(1 / 4)
    expect(after.parts.at(-1)).toMatchObject({
      id: 'drain-line-1',
      name: 'Drain 1',
      points,
      slope: fall,
      leastSlope: null,
    })
  })

  test('lays a main', () => {
    const points = [
      { x: 500, y: 9000 },
      { x: 8000, y: 9000 },
    ]
    const after = mended(sketch(), { kind: 'lay', what: 'main', points })
    expect(after.parts.at(-1)).toMatchObject({ id: 'main-1', points })
  })

  // Inlet 1 in over the overflow: common practice, no source.
  test('digs a pit as deep as its drain comes in', () => {
    const at = { x: 3000, y: 4000 }
    const after = mended(sketch(), { kind: 'dig', at, heading: 90, inletMm: inches(-20) })
    expect(after.parts.at(-1)).toMatchObject({
      id: 'sump-1',
      at,
      overflowMm: inches(-21),
      bottomMm: inches(-45),
    })
  })

  test('lets a pit down with all its levels, while its rim stays at the floor', () => {
    const pit = bay('30 x 96 ft')
      .pit('Pit', { x: [100, 136], y: [50, 164] })
      .layout()
    const after = mended(pit, { kind: 'lower', part: 'sump-1', byMm: inches(3) })
    expect(after.parts[0]).toMatchObject({
      rimMm: 0,
      overflowMm: inches(-16),
      drainBackMm: onTick(inches(-17)),
      runningMm: onTick(inches(-25.5)),
      bottomMm: inches(-40),
    })
  })

  test.each<[string, Mend]>([
    ['a value that the schema refuses', { kind: 'set', part: 'rack-row-1', field: 'racks', value: 99 }],
    ['a part that is gone', { kind: 'set', part: 'rack-row-9', field: 'racks', value: 2 }],
    ['a drain of one point', { kind: 'lay', what: 'drain-line', points: [{ x: 0, y: 0 }] }],
    ['a locked part to be moved', { kind: 'move', parts: ['rack-row-2'], dxMm: 100, dyMm: 0 }],
  ])('leaves the layout at %s', (_, mend) => {
    const start = sketch()
    const layout = replacePart(start, { ...start.parts[1]!, locked: true })
    expect(applyMend(layout, mend)).toBe(layout)
  })
})
