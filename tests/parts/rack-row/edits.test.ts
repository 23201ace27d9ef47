import { describe, expect, test } from 'vitest'
import { rackRow } from '../../../src/parts/rack-row/kind'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { inches, toInches } from '../../../src/units/length'
import { bodiesOf, extentOf } from '../../support/footprints'
import { build, facts, fromShelf, row } from '../../support/rackRows'
import { at } from '../../support/site'

const handle = (part: RackRow, id: string) => rackRow.handles(part).find((found) => found.id === id)!.at

/** Where the towers hang, with the numbers left out. */
const towers = (part: RackRow): string[] =>
  build(part)
    .mouths.filter(({ role }) => role === 'tower-head')
    .map(({ at: place }) => `${Math.round(place.x)} ${Math.round(place.y)}`)
    .sort()

describe('off the shelf', () => {
  test.each(['rack-row', 'single-rack', 'low-rack'])('%s has its middle where it is dropped', (preset) => {
    const part = fromShelf(preset)
    const [start, end] = [handle(part, 'start'), handle(part, 'end')]
    expect((start.x + end.x) / 2).toBeCloseTo(0, 2)
    expect((start.y + end.y) / 2).toBeCloseTo(0, 2)
  })
})

describe('the room it takes', () => {
  // Worked example of the trade notes: a block of two racks from 96 to 336 in, leaves of 6 in.
  const part = row({ at: at(63, 96), racks: 2 })

  test('leaves end at 90 and 342 in, 66 in apart across', () => {
    const [canopy] = bodiesOf(build(part), 'canopy')
    expect(extentOf(canopy!).slice(0, 4)).toEqual([30, 90, 96, 342])
  })

  test('the frame is as wide as its bearers and as long as its gutters', () => {
    const [frame] = bodiesOf(build(part), 'frame')
    const [west, south, east, north] = extentOf(frame!)
    expect(east! - west!).toBeCloseTo(59.938, 2)
    // The rail ends 1/8 in past the rack line; the gutter 3-1/2 in past the other.
    expect([south, north]).toEqual([95.875, 339.5])
  })

  test('a foot plate lies with its 16 in across the row', () => {
    const [foot] = bodiesOf(build(part), 'foot')
    const [west, south, east, north, bottom, top] = extentOf(foot!)
    expect([east! - west!, north! - south!, bottom, top]).toEqual(
      [16, 8, 0, 2].map((size) => expect.closeTo(size, 6)),
    )
    const [support] = build({ ...part, heading: 0 }).supports
    expect([toInches(support!.halfXMm), toInches(support!.halfYMm)]).toEqual([4, 8])
  })

  test('faces look out of the row', () => {
    const { leftFace, rightFace } = facts(part)
    expect([leftFace.facing, rightFace.facing]).toEqual([180, 0])
    expect(toInches(rightFace.from.x - leftFace.from.x)).toBeCloseTo(66, 6)
  })
})

describe('an end that is dragged', () => {
  test('adds racks at the end and leaves the start', () => {
    const longer = rackRow.drag(row(), 'end', at(90, 50 + 590))
    expect(longer.racks).toBe(5)
    expect(longer.at).toEqual(row().at)
  })

  test('adds racks at the start and leaves the end', () => {
    const longer = rackRow.drag(row(), 'start', at(100, 50 - 130))
    expect(longer.racks).toBe(4)
    expect(handle(longer, 'end')).toEqual(handle(row(), 'end'))
  })

  test('goes no further than one rack, and than twenty', () => {
    expect(rackRow.drag(row(), 'end', at(100, -900)).racks).toBe(1)
    expect(rackRow.drag(row(), 'end', at(100, 90_000)).racks).toBe(20)
  })

  test('gives the same row while no whole rack is gained', () => {
    const part = row()
    expect(rackRow.drag(part, 'end', at(100, 50 + 360 + 59))).toBe(part)
    expect(rackRow.drag(part, 'middle', at(0, 0))).toBe(part)
  })

  test.each(['start', 'end'] as const)('leaves gaps where they are, falling to the %s', (fallsTo) => {
    const part = row({ fallsTo, takenOut: [2, 40, 41] })
    for (const end of ['start', 'end']) {
      const there = handle(part, end)
      const out = { x: there.x, y: there.y + (end === 'end' ? 1 : -1) * inches(240) }
      const longer = rackRow.drag(part, end, out)
      expect(towers(longer)).toEqual(expect.arrayContaining(towers(part)))
      expect(towers(longer)).toHaveLength(5 * 32 - 3)
      expect(rackRow.drag(longer, end, there)).toEqual(part)
    }
  })

  test('forgets the gaps of racks that are taken away', () => {
    const part = row({ takenOut: [2, 40, 95] })
    expect(rackRow.drag(part, 'end', at(100, 50 + 120)).takenOut).toEqual([2])
    expect(rackRow.drag(part, 'start', at(100, 50 + 240)).takenOut).toEqual([31])
  })
})

describe('two rows end to end', () => {
  const lower = row({ racks: 2, takenOut: [3] })
  const beyond = row({ id: 'rack-row-2', name: 'B', racks: 1, at: at(100, 50 + 240), takenOut: [0] })

  test('become one, which stays where it was', () => {
    const chained = rackRow.chain!(lower, beyond)!
    expect([chained.id, chained.name, chained.racks]).toEqual(['rack-row-1', 'A', 3])
    expect(chained.at).toEqual(lower.at)
    expect(towers(chained)).toEqual([...towers(lower), ...towers(beyond)].sort())
  })

  test('also where the other stands before the start', () => {
    const chained = rackRow.chain!(beyond, lower)!
    expect([chained.id, chained.racks]).toEqual(['rack-row-2', 3])
    expect(handle(chained, 'end')).toEqual(handle(beyond, 'end'))
    expect(towers(chained)).toEqual([...towers(lower), ...towers(beyond)].sort())
  })

  test('also where the other was laid from its far end', () => {
    const turned = row({
      racks: 1,
      at: at(100, 50 + 360),
      heading: 270,
      fallsTo: 'start',
      inlet: 'end',
      takenOut: [31],
    })
    const chained = rackRow.chain!(lower, turned)!
    expect(chained.racks).toBe(3)
    expect(towers(chained)).toEqual([...towers(lower), ...towers(turned)].sort())
  })

  test('close up over a foot of gap, and over an inch aside', () => {
    const apart = { ...beyond, at: at(100.75, 50 + 240 + 11) }
    expect(rackRow.chain!(lower, apart)?.racks).toBe(3)
  })

  test.each<[string, Partial<RackRow>]>([
    ['too far along', { at: at(100, 50 + 240 + 13) }],
    ['beside', { at: at(102, 50 + 240) }],
    ['across', { heading: 0 }],
    ['with other lines', { lines: 3 }],
    ['with a fall to the other end', { fallsTo: 'start' }],
    ['too long for one row', { racks: 19 }],
  ])('stay two: %s', (_, more) => {
    expect(rackRow.chain!(lower, { ...beyond, ...more })).toBeUndefined()
  })

  test('stay two where the one that stands is locked', () => {
    expect(rackRow.chain!({ ...lower, locked: true }, beyond)).toBeUndefined()
  })
})
