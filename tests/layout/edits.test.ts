import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { newcomers } from '../../src/layout/difference'
import {
  addParts,
  copyParts,
  extendRow,
  mirrorParts,
  movePartsBy,
  removeParts,
  repeatParts,
  replacePart,
  toggleTower,
  turnParts,
} from '../../src/layout/edits'
import { MOST_PARTS, type Layout, type Part } from '../../src/layout/schema'
import { obstacleSchema } from '../../src/parts/obstacle/schema'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { inches, onTick } from '../../src/units/length'
import { arbitraryLayout, LAYOUT_SEED } from '../support/arbitraryLayout'
import { bay } from '../support/bay'
import { expectEditLaws } from '../support/laws'
import { inchesOf } from '../support/site'

const sketch = (): Layout =>
  bay('30 x 96 ft', 'Test bay')
    .row('N1', [60, 100], { racks: 2 })
    .row('N2', [170, 100], { racks: 2 })
    .post('Post', [115, 400])
    .drain('Drain 1', [
      [20, 450],
      [340, 450],
    ])
    .layout()

const partOf = (layout: Layout, id: string): Part => {
  const part = layout.parts.find((p) => p.id === id)
  if (!part) throw new RangeError(`no ${id} in the sketch`)
  return part
}

const rowOf = (layout: Layout, id = 'rack-row-1'): RackRow => {
  const part = partOf(layout, id)
  if (part.kind !== 'rack-row') throw new RangeError(`${id} is a ${part.kind}`)
  return part
}

/** Where a part stands or starts, inches to 1/1000. */
const spotOf = (layout: Layout, id: string): readonly [number, number] => {
  const part = partOf(layout, id)
  const at = 'points' in part ? part.points[0]! : part.at
  return [inchesOf(at.x), inchesOf(at.y)]
}

const withLocked = (layout: Layout, id: string): Layout =>
  replacePart(layout, { ...partOf(layout, id), locked: true })

const post = (id: string) => obstacleSchema.parse({ kind: 'obstacle', id, at: { x: 0, y: 0 }, what: 'post' })

describe('addParts', () => {
  test('adds at the end', () => {
    const after = expectEditLaws(sketch(), (layout) =>
      addParts(layout, [post('obstacle-2'), post('obstacle-3')]),
    )
    expect(after.parts.map(({ id }) => id).slice(3)).toEqual(['drain-line-1', 'obstacle-2', 'obstacle-3'])
  })

  test('throws with the number of parts where an id is taken', () => {
    expect(() => addParts(sketch(), [post('obstacle-1')])).toThrow(
      '1 of 1 new parts bring an id that is taken.',
    )
  })

  test('adds none where there would be more than a file holds', () => {
    const layout = sketch()
    const many = Array.from({ length: MOST_PARTS }, (_, k) => post(`obstacle-${k + 2}`))
    expect(addParts(layout, many)).toBe(layout)
  })
})

describe('removeParts', () => {
  test('takes out what it is told', () => {
    const after = expectEditLaws(sketch(), (layout) => removeParts(layout, ['rack-row-1', 'obstacle-1']))
    expect(after.parts.map(({ id }) => id)).toEqual(['rack-row-2', 'drain-line-1'])
  })

  test('forgets what was accepted about a part that is gone, since its id may come again', () => {
    const layout = bay('30 x 96 ft')
      .row('N1', [60, 100])
      .row('N2', [170, 100])
      .settings({
        accepted: [
          { key: 'aisle-width-min rack-row-1 rack-row-2', reason: 'Narrow on purpose', by: '' },
          { key: 'wall-gap-min rack-row-2', reason: 'Nobody walks there', by: '' },
          { key: 'wall-gap-min rack-row-11', reason: 'Another row', by: '' },
        ],
      })
      .layout()
    const after = expectEditLaws(layout, (l) => removeParts(l, ['rack-row-1']))
    expect(after.settings.accepted.map(({ key }) => key)).toEqual([
      'wall-gap-min rack-row-2',
      'wall-gap-min rack-row-11',
    ])
  })
})

