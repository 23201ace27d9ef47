import { describe, expect, test } from 'vitest'
import type { Built } from '../../../src/model/built'
import type { FeedPipe } from '../../../src/model/feedFacts'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { rackRow } from '../../../src/parts/rack-row/kind'
import { inches, onTick, toInches } from '../../../src/units/length'
import { build, facts, row } from '../../support/rackRows'
import { at } from '../../support/site'

/** The row runs north from (100, 50): across is east of 100, along is north of 50, inches. */
const placed = (built: Built, role: FeedPipe['role']) => {
  const { joints, pipes } = built.feed!
  return pipes
    .filter((pipe) => pipe.role === role)
    .map(({ from, to }) =>
      [from, to].map((joint) => {
        const { x, y, z } = joints[joint]!
        return [x, y, z].map((mm, axis) => Math.round((toInches(mm) - [100, 50, 0][axis]!) * 1000) / 1000)
      }),
    )
}

const lateralsAcross = (values: Partial<RackRow>): number[] => {
  const across = placed(build(row(values)), 'lateral').map(([from]) => from![0]!)
  return [...new Set(across)]
}

const inlet = (values: Partial<RackRow>): number[] => {
  const { x, y, z } = build(row(values)).feed!.joints[0]!
  return [toInches(x) - 100, toInches(y) - 50, toInches(z)].map((value) => Math.round(value * 1000) / 1000)
}

describe('where water enters', () => {
  test.each<[string, Partial<RackRow>, number[]]>([
    ['at the start', {}, [-20, 0, 4]],
    ['at the end', { inlet: 'end' }, [-20, 360, 4]],
    ['on the right', { riserSide: 'right' }, [20, 0, 4]],
    ['in the middle of a split, whatever the inlet', { feed: 'centre-split', inlet: 'end' }, [-20, 180, 4]],
    ['in the middle of a double split', { feed: 'double-split' }, [-20, 180, 4]],
    [
      'at the end of a split whose main passes there',
      { feed: 'centre-split', riserAt: 'inlet-end', inlet: 'end' },
      [-20, 360, 4],
    ],
    ['at the end of a ring', { feed: 'ring', inlet: 'end' }, [-20, 360, 4]],
    // Pairs stand at 0, 60, 120 and so on; 60 is the middle of one rack of 120.
    ['at the pair in the middle of one rack', { racks: 1, midPairs: 1, feed: 'centre-split' }, [-20, 60, 4]],
    // Pairs at 0, 40, 80, 120: the one nearer to the start of two that are 20 in off the middle.
    ['at the pair nearest to it', { racks: 1, midPairs: 2, feed: 'centre-split' }, [-20, 40, 4]],
    ['behind another row’s valve: at the height of the laterals', { valveSet: 'shared' }, [-20, 0, 76]],
  ])('%s', (_, values, place) => {
    expect(inlet(values)).toEqual(place)
  })
})

describe('laterals', () => {
  test('one a row, one a pair, one a line', () => {
    expect(lateralsAcross({ laterals: 1 })).toEqual([0])
    expect(lateralsAcross({ laterals: 2 })).toEqual([-18, 18])
    expect(lateralsAcross({ laterals: 4 })).toEqual([-27, -9, 9, 27])
  })

  test('that do not share the lines evenly: the more to the one next to the riser pipe', () => {
    // Lines at -36, -18, 0, 18, 36: the first three, then two.
    expect(lateralsAcross({ lines: 5, laterals: 2 })).toEqual([-18, 27])
    expect(lateralsAcross({ lines: 5, laterals: 2, riserSide: 'right' })).toEqual([18, -27])
  })

  test('a ring takes two at least, and one line is fed straight', () => {
    expect(lateralsAcross({ feed: 'ring', laterals: 1 })).toEqual([-18, 18])
    expect(build(row({ feed: 'ring', lines: 1 })).feed!.kind).toBe('straight')
  })

  test('under the rails lie on the inner faces of the risers, side by side', () => {
    // Rails at 20, risers 3-1/2 in across, 3/4 in pipe 0.944 in over all: 20 - 1.75 - 0.472 = 17.778, the next 0.944 in.
    expect(lateralsAcross({ lateralAt: 'under-rail' })).toEqual([-17.778, 17.778])
    expect(lateralsAcross({ lateralAt: 'under-rail', laterals: 4 })).toEqual([
      -17.778, -16.834, 16.834, 17.778,
    ])
    expect(lateralsAcross({ lateralAt: 'under-rail', laterals: 1 })).toEqual([-17.778])
    expect(lateralsAcross({ lateralAt: 'under-rail', laterals: 1, riserSide: 'right' })).toEqual([17.778])
  })

  test('under the rails rest on the top ties, below the bars', () => {
    // The tie's top is 3/4 in under the centre of a plain hole, 69.375 - 0.75 = 68.625 over the foot and 2 more over the
    // plate, 70.625; half of 0.944 over that 71.097. The bars' underside is 72.75 - 0.922 = 71.828.
    const { lateralMm, barTopMm } = facts(row({ lateralAt: 'under-rail' }))
    expect(toInches(lateralMm)).toBeCloseTo(71.097, 2)
    expect(toInches(lateralMm) + 0.472).toBeLessThan(toInches(barTopMm) - 0.922)
  })

  test('rise from the inlet to the far end, whichever end that is', () => {
    const ends = (values: Partial<RackRow>) => {
      const { joints, laterals } = build(row({ lateralRiseMm: onTick(inches(2)), ...values })).feed!
      const [{ joints: run, riseMm }] = laterals as [(typeof laterals)[0]]
      return [joints[run[0]!]!.z, joints[run.at(-1)!]!.z, riseMm].map(
        (mm) => Math.round(toInches(mm) * 1000) / 1000,
      )
    }
    expect(ends({})).toEqual([76, 78, 2])
    expect(ends({ inlet: 'end' })).toEqual([78, 76, -2])
    // A split feed: 76 in the middle, the end of the row 2 in over its start.
    expect(ends({ feed: 'centre-split', inlet: 'end' })).toEqual([75, 77, 2])
  })
})

