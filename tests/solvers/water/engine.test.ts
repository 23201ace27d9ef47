import { beforeAll, describe, expect, test, vi } from 'vitest'
import type { Network, Solution } from '../../../src/solvers/water/network'
import { solve } from '../../../src/solvers/water/solve'
import { type BaySketch, bayOf } from './bays'
import { type Engine, startEngine } from './engine'
import { solved } from './solved'

/*
 * Every kind of network against an independent engine with the same friction law: each tower within 0.1 % of its flow, or of
 * a tenth of the mean flow for a tower that gets less.
 */
const SHARE = 1e-3

/** What a tower usually gets. */
const USUAL_M3S = 2.6e-6

let engine: Engine
beforeAll(async () => {
  // It warns where its pump can't lift, which is what is asked.
  vi.spyOn(console, 'warn').mockImplementation(() => undefined)
  engine = await startEngine()
})

const meanOf = (flows: Float64Array): number => flows.reduce((sum, flow) => sum + flow, 0) / flows.length

/** The most by which two lists of flows differ, in shares of each or of a tenth of the mean. */
const furthest = (ours: Float64Array, theirs: Float64Array, meanM3S: number): number =>
  ours.reduce(
    (most, flow, i) => Math.max(most, Math.abs(flow - theirs[i]!) / Math.max(Math.abs(flow), meanM3S / 10)),
    0,
  )

const headsApart = ({ levels }: Network, { headM }: Solution, theirs: Float64Array): number =>
  theirs.reduce((most, head, joint) => {
    const ours = headM[levels.length + joint]!
    return Number.isNaN(ours) ? most : Math.max(most, Math.abs(ours - head))
  }, 0)

/** The engine leaves some water moving where nothing moves: less than a hundredth of what a tower usually gets. */
const expectStill = (network: Network): void => {
  const ours = solved(solve(network))
  expect(ours.isSettled).toBe(true)
  expect(Math.max(...ours.mouthM3S, ...ours.pumpM3S)).toBe(0)
  expect(Math.max(...engine.answer(network, 20).mouthM3S)).toBeLessThan(USUAL_M3S / 100)
}

const compare = (network: Network, temperatureC = 20): void => {
  const ours = solved(solve(network, { temperatureC }))
  const theirs = engine.answer(network, temperatureC)
  expect(ours.isSettled).toBe(true)
  const mean = meanOf(ours.mouthM3S)
  expect(mean).toBeGreaterThan(0)
  expect(furthest(ours.mouthM3S, theirs.mouthM3S, mean)).toBeLessThan(SHARE)
  expect(furthest(ours.pumpM3S, theirs.pumpM3S, mean * ours.mouthM3S.length)).toBeLessThan(SHARE)
  expect(furthest(ours.pipeM3S, theirs.pipeM3S, mean)).toBeLessThan(2 * SHARE)
  expect(headsApart(network, ours, theirs.jointHeadM)).toBeLessThan(2e-4)
}

const plain: BaySketch = { seed: 1, zones: 6, laterals: 2, stations: 12, towers: 2, source: 'pump' }

const sources = ['pump', 'pumps-abreast', 'pumps-both-ends', 'head-box', 'pump-and-box'] as const

describe.each(sources)('a bay fed by %s agrees with an independent engine', (source) => {
  test.each<[string, Partial<BaySketch>]>([
    ['as a tree', {}],
    ['with valves part open', { partOpen: 0.6, seed: 2 }],
    ['with valves shut and part open', { partOpen: 0.4, shut: 0.4, seed: 3 }],
    ['with laterals in rings', { hasRings: true, seed: 4 }],
    ['with a ring main', { hasRingMain: true, seed: 5 }],
    ['with rings everywhere and valves shut', { hasRings: true, hasRingMain: true, shut: 0.3, seed: 6 }],
    ['with mouths that run dry', { liftM: 2.2, unlevelM: 0.3, seed: 7 }],
    ['with rings and mouths that run dry', { liftM: 2.1, unlevelM: 0.3, hasRings: true, seed: 8 }],
    ['with one zone of ten towers a lateral', { zones: 1, stations: 10, towers: 1, seed: 9 }],
  ])('%s', (_, more) => {
    compare(bayOf({ ...plain, source, ...more }).network())
  })
})

describe('an independent engine agrees', () => {
  test('where no pump lifts as high as a mouth', () => {
    for (const source of ['pump', 'pumps-abreast', 'pumps-both-ends'] as const)
      expectStill(bayOf({ ...plain, source, liftM: 1.4, unlevelM: 0.01 }).network())
  })

  test.each([4, 12, 28, 38])('in water of %i degrees C', (temperatureC) => {
    compare(bayOf({ ...plain, seed: 10 + temperatureC, hasRings: true }).network(), temperatureC)
  })

  test.each([
    [20, { zones: 1, laterals: 2, stations: 5 }],
    [240, { zones: 5, laterals: 2, stations: 12 }],
    [960, { zones: 10, laterals: 2, stations: 24, hasRings: true }],
    [2016, { zones: 21, laterals: 2, stations: 24, hasRingMain: true, source: 'pumps-both-ends' as const }],
  ])('on %i towers', (towers, more) => {
    const network = bayOf({ ...plain, ...more, seed: towers, partOpen: 0.5 }).network()
    expect(network.mouths.from).toHaveLength(towers)
    compare(network)
  })
})
