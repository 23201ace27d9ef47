import { describe, expect, test } from 'vitest'
import type { Network } from '../../../src/solvers/water/network'
import { waterAt } from '../../../src/solvers/water/properties'
import { solve } from '../../../src/solvers/water/solve'
import { bayOf, chanceFrom } from './bays'
import { Net } from './netOf'
import { solved } from './solved'

/** A head box, a main and tubes without end losses, all in smooth flow: a network of nothing but straight resistances. */
const smoothTree = (headM: number): Network => {
  const net = new Net()
  const box = net.level(headM)
  let at = box
  for (let station = 0; station < 8; station += 1) {
    const next = net.joint()
    net.pipe(at, next, { lengthM: 2, boreM: 0.02 })
    net.mouth(next, 0, { lengthM: 1 + station / 10, boreM: 0.003, lossK: 0 })
    at = next
  }
  return net.network()
}

const flowsOf = (network: Network, temperatureC = 20): number[] => [
  ...solved(solve(network, { temperatureC, toleranceM: 1e-9 })).mouthM3S,
]

describe('in smooth flow without end losses', () => {
  test('twice the head gives twice the flow', () => {
    const once = flowsOf(smoothTree(0.05))
    flowsOf(smoothTree(0.1)).forEach((flow, i) => expect(flow / once[i]!).toBeCloseTo(2, 9))
  })

  test('flow goes with the inverse of the viscosity', () => {
    const ratio = waterAt(10).kinematicM2S / waterAt(30).kinematicM2S
    const cold = flowsOf(smoothTree(0.06), 10)
    flowsOf(smoothTree(0.06), 30).forEach((flow, i) => expect(flow / cold[i]!).toBeCloseTo(ratio, 9))
  })

  test('one tube takes what Hagen and Poiseuille say', () => {
    const net = new Net()
    net.mouth(net.level(0.05), 0, { lengthM: 1, boreM: 0.003, lossK: 0 })
    net.joint()
    net.pipe(0, 1)
    // Q = pi g D^4 h / (128 nu L) = 3.14159 * 9.80665 * 8.1e-11 * 0.05 / (128 * 1.0038e-6 * 1) = 9.711e-7 m3/s
    expect(flowsOf(net.network())[0]! / 9.711e-7).toBeCloseTo(1, 3)
  })
})

/** The same network with its nodes in another order and every pipe turned round. */
const shuffled = (network: Network, seed: number): { network: Network; nodeOf: (node: number) => number } => {
  const { levels, joints, pipes, valves, pumps, mouths } = network
  const chance = chanceFrom(seed)
  const order = Array.from(joints, (_, i) => ({ i, by: chance() })).sort((a, b) => a.by - b.by)
  const place = new Map(order.map(({ i }, at) => [i, at]))
  const nodeOf = (node: number) =>
    node < levels.length ? node : levels.length + place.get(node - levels.length)!
  const moved = <Ends extends { from: Int32Array; to: Int32Array }>(links: Ends, isTurned = false): Ends => ({
    ...links,
    from: (isTurned ? links.to : links.from).map(nodeOf),
    to: (isTurned ? links.from : links.to).map(nodeOf),
  })
  return {
    nodeOf,
    network: {
      levels,
      joints: Float64Array.from(order, ({ i }) => joints[i]!),
      pipes: moved(pipes, true),
      valves: moved(valves),
      pumps: moved(pumps),
      mouths: { ...mouths, from: mouths.from.map(nodeOf) },
    },
  }
}

describe('the same bay drawn otherwise', () => {
  test.each([11, 12, 13, 14])('in another order, its pipes turned round: seed %i', (seed) => {
    const network = bayOf({
      seed,
      zones: 4,
      laterals: 2,
      stations: 8,
      towers: 2,
      source: seed % 2 === 0 ? 'pumps-both-ends' : 'pump-and-box',
      hasRings: seed > 12,
      hasRingMain: true,
      partOpen: 0.5,
    }).network()
    const other = shuffled(network, seed)
    const ours = solved(solve(network, { toleranceM: 1e-8 }))
    const theirs = solved(solve(other.network, { toleranceM: 1e-8 }))
    ours.mouthM3S.forEach((flow, i) => expect(theirs.mouthM3S[i]).toBeCloseTo(flow, 11))
    ours.pipeM3S.forEach((flow, i) => expect(theirs.pipeM3S[i]).toBeCloseTo(-flow, 9))
    ours.headM.forEach((head, node) => expect(theirs.headM[other.nodeOf(node)]).toBeCloseTo(head, 6))
  })

  test('two halves off one pump that mirror each other get the same', () => {
    const net = new Net()
    const sump = net.level(0)
    const outlet = net.joint()
    const curve = net.curve([
      [0, 4],
      [1e-4, 3],
      [2e-4, 1],
    ])
    net.pump(sump, outlet, curve)
    for (let half = 0; half < 2; half += 1) {
      let at = outlet
      for (let station = 0; station < 12; station += 1) {
        const next = net.joint()
        if (half === 0) net.pipe(at, next, { lengthM: 0.4, boreM: 0.0209, lossK: 0.2 })
        else net.pipe(next, at, { lengthM: 0.4, boreM: 0.0209, lossK: 0.2 })
        net.mouth(next, 1.9)
        at = next
      }
    }
    const flows = flowsOf(net.network())
    const mirrored = [...flows.slice(12), ...flows.slice(0, 12)]
    flows.forEach((flow, i) => expect(flow / mirrored[i]!).toBeCloseTo(1, 9))
    expect(flows[0]! / flows[11]!).toBeGreaterThan(1)
  })

  test('a second bay on its own pump changes nothing in the first', () => {
    const alone = bayOf({ seed: 21, zones: 2, laterals: 2, stations: 6, towers: 1, source: 'pump' })
    const before = flowsOf(alone.network())
    const outlet = alone.joint()
    const tee = alone.joint()
    alone.pump(0, outlet, 0)
    alone.pipe(outlet, tee)
    alone.mouth(tee, 1)
    const after = flowsOf(alone.network())
    before.forEach((flow, i) => expect(after[i]! / flow).toBeCloseTo(1, 9))
  })
})