describe('movePartsBy', () => {
  test('moves a row and a line by what a tape shows', () => {
    const after = expectEditLaws(sketch(), (layout) =>
      movePartsBy(layout, ['rack-row-1', 'drain-line-1'], inches(14), inches(-1 / 16)),
    )
    expect(spotOf(after, 'rack-row-1')).toEqual([74, 99.938])
    expect(spotOf(after, 'drain-line-1')).toEqual([34, 449.938])
    expect(spotOf(after, 'rack-row-2')).toEqual([170, 100])
  })

  test('leaves what is locked', () => {
    const layout = withLocked(sketch(), 'rack-row-1')
    const after = expectEditLaws(layout, (l) => movePartsBy(l, ['rack-row-1', 'rack-row-2'], inches(5), 0))
    expect(spotOf(after, 'rack-row-1')).toEqual([60, 100])
    expect(spotOf(after, 'rack-row-2')).toEqual([175, 100])
  })

  test.each([0, 0.0001])('by %d mm gives the same layout', (dxMm) => {
    const layout = sketch()
    expect(movePartsBy(layout, ['rack-row-1'], dxMm, 0)).toBe(layout)
  })

  test('of nothing, of an unknown part or of a locked one alone gives the same layout', () => {
    const layout = withLocked(sketch(), 'rack-row-1')
    expect(movePartsBy(layout, [], 10, 10)).toBe(layout)
    expect(movePartsBy(layout, ['rack-row-99'], 10, 10)).toBe(layout)
    expect(movePartsBy(layout, ['rack-row-1'], 10, 10)).toBe(layout)
  })
})

describe('turnParts', () => {
  // Two rows 110 in apart and 240 in long: the middle is (115, 220), and a quarter turn lays the west row south.
  test('turns a quarter anticlockwise about the common middle', () => {
    const after = expectEditLaws(sketch(), (layout) => turnParts(layout, ['rack-row-1', 'rack-row-2']))
    expect(spotOf(after, 'rack-row-1')).toEqual([235, 165])
    expect(spotOf(after, 'rack-row-2')).toEqual([235, 275])
    expect(rowOf(after).heading).toBe(180)
  })

  test('four times gives back what was there', () => {
    const before = sketch()
    const ids = ['rack-row-1', 'obstacle-1', 'drain-line-1']
    let after = before
    for (let turn = 0; turn < 4; turn += 1) after = turnParts(after, ids)
    expect(after).toEqual(before)
  })
})

describe('mirrorParts', () => {
  test('swaps east and west about the common middle', () => {
    const after = expectEditLaws(sketch(), (layout) => mirrorParts(layout, ['rack-row-1', 'rack-row-2'], 'x'))
    expect(spotOf(after, 'rack-row-1')).toEqual([170, 100])
    expect(spotOf(after, 'rack-row-2')).toEqual([60, 100])
  })

  test('swaps north and south', () => {
    const after = expectEditLaws(sketch(), (layout) => mirrorParts(layout, ['rack-row-1'], 'y'))
    expect(spotOf(after, 'rack-row-1')).toEqual([60, 340])
    expect(rowOf(after).heading).toBe(270)
  })

  test('twice gives back what was there', () => {
    const before = toggleTower(sketch(), 'rack-row-1', 3, 2)
    const ids = ['rack-row-1', 'drain-line-1']
    expect(mirrorParts(mirrorParts(before, ids, 'x'), ids, 'x')).toEqual(before)
  })
})

describe('copyParts and repeatParts', () => {
  test('a copy has an id and a name of its own, continues its series, and is loose', () => {
    const layout = withLocked(sketch(), 'rack-row-1')
    const after = expectEditLaws(layout, (l) => copyParts(l, ['rack-row-1', 'obstacle-1'], inches(204), 0))
    expect(newcomers(layout, after)).toEqual(['rack-row-3', 'obstacle-2'])
    expect(partOf(after, 'rack-row-3')).toMatchObject({ name: 'N3', locked: false })
    expect(partOf(after, 'obstacle-2').name).toBe('Post 2')
    expect(spotOf(after, 'rack-row-3')).toEqual([264, 100])
  })

  test('repeats set by set at one spacing', () => {
    const after = expectEditLaws(sketch(), (layout) => repeatParts(layout, ['rack-row-1'], 3, 0, inches(300)))
    expect(after.parts.slice(4).map(({ name }) => name)).toEqual(['N3', 'N4', 'N5'])
    expect(['rack-row-3', 'rack-row-4', 'rack-row-5'].map((id) => spotOf(after, id)[1])).toEqual([
      400, 700, 1000,
    ])
  })
})

