import { criticalOfSquare, squareOf } from './critical'
import type { Section } from './section'
import { type Bed, fastDepthMm, pullMm2, slowDepthMm, thrustMm3 } from './thrust'

/** A gutter from its outlet out to one end: what drips in, nearest to the outlet first. */
export interface Arm {
  readonly section: Section
  /** How much the bed climbs outward, mm a mm; less than 0 in the tail behind the outlet. */
  readonly climb: number
  readonly lengthMm: number
  /** Manning's n. */
  readonly n: number
  /** Ascending from the outlet, mm, and flows, L/h. */
  readonly dripsMm: readonly number[]
  readonly dripsLph: readonly number[]
}

/** The water in an arm, from the outlet outward. */
export interface ArmWater {
  readonly fromOutletMm: readonly number[]
  readonly depthMm: readonly number[]
}

/** Steps across what lies between the middles of two gaps between drips; beyond the last drip; along an arm without any. */
const STEPS_A_DRIP = 2
const STEPS_BEYOND = 2
const STEPS_DRY = 8

/** Less, L/h, is a drop a minute, and a flow by rounding alone. */
const LEAST_LPH = 1e-3

const squareFrom = (lph: number): number => (lph > LEAST_LPH ? squareOf(lph) : 0)

/** A step shorter than this is the rounding of the machine. */
const NO_STEP_MM = 1e-6

interface Steps {
  /** From the outlet, mm. */
  readonly at: readonly number[]
  /** Flow that passes there on its way to the outlet, as its square over gravity, mm5. */
  readonly squares: readonly number[]
}

/** A drip is spread over the gutter half-way to its neighbours: 15 in of a film that is inches from its next drip. */
const stepsOf = ({ lengthMm, dripsMm, dripsLph }: Arm): Steps => {
  const at = [0]
  let passing = dripsLph.reduce((sum, lph) => sum + lph, 0)
  const squares = [squareFrom(passing)]
  let from = 0
  const walk = (to: number, steps: number, lph: number) => {
    for (let step = 1; step <= steps; step += 1) {
      at.push(from + ((to - from) * step) / steps)
      squares.push(squareFrom(passing - (lph * step) / steps))
    }
    from = to
    passing -= lph
  }
  dripsMm.forEach((drip, index) => {
    const neighbour = dripsMm[index + 1]
    const toMm = neighbour === undefined ? 2 * drip - from : (drip + neighbour) / 2
    walk(toMm < lengthMm - NO_STEP_MM ? toMm : lengthMm, STEPS_A_DRIP, dripsLph[index] ?? 0)
  })
  if (lengthMm - from > NO_STEP_MM) walk(lengthMm, dripsMm.length > 0 ? STEPS_BEYOND : STEPS_DRY, 0)
  return { at, squares }
}

const bedOf = ({ section, climb, n }: Arm): Bed => ({ section, fall: climb, n })

/** The thrust that a place asks of the next one, outward or inward, over half of the step between them. */
const handedOn = (bed: Bed, depthMm: number, squareMm5: number, halfMm: number): number =>
  thrustMm3(bed.section, depthMm, squareMm5) - halfMm * pullMm2(bed, depthMm, squareMm5)

interface Slow {
  readonly depthMm: number[]
  readonly isControl: boolean[]
}

/** From the outlet outward: each place as deep as the one before holds it. */
const slowPass = (arm: Arm, { at, squares }: Steps, outletMm: number): Slow => {
  const bed = bedOf(arm)
  const first = criticalOfSquare(arm.section, squares[0] ?? 0)
  const depthMm = [Math.max(first, outletMm)]
  const isControl = [first >= outletMm]
  const levelMm = depthMm[0] ?? 0
  for (let i = 1; i < at.length; i += 1) {
    const [near, out] = [at[i - 1] ?? 0, at[i] ?? 0]
    const [before, squareMm5] = [depthMm[i - 1] ?? 0, squares[i] ?? 0]
    const halfMm = (out - near) / 2
    const wantedMm3 = handedOn(bed, before, squares[i - 1] ?? 0, halfMm)
    // Behind the outlet water stands no lower than at it.
    const leastMm = arm.climb < 0 ? levelMm - arm.climb * out : 0
    const next = slowDepthMm({ bed, squareMm5, halfMm, wantedMm3 }, before, leastMm)
    depthMm.push(next.depthMm)
    isControl.push(next.isControl)
  }
  return { depthMm, isControl }
}

/** From the far end inward, wherever the slow pass let go of what is below: depths, undefined where the water is not fast. */
const fastPass = (arm: Arm, { at, squares }: Steps, slow: Slow): (number | undefined)[] => {
  const bed = bedOf(arm)
  const depths = Array<number | undefined>(at.length)
  let fast: number | undefined
  for (let i = at.length - 1; i >= 0; i -= 1) {
    const squareMm5 = squares[i] ?? 0
    const isControl = slow.isControl[i] === true
    if (fast !== undefined) {
      const halfMm = ((at[i] ?? 0) - (at[i + 1] ?? 0)) / 2
      const wantedMm3 = handedOn(bed, fast, squares[i + 1] ?? 0, halfMm)
      fast = fastDepthMm({ bed, squareMm5, halfMm, wantedMm3 }, fast)
    }
    fast ??= isControl ? slow.depthMm[i] : undefined
    depths[i] = fast
  }
  return depths
}

/** Slow and fast water meet where neither pushes the other away: the one with more thrust stands, with a jump between. */
const stronger = ({ section }: Arm, squareMm5: number, slowMm: number, fastMm: number | undefined): number =>
  fastMm !== undefined && thrustMm3(section, fastMm, squareMm5) > thrustMm3(section, slowMm, squareMm5)
    ? fastMm
    : slowMm

/**
 * Depths along an arm whose outlet asks for so much over the invert, mm. Spatially varied flow: the momentum equation of a
 * channel with water dripping straight in, dM/dx = A (S0 - Sf) with M = Q^2 / g A + first moment of A, which is Chow,
 * Open-channel hydraulics (1959), equation 12-8 before it is divided out; by steps, friction by Manning, slow water from
 * the outlet outward, fast water from the far end inward.
 */
export const armWater = (arm: Arm, outletMm: number): ArmWater => {
  const steps = stepsOf(arm)
  const slow = slowPass(arm, steps, outletMm)
  const fast = arm.climb > 0 ? fastPass(arm, steps, slow) : []
  const depthMm = slow.depthMm.map((mm, i) => stronger(arm, steps.squares[i] ?? 0, mm, fast[i]))
  return { fromOutletMm: steps.at, depthMm }
}
