import { Net } from './netOf'

/** Repeatable chance between 0 and 1 (mulberry32). */
export const chanceFrom = (seed: number): (() => number) => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

export interface BaySketch {
  readonly seed: number
  readonly zones: number
  /** Laterals a zone, stations a lateral, towers a station. */
  readonly laterals: number
  readonly stations: number
  readonly towers: number
  /** A lateral pair joined at its far end. */
  readonly hasRings?: boolean
  readonly hasRingMain?: boolean
  readonly source: 'pump' | 'pumps-abreast' | 'pumps-both-ends' | 'head-box' | 'pump-and-box'
  /** Share of the zone valves that are shut, and of those that are part open. */
  readonly shut?: number
  readonly partOpen?: number
  /** Spread of the mouths' levels to either side, m. */
  readonly unlevelM?: number
  /** Lift of the pump at no flow, m; the laterals lie 1.9 m over the sump. */
  readonly liftM?: number
}

const SUMP_M = 0
const LATERAL_M = 1.9

/** A bay such as a grower would pipe it, with lengths, bores and levels that vary by a seed. */
export const bayOf = (sketch: BaySketch): Net => {
  const { zones, laterals, stations, towers, source } = sketch
  const chance = chanceFrom(sketch.seed)
  const between = (low: number, high: number) => low + (high - low) * chance()
  const count = zones * laterals * stations * towers
  const designM3S = count * 2.6e-6
  const net = new Net()
  const sump = net.level(SUMP_M)
  const box = source === 'head-box' || source === 'pump-and-box' ? net.level(LATERAL_M + 0.3) : -1
  const mainBore = Math.max(0.0266, Math.sqrt((4 * designM3S) / (Math.PI * 0.7)))
  const lift = sketch.liftM ?? between(3, 5)
  const pumpInto = (from: number, at: number, share: number) => {
    const q = designM3S * share
    const curve = net.curve([
      [0, lift],
      [0.5 * q, 0.93 * lift],
      [q, 0.75 * lift],
      [2 * q, 0.1 * lift],
    ])
    const outlet = net.joint()
    net.pump(from, outlet, curve, between(0.95, 1.02))
    const checked = net.joint()
    net.valve(outlet, checked, { boreM: mainBore, lossK: 2.5, isCheck: true })
    net.pipe(checked, at, { lengthM: between(2, 5), boreM: mainBore, lossK: between(1, 6) })
  }
  const tees: number[] = []
  for (let zone = 0; zone < zones; zone += 1) {
    const tee = net.joint()
    const before = tees.at(-1)
    if (before !== undefined)
      net.pipe(before, tee, { lengthM: between(1.5, 3), boreM: mainBore, lossK: between(0, 1) })
    tees.push(tee)
  }
  const [near, far] = [tees[0]!, tees.at(-1)!]
  if (sketch.hasRingMain && zones > 2) net.pipe(far, near, { lengthM: between(8, 20), boreM: mainBore })
  if (source === 'head-box') net.pipe(box, near, { lengthM: 3, boreM: mainBore * 1.3, lossK: 2 })
  else pumpInto(sump, near, source === 'pump' || source === 'pump-and-box' ? 1 : 0.5)
  if (source === 'pumps-abreast') pumpInto(sump, near, 0.6)
  if (source === 'pumps-both-ends') pumpInto(sump, far, 0.5)
  if (source === 'pump-and-box') net.pipe(box, far, { lengthM: 3, boreM: mainBore, lossK: 2 })
  for (const tee of tees) {
    const header = net.joint()
    const isShut = chance() < (sketch.shut ?? 0)
    const isPart = chance() < (sketch.partOpen ?? 0)
    const valved = net.joint()
    net.valve(tee, valved, { lossK: isPart ? between(5, 300) : 0.2, isOpen: !isShut })
    net.pipe(valved, header, { lengthM: between(1, 2.5), boreM: 0.0266, lossK: between(0, 3) })
    const bore = chance() < 0.5 ? 0.0152 : 0.0209
    const ends: number[] = []
    for (let lateral = 0; lateral < laterals; lateral += 1) {
      let at = net.joint()
      net.pipe(header, at, { lengthM: between(0.2, 0.5), boreM: 0.0209, lossK: between(0, 2) })
      for (let station = 0; station < stations; station += 1) {
        const next = net.joint()
        net.pipe(at, next, { lengthM: between(0.3, 0.45), boreM: bore, lossK: between(0, 0.3) })
        for (let tower = 0; tower < towers; tower += 1)
          net.mouth(next, LATERAL_M + between(-1, 1) * (sketch.unlevelM ?? 0.01), {
            lengthM: between(0.6, 0.95),
            lossK: 1.5,
          })
        at = next
      }
      ends.push(at)
    }
    if (sketch.hasRings && laterals > 1) net.pipe(ends[0]!, ends[1]!, { lengthM: 1, boreM: bore })
  }
  return net
}