describe('toggleTower', () => {
  test('takes a tower out and puts it back', () => {
    const out = expectEditLaws(sketch(), (layout) => toggleTower(layout, 'rack-row-1', 2, 3))
    expect(rowOf(out).takenOut).toEqual([6])
    expect(rowOf(expectEditLaws(out, (l) => toggleTower(l, 'rack-row-1', 2, 3))).takenOut).toEqual([])
  })

  test('keeps them in ascending order', () => {
    const places: readonly (readonly [number, number])[] = [
      [9, 1],
      [1, 4],
      [4, 2],
    ]
    const after = places.reduce(
      (at, [station, line]) => toggleTower(at, 'rack-row-1', station, line),
      sketch(),
    )
    expect(rowOf(after).takenOut).toEqual([3, 13, 32])
  })

  // The row has 16 stations of 4 lines.
  test.each([
    [17, 1],
    [0, 1],
    [1, 5],
    [1, 0],
    [1.5, 1],
  ])('there is no station %d line %d', (station, line) => {
    const layout = sketch()
    expect(toggleTower(layout, 'rack-row-1', station, line)).toBe(layout)
  })

  test('only rows have towers', () => {
    const layout = sketch()
    expect(toggleTower(layout, 'obstacle-1', 1, 1)).toBe(layout)
  })
})

describe('extendRow', () => {
  test('adds racks at the end and stays where it starts', () => {
    const after = expectEditLaws(sketch(), (layout) => extendRow(layout, 'rack-row-1', 1))
    expect([rowOf(after).racks, spotOf(after, 'rack-row-1')]).toEqual([3, [60, 100]])
  })

  test('adds racks at the start, and a tower taken out stays where it was on the floor', () => {
    const layout = toggleTower(sketch(), 'rack-row-1', 1, 1)
    const after = expectEditLaws(layout, (l) => extendRow(l, 'rack-row-1', 1, 'start'))
    expect(spotOf(after, 'rack-row-1')).toEqual([60, -20])
    // Eight stations of four lines further along.
    expect(rowOf(after).takenOut).toEqual([32])
  })

  test('takes racks away, but never the last', () => {
    const after = expectEditLaws(sketch(), (layout) => extendRow(layout, 'rack-row-1', -9))
    expect(rowOf(after).racks).toBe(1)
  })

  test('leaves a locked row', () => {
    const layout = withLocked(sketch(), 'rack-row-1')
    expect(extendRow(layout, 'rack-row-1', 1)).toBe(layout)
  })
})

test('replacePart puts a part on the tick, and leaves a part that no file could hold as it was', () => {
  const layout = sketch()
  const row = rowOf(layout)
  const moved = expectEditLaws(layout, (l) => replacePart(l, { ...row, at: { x: 0.1 + 0.2, y: 1 / 3 } }))
  expect(rowOf(moved).at).toEqual({ x: 0.3, y: onTick(1 / 3) })
  expect(replacePart(layout, { ...row, racks: 4000 })).toBe(layout)
  expect(replacePart(layout, row)).toBe(layout)
})

const edits = {
  move: (layout, ids) => movePartsBy(layout, ids, 12.7, -0.3),
  turn: (layout, ids) => turnParts(layout, ids),
  'half turn': (layout, ids) => turnParts(layout, ids, 2),
  'mirror x': (layout, ids) => mirrorParts(layout, ids, 'x'),
  'mirror y': (layout, ids) => mirrorParts(layout, ids, 'y'),
  copy: (layout, ids) => copyParts(layout, ids, 100, 200),
  repeat: (layout, ids) => repeatParts(layout, ids, 3, 1000, 0),
  remove: (layout, ids) => removeParts(layout, ids),
  toggle: (layout, ids) => toggleTower(layout, ids[0] ?? '', 2, 1),
  extend: (layout, ids) => extendRow(layout, ids[0] ?? '', 1, 'start'),
} satisfies Record<string, (layout: Layout, ids: readonly string[]) => Layout>

test.each(Object.entries(edits))('%s keeps the laws of edits on any layout', (_, edit) => {
  fc.assert(
    fc.property(arbitraryLayout, fc.nat(), (layout, chance) => {
      const ids = layout.parts.map(({ id }) => id).filter((_id, index) => (chance >> index) % 2 === 1)
      expectEditLaws(layout, (l) => edit(l, ids))
    }),
    { seed: LAYOUT_SEED, numRuns: 60 },
  )
})
