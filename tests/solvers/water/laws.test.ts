import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pipeLoss } from '../../../src/solvers/water/friction'
import type { Network, Solution } from '../../../src/solvers/water/network'
import { waterAt } from '../../../src/solvers/water/properties'
import { headAt, pumpCurveOf } from '../../../src/solvers/water/pumpCurve'
import { solve } from '../../../src/solvers/water/solve'
import { type BaySketch, bayOf } from './bays'
import { missingAtJoints, solved } from './solved'

const runs = { seed: 20260, numRuns: 60 }

const bays: fc.Arbitrary<BaySketch> = fc.record({
  seed: fc.nat(1e6),
  zones: fc.integer({ min: 1, max: 5 }),
  laterals: fc.integer({ min: 1, max: 2 }),
  stations: fc.integer({ min: 1, max: 9 }),
  towers: fc.integer({ min: 1, max: 2 }),
  hasRings: fc.boolean(),
  hasRingMain: fc.boolean(),
  source: fc.constantFrom('pump', 'pumps-abreast', 'pumps-both-ends', 'head-box', 'pump-and-box'),
  shut: fc.constantFrom(0, 0.3),
  partOpen: fc.constantFrom(0, 0.5),
  unlevelM: fc.constantFrom(0.005, 0.1, 0.4),
  liftM: fc.constantFrom(1.2, 2, 2.6, 4),
})

const NU = waterAt(20).kinematicM2S

/** Head that each link misses at its flow, m: from end to end less what it loses; more than 0 also where it is shut. */
const missesOf = (network: Network, solution: Solution): number[] => {
  const { pipes, valves, pumps, mouths } = network
  const drop = (from: number, to: number) => solution.headM[from]! - solution.headM[to]!
  const pipe = (lengthM: number, boreM: number, lossK: number) => ({ lengthM, boreM, lossK })
  const oneWay = (flow: number, driven: number, lost: number) =>
    flow > 0 ? driven - lost : Math.max(0, driven)
  const misses = [
    ...Array.from(solution.pipeM3S, (flow, i) => {
      const of = pipe(pipes.lengthM[i]!, pipes.boreM[i]!, pipes.lossK[i]!)
      return drop(pipes.from[i]!, pipes.to[i]!) - pipeLoss(flow, of, NU)
    }),
    ...Array.from(solution.valveM3S, (flow, i) => {
      if (valves.isOpen[i] === 0) return 0
      const lost = pipeLoss(flow, pipe(0, valves.boreM[i]!, valves.lossK[i]!), NU)
      const driven = drop(valves.from[i]!, valves.to[i]!)
      return valves.isCheck[i] === 1 ? oneWay(flow, driven, lost) : driven - lost
    }),
    ...Array.from(solution.pumpM3S, (flow, i) => {
      const curve = pumpCurveOf(pumps.curves[pumps.curve[i]!]!)
      const lift = curve.ok ? headAt(curve, flow, pumps.speed[i]!) : NaN
      expect(solution.pumpHeadM[i]).toBeCloseTo(lift, 9)
      return oneWay(flow, drop(pumps.from[i]!, pumps.to[i]!) + lift, 0)
    }),
    ...Array.from(solution.mouthM3S, (flow, i) => {
      const over = solution.headM[mouths.from[i]!]! - mouths.levelM[i]!
      return oneWay(
        flow,
        over,
        pipeLoss(flow, pipe(mouths.lengthM[i]!, mouths.boreM[i]!, mouths.lossK[i]!), NU),
      )
    }),
  ]
  return misses.filter((missed) => !Number.isNaN(missed))
}

const most = (values: Iterable<number>): number => {
  let largest = 0
  for (const value of values) largest = Math.max(largest, Math.abs(value))
  return largest
}

