import fc from 'fast-check'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { inches, onTick } from '../../src/units/length'

const length = (from: number, to: number) =>
  fc.integer({ min: from * 8, max: to * 8 }).map((eighths) => onTick(inches(eighths / 8)))

const oneOf = <T extends string>(...values: readonly T[]) => fc.constantFrom(...values)

const tubeGroup = fc.record({ stations: fc.integer({ min: 1, max: 12 }), lengthMm: length(6, 100) })

/** Any feed that a person could ask for, by the ranges of its fields. */
export const anyFeed = fc.record({
  feed: oneOf('straight', 'centre-split', 'double-split', 'ring'),
  laterals: fc.integer({ min: 1, max: 5 }),
  lateral: oneOf('pe-1/2', 'pe-3/4', 'pe-1', 'drip-1/2', 'drip-3/4', 'drip-1'),
  header: oneOf('next-up', 'pe-3/4', 'pe-1-1/4', 'pe-2', 'drip-1/2', 'drip-1'),
  lateralAt: oneOf('above-bars', 'under-rail'),
  lateralSagMm: length(0, 2),
  lateralRiseMm: length(-4, 4),
  microtube: oneOf('tube-1/8', 'tube-1/4'),
  microtubeMm: length(6, 60),
  tubeSlackMm: length(0, 12),
  gradedTubes: fc.array(tubeGroup, { maxLength: 4 }),
  flushEnd: oneOf('cap', 'valve', 'none'),
  sightTube: fc.boolean(),
  inlet: oneOf('start', 'end'),
  riserAt: oneOf('middle', 'inlet-end'),
  riserSide: oneOf('left', 'right'),
  valveSet: oneOf('own', 'shared'),
  valve: oneOf('open', 'shut'),
  trimTurns: fc.option(fc.integer({ min: 1, max: 24 }).map((quarters) => quarters / 4)),
})

export type FeedValues = Pick<RackRow, 'feed'>
