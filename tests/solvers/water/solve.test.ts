import { describe, expect, test } from 'vitest'
import type { Network } from '../../../src/solvers/water/network'
import { solve } from '../../../src/solvers/water/solve'
import { bayOf } from './bays'
import { Net } from './netOf'
import { missingAtJoints, sentenceOf, solved } from './solved'

const steep = [
  [0, 3],
  [1e-4, 2],
  [2e-4, 0.5],
] as const

/** Pit, pump, a pipe and one tube: `change` alters it before it is closed. */
const small = (change: (net: Net) => void = () => undefined): Network => {
  const net = new Net()
  const pit = net.level(0)
  const outlet = net.joint()
  const tee = net.joint()
  net.pump(pit, outlet, net.curve(steep))
  net.pipe(outlet, tee)
  net.mouth(tee, 1.9)
  change(net)
  return net.network()
}

describe('a fault says what is wrong, with its numbers', () => {
  const long = { lengthM: NaN }
  test.each<[string, Network, string]>([
    [
      'no open level',
      { ...small(), levels: new Float64Array(0) },
      'There is no open level for 2 joints: no head is known to count from.',
    ],
    [
      'a joint tied to nothing',
      small((net) => net.joint()),
      'Joint 2 is tied to no open level, whatever valve is open.',
    ],
    [
      'two joints tied to each other alone',
      small((net) => net.pipe(net.joint(), net.joint())),
      'Joint 3 is tied to no open level, whatever valve is open.',
    ],
    [
      'a ring tied to itself alone',
      small((net) => {
        const ring = [net.joint(), net.joint(), net.joint()]
        ring.forEach((joint, i) => net.pipe(joint, ring[(i + 1) % 3]!))
      }),
      'Joint 2 is tied to no open level, whatever valve is open.',
    ],
    [
      'a length that is no number',
      small((net) => net.pipe(1, 2, long)),
      'The length in m of pipe 1 is NaN; it must be 0 or more.',
    ],
    [
      'a length below nothing',
      small((net) => net.mouth(2, 1, { lengthM: -0.5 })),
      'The length in m of mouth 1 is -0.5; it must be 0 or more.',
    ],
    [
      'a bore of nothing',
      small((net) => net.valve(1, 2, { boreM: 0 })),
      'The bore in m of valve 0 is 0; it must be more than 0.',
    ],
    [
      'an endless loss',
      small((net) => net.valve(1, 2, { lossK: Infinity })),
      'The loss in velocity heads of valve 0 is Infinity; it must be 0 or more.',
    ],
    [
      'a level that is no number',
      small((net) => net.mouth(2, NaN)),
      'The level in m of mouth 1 is NaN; it must be a number.',
    ],
    [
      'a draw that is no number',
      small((net) => net.pipe(2, net.joint(Infinity))),
      'The draw in m3/s of joint 2 is Infinity; it must be a number.',
    ],
    [
      'a node that is not there',
      small((net) => net.pipe(1, 9)),
      'The to of pipe 1 is 9, but there are 3 levels and joints, counted from 0.',
    ],
    ['a link from a node to itself', small((net) => net.pipe(2, 2)), 'Both ends of pipe 1 are at node 2.'],
    [
      'a curve that is not there',
      small((net) => net.pump(0, 2, 3)),
      'The curve of pump 1 is 3, but there are 1 curves, counted from 0.',
    ],
    [
      'a speed below nothing',
      small((net) => net.pump(0, 2, 0, -1)),
      'The speed of pump 1 is -1; it must be 0 or more.',
    ],
  ])('%s', (_, network, sentence) => {
    expect(sentenceOf(solve(network))).toBe(sentence)
  })

  test('a curve of two points, and one that rises', () => {
    const short = small((net) => net.curve([[0, 3], [1e-4, 2]])) // prettier-ignore
    expect(sentenceOf(solve(short))).toMatch(/^Curve 1: .*needs 3 points or more; it has 2\.$/)
    const rising = small((net) => net.curve([[0, 3], [1e-4, 3.5], [2e-4, 1]])) // prettier-ignore
    expect(sentenceOf(solve(rising))).toMatch(/^Curve 1: .*rises in head from 3 to 3\.5 m/)
  })

  test('arrays of one sort that differ in length', () => {
    const network = small()
    const { pipes } = network
    const torn = { ...network, pipes: { ...pipes, boreM: pipes.boreM.subarray(1) } }
    expect(sentenceOf(solve(torn))).toBe('The arrays of the pipes differ in length: 1 from, 0 bores.')
  })

  test('ice', () => {
    expect(sentenceOf(solve(small(), { temperatureC: -3 }))).toBe(
      'The water is at -3 °C; it must be from 0 to 60.',
    )
  })

  test('a fault is found as well when there is a solution to start from', () => {
    const network = small()
    const before = solved(solve(network))
    network.pipes.boreM[0] = -1
    expect(sentenceOf(solve(network, {}, before))).toMatch(/bore in m of pipe 0 is -1/)
  })
})