describe('in any bay', () => {
  test('as much water comes to each joint as leaves it', () => {
    fc.assert(
      fc.property(bays, (sketch) => {
        const network = bayOf(sketch).network()
        const solution = solved(solve(network))
        expect(solution.isSettled).toBe(true)
        const through = most([...solution.pipeM3S, 1e-6])
        expect(most(missingAtJoints(network, solution))).toBeLessThan(1e-6 * through)
      }),
      runs,
    )
  })

  test('each link loses the head between its ends, and what is shut is not pressed open', () => {
    fc.assert(
      fc.property(bays, (sketch) => {
        const network = bayOf(sketch).network()
        expect(most(missesOf(network, solved(solve(network))))).toBeLessThan(1e-5)
      }),
      runs,
    )
  })

  test('no water runs from low to high without a pump, backwards through a pump, or into a mouth', () => {
    fc.assert(
      fc.property(bays, (sketch) => {
        const network = bayOf(sketch).network()
        const solution = solved(solve(network))
        const { pipes } = network
        solution.pipeM3S.forEach((flow, i) => {
          const drop = solution.headM[pipes.from[i]!]! - solution.headM[pipes.to[i]!]!
          if (Math.abs(flow) > 1e-9) expect(flow * drop).toBeGreaterThanOrEqual(-1e-15)
        })
        for (const flows of [solution.pumpM3S, solution.mouthM3S]) expect(Math.min(...flows, 0)).toBe(0)
      }),
      runs,
    )
  })

  test('starting from another answer gives the same answer', () => {
    fc.assert(
      fc.property(bays, fc.double({ min: 0, max: 300, noNaN: true }), fc.nat(1000), (sketch, lossK, pick) => {
        const before = bayOf(sketch).network()
        const after = bayOf(sketch).network()
        after.valves.lossK[pick % after.valves.lossK.length] = lossK
        after.mouths.levelM[pick % after.mouths.levelM.length]! += 0.02
        after.valves.isOpen[(pick * 7) % after.valves.isOpen.length]! ^= 1
        const warm = solved(solve(after, {}, solved(solve(before))))
        const cold = solved(solve(after))
        expect(warm.isSettled).toBe(true)
        for (const list of ['pipeM3S', 'valveM3S', 'pumpM3S', 'mouthM3S'] as const)
          expect(most(warm[list].map((flow, i) => flow - cold[list][i]!))).toBeLessThan(2e-9)
        expect(warm.headM.map((head) => (Number.isNaN(head) ? 1 : 0))).toEqual(
          cold.headM.map((head) => (Number.isNaN(head) ? 1 : 0)),
        )
      }),
      runs,
    )
  })

  test('a faster pump gives every tower as much or more', () => {
    fc.assert(
      fc.property(bays, (sketch) => {
        const [slow, fast] = [0.9, 1.1].map((speed) => {
          const network = bayOf(sketch).network()
          network.pumps.speed.fill(speed)
          return solved(solve(network)).mouthM3S
        })
        slow!.forEach((flow, i) => {
          expect(fast![i]! - flow).toBeGreaterThan(-1e-9)
        })
      }),
      runs,
    )
  })

  test('a shut valve is a branch that is not there', () => {
    fc.assert(
      fc.property(bays, (sketch) => {
        const net = bayOf({ ...sketch, shut: 0 })
        const without = bayOf({ ...sketch, shut: 0 })
        const last = net.valves.length - 1
        net.valves[last]![4] = 0
        // The last row's header and what hangs from it were added last, so all nodes from there on go with the valve.
        const header = net.valves[last]![1]! - 1
        const stays = (row: number[], ends: number) => row.slice(0, ends).every((node) => node < header)
        const keep = (rows: number[][], ends: number) =>
          rows.splice(0, Infinity, ...rows.filter((row) => stays(row, ends)))
        keep(without.pipes, 2)
        keep(without.valves, 2)
        keep(without.mouths, 1)
        without.draws.length = header - without.levels.length
        const shut = solved(solve(net.network()))
        const gone = solved(solve(without.network()))
        gone.mouthM3S.forEach((flow, i) => expect(shut.mouthM3S[i]).toBeCloseTo(flow, 9))
        expect(shut.mouthM3S.subarray(gone.mouthM3S.length).every((flow) => flow === 0)).toBe(true)
        expect(shut.headM[header]).toBeNaN()
      }),
      runs,
    )
  })
})