describe('a header', () => {
  const stock = (values: Partial<RackRow>) => build(row(values)).feed!.inletStock

  test('is one size over the lateral, in its own family', () => {
    expect(['pe-1/2', 'pe-3/4', 'pe-1'].map((lateral) => stock({ lateral } as Partial<RackRow>))).toEqual([
      'pe-3/4',
      'pe-1',
      'pe-1-1/4',
    ])
    expect(
      ['drip-1/2', 'drip-3/4', 'drip-1'].map((lateral) => stock({ lateral } as Partial<RackRow>)),
    ).toEqual(['drip-3/4', 'drip-1', 'drip-1'])
  })

  test('is what the builder says', () => {
    expect(stock({ header: 'pe-2' })).toBe('pe-2')
  })
})

describe('the valves', () => {
  test('stand 36 in up in the riser pipe, open all the way', () => {
    const { valves, joints } = build(row()).feed!
    expect(toInches(joints[valves!.from]!.z)).toBeCloseTo(36, 6)
    expect(joints[valves!.from]).toEqual(joints[valves!.to])
    expect(valves).toMatchObject({ isOpen: true, trimTurns: 5, trimTurnsAll: 5 })
    expect(toInches(valves!.boreMm)).toBeCloseTo(1.049, 6)
    // Union 0.08 and ball valve 0.05: tables of minor loss coefficients.
    expect(valves!.lossK).toBeCloseTo(0.13, 6)
  })

  test('stand at half height on a rack whose laterals lie lower than that', () => {
    const low = build(row({ towerMm: onTick(inches(24)), hookMm: onTick(inches(1.5)), footPlateMm: 0 })).feed!
    const head = low.joints[low.shareJoint]!.z
    expect(toInches(head)).toBeLessThan(40)
    expect(low.joints[low.valves!.from]!.z).toBeLessThan(head)
  })

  test('are turned as the builder says, and no further than they go', () => {
    const turns = (values: Partial<RackRow>) => build(row(values)).feed!.valves!
    expect(turns({ valve: 'shut' }).isOpen).toBe(false)
    expect(turns({ trimTurns: 2.5 }).trimTurns).toBe(2.5)
    expect(turns({ trimTurns: 12, trimTurnsAll: 4 }).trimTurns).toBe(4)
  })
})

describe('a row told from its other end', () => {
  const near = row({ racks: 2 })
  const turned = row({
    id: 'rack-row-2',
    racks: 1,
    at: at(100, 50 + 360),
    heading: 270,
    fallsTo: 'start',
    inlet: 'end',
  })

  test('chains whichever side its riser pipe was on: one riser pipe is left', () => {
    expect(rackRow.chain!(near, turned)?.racks).toBe(3)
    expect(rackRow.chain!(near, { ...turned, riserSide: 'right' })?.riserSide).toBe('left')
  })

  test('chains with tubes graded alike, and not with others', () => {
    const groups = () => [{ stations: 3, lengthMm: 1000 }]
    const graded = { ...near, gradedTubes: groups() }
    expect(rackRow.chain!(graded, { ...turned, gradedTubes: groups() })?.racks).toBe(3)
    expect(rackRow.chain!(graded, turned)).toBeUndefined()
  })

  test('tells a rise of a split feed from the other end', () => {
    const rising = { ...near, feed: 'centre-split', lateralRiseMm: 320 } as const
    const falling = { ...turned, feed: 'centre-split', lateralRiseMm: -320 } as const
    expect(rackRow.chain!(rising, falling)?.racks).toBe(3)
    expect(rackRow.chain!(rising, { ...falling, lateralRiseMm: 320 })).toBeUndefined()
  })
})