describe('a result, not a fault', () => {
  test('a pump that lifts to 1.5 m under a mouth at 1.9 m: nothing flows, and the head shows by how much it lacks', () => {
    const net = small()
    const low = { flowM3S: Float64Array.of(0, 1e-4, 2e-4), headM: Float64Array.of(1.5, 1, 0.2) }
    const solution = solved(solve({ ...net, pumps: { ...net.pumps, curves: [low] } }))
    expect(solution.isSettled).toBe(true)
    expect([...solution.mouthM3S, ...solution.pumpM3S, ...solution.pipeM3S]).toEqual([0, 0, 0])
    expect(solution.pumpHeadM[0]).toBe(1.5)
    expect(solution.headM[2]).toBeCloseTo(1.5, 6)
  })

  test('a pump that stands: the main falls to the pit', () => {
    const network = small()
    network.pumps.speed.fill(0)
    const solution = solved(solve(network))
    expect([...solution.mouthM3S, ...solution.pumpM3S, ...solution.pumpHeadM]).toEqual([0, 0, 0])
    expect(solution.headM[1]).toBeCloseTo(0, 6)
  })

  test('a pump that stands beside one that runs lets nothing back', () => {
    const network = small((net) => net.pump(0, 1, 0, 0))
    const alone = solved(solve(small()))
    const beside = solved(solve(network))
    expect(beside.pumpM3S[1]).toBe(0)
    expect(beside.mouthM3S[0]).toBeCloseTo(alone.mouthM3S[0]!, 12)
  })

  test('no mouths, no joints, no links', () => {
    expect(solved(solve(new NetWithLevel(2).network())).headM).toEqual(Float64Array.of(2))
  })

  test('every joint dry, a mouth on a level, a mouth at the very head', () => {
    const net = new Net()
    const box = net.level(1)
    const end = net.joint()
    net.pipe(box, end)
    net.mouth(end, 5)
    net.mouth(box, 0)
    net.mouth(end, 1)
    const [dry, wet, still] = solved(solve(net.network())).mouthM3S
    expect([dry, still]).toEqual([0, 0])
    expect(wet).toBeGreaterThan(1e-6)
  })

  test('pipes without length and valves without loss: the head goes through, and so does the flow', () => {
    const net = new Net()
    let at = net.level(1)
    for (let i = 0; i < 5; i += 1) {
      const next = net.joint()
      if (i % 2 === 0) net.pipe(at, next, { lengthM: 0 })
      else net.valve(at, next, { lossK: 0 })
      at = next
    }
    net.mouth(at, 0)
    const solution = solved(solve(net.network()))
    expect(solution.headM[at]).toBe(1)
    expect(solution.pipeM3S[0]).toBe(solution.mouthM3S[0])
  })

  test('a ring without any loss', () => {
    const net = new Net()
    const box = net.level(1)
    const ring = [net.joint(), net.joint(), net.joint()]
    net.pipe(box, ring[0]!)
    ring.forEach((joint, i) => net.valve(joint, ring[(i + 1) % 3]!, { lossK: 0 }))
    ring.forEach((joint) => net.mouth(joint, 0))
    const network = net.network()
    const solution = solved(solve(network))
    expect(solution.isSettled).toBe(true)
    expect(Math.max(...missingAtJoints(network, solution).map(Math.abs))).toBeLessThan(1e-12)
    for (const joint of ring) expect(solution.headM[joint]).toBeCloseTo(solution.headM[ring[0]!]!, 6)
  })

  test('a mouth with neither length nor loss holds its joint at its level', () => {
    const net = new Net()
    const joint = (net.level(1), net.joint())
    net.pipe(0, joint, { lengthM: 10, boreM: 0.01 })
    net.mouth(joint, 0.2, { lengthM: 0, lossK: 0 })
    const solution = solved(solve(net.network()))
    expect(solution.headM[joint]).toBeCloseTo(0.2, 5)
    expect(solution.mouthM3S[0]).toBeCloseTo(solution.pipeM3S[0]!, 12)
  })

  test('a pump with a level curve', () => {
    const flat = [
      [0, 2.5],
      [1e-4, 2.5],
      [3e-4, 0.1],
    ] as const
    const net = new Net()
    const outlet = (net.level(0), net.joint())
    net.pump(0, outlet, net.curve(flat))
    net.mouth(outlet, 1.9)
    net.pump(0, outlet, 0)
    const solution = solved(solve(net.network()))
    expect(solution.isSettled).toBe(true)
    expect(solution.headM[outlet]).toBeCloseTo(2.5, 6)
    expect(solution.pumpM3S[0]! + solution.pumpM3S[1]!).toBeCloseTo(solution.mouthM3S[0]!, 12)
  })

  test('draws at joints are met, also under their level, and what is put in runs back to a level', () => {
    const net = new Net()
    net.level(0)
    const [a, b] = [net.joint(2e-5), net.joint(-5e-5)]
    net.pipe(0, a)
    net.pipe(a, b)
    const solution = solved(solve(net.network()))
    expect(solution.pipeM3S[0]).toBeCloseTo(-3e-5, 12)
    expect(solution.pipeM3S[1]).toBeCloseTo(-5e-5, 12)
    expect(solution.headM[b]).toBeGreaterThan(solution.headM[a]!)
  })

  test('two levels with nothing between them but links', () => {
    const net = new Net()
    net.level(1)
    net.level(0)
    net.pipe(0, 1, { lengthM: 10, boreM: 0.02 })
    net.valve(1, 0, { isCheck: true })
    net.pump(1, 0, net.curve(steep), 0.1)
    const solution = solved(solve(net.network()))
    expect(solution.isSettled).toBe(true)
    expect(solution.pipeM3S[0]).toBeGreaterThan(1e-4)
    expect([...solution.valveM3S, ...solution.pumpM3S]).toEqual([0, 0])
  })

  test('a check valve the wrong way round', () => {
    const net = new Net()
    const [near, far] = [(net.level(3), net.joint()), net.joint()]
    net.pipe(0, near)
    net.valve(far, near, { isCheck: true })
    net.mouth(near, 1)
    net.mouth(far, 1)
    const solution = solved(solve(net.network()))
    expect(solution.mouthM3S[0]).toBeGreaterThan(0)
    expect([...solution.mouthM3S.subarray(1), ...solution.valveM3S]).toEqual([0, 0])
  })

  test('too few sweeps: the numbers are the last ones and it says so', () => {
    const network = bayOf({
      seed: 3,
      zones: 3,
      laterals: 2,
      stations: 9,
      towers: 2,
      source: 'pump',
    }).network()
    const hasty = solved(solve(network, { mostSweeps: 2 }))
    expect([hasty.isSettled, hasty.sweeps]).toEqual([false, 2])
    expect(hasty.largestChangeM).toBeGreaterThan(1e-5)
  })
})

class NetWithLevel extends Net {
  constructor(headM: number) {
    super()
    this.level(headM)
  }
}

describe('what is shut off', () => {
  const ringed = (shut: readonly number[]): Network => {
    const net = new Net()
    const joints = [(net.level(2), net.joint()), net.joint(), net.joint()]
    net.pipe(0, joints[0]!)
    joints.forEach((joint, i) => net.valve(joint, joints[(i + 1) % 3]!, { isOpen: !shut.includes(i) }))
    const end = net.joint()
    net.pipe(joints[1]!, end)
    for (const joint of [...joints, end]) net.mouth(joint, 1)
    return net.network()
  }

  test('one shut valve in a ring cuts nothing off', () => {
    const { headM, mouthM3S } = solved(solve(ringed([0])))
    expect(headM.some(Number.isNaN)).toBe(false)
    expect(Math.min(...mouthM3S)).toBeGreaterThan(0)
  })

  test('two cut off the joint between them and what hangs from it: no heads, no flows', () => {
    const { headM, mouthM3S, pipeM3S, isSettled } = solved(solve(ringed([0, 1])))
    expect(isSettled).toBe(true)
    expect([...headM].map(Number.isNaN)).toEqual([false, false, true, false, true])
    expect(mouthM3S.map((flow) => (flow > 0 ? 1 : 0))).toEqual(Float64Array.of(1, 0, 1, 0))
    expect(pipeM3S[1]).toBe(0)
  })

  test('opened again it comes back, from the shut answer as from nothing', () => {
    const shut = solved(solve(ringed([0, 1])))
    const warm = solved(solve(ringed([]), {}, shut))
    const cold = solved(solve(ringed([])))
    warm.mouthM3S.forEach((flow, i) => expect(flow).toBeCloseTo(cold.mouthM3S[i]!, 10))
  })
})

test('no argument is changed, and an older answer may be the start of a newer one', () => {
  const sketch = { seed: 5, zones: 3, laterals: 2, stations: 6, towers: 2, source: 'pump' } as const
  const network = bayOf(sketch).network()
  const kept = JSON.stringify(network)
  const first = solved(solve(network))
  const text = JSON.stringify(first)
  const other = bayOf(sketch).network()
  other.valves.lossK.fill(30)
  const second = solved(solve(other, {}, first))
  const third = solved(solve(network, {}, first))
  expect(JSON.stringify(network)).toBe(kept)
  expect(JSON.stringify(first)).toBe(text)
  expect(third.sweeps).toBeLessThanOrEqual(2)
  third.mouthM3S.forEach((flow, i) => expect(flow).toBeCloseTo(first.mouthM3S[i]!, 11))
  expect(second.mouthM3S[0]).not.toBeCloseTo(first.mouthM3S[0]!, 9)
})
