import { feet } from '../units/length'
import { dropOver } from '../units/slope'
import { between, type Point } from './point'
import { segmentsOf, type Segment } from './polyline'

/** The floor at a place along a run. Lengths and levels in mm; levels from the benchmark's zero. */
export interface GroundStation {
  readonly at: Point
  /** Along the run from its first point, on the flat. */
  readonly alongMm: number
  readonly groundMm: number
}

/** The levels of a buried pipe at a place along it. */
export interface DrainStation extends GroundStation {
  readonly invertMm: number
  /** Outside top of the pipe. */
  readonly crownMm: number
  readonly coverMm: number
  /** Depth to dig below the floor, bed included. */
  readonly digMm: number
}

/** What the trench crew must know of the pipe. */
export interface DrainPipeRun {
  readonly odMm: number
  readonly wallMm: number
  readonly bedMm: number
  /** Positive where it falls from its first point to its last. */
  readonly slopeMmPerM: number
}

/** A straight stretch between two points of a run, with the floor at its ends and at steps between. */
export interface GroundLeg {
  readonly from: Point
  readonly to: Point
  readonly stations: readonly GroundStation[]
}

type GroundAt = (x: number, y: number) => number

/** A floor is not surveyed finer than this: spot levels stand feet apart. */
const STEP_MM = feet(1)

/** A leg of whole steps but for the rounding of the machine gets no step more. */
const ROUNDING = 1e-6

/** A leg longer than this many steps is looked at in longer steps, so that an absurd run stays quick. */
const MOST_STEPS = 1000

const groundLeg = ({ from, to, startMm, lengthMm }: Segment, groundAt: GroundAt): GroundLeg => {
  const steps = Math.min(Math.max(Math.ceil(lengthMm / STEP_MM - ROUNDING), 1), MOST_STEPS)
  const stations = Array.from({ length: steps + 1 }, (_, step) => {
    const at = between(from, to, step / steps)
    return { at, alongMm: startMm + (lengthMm * step) / steps, groundMm: groundAt(at.x, at.y) }
  })
  return { from, to, stations }
}

/** The floor along a run of points, leg by leg; both ends of every leg are among its stations. */
export const groundLegs = (points: readonly Point[], groundAt: GroundAt): readonly GroundLeg[] =>
  segmentsOf(points).map((segment) => groundLeg(segment, groundAt))

/** The levels at one place along a pipe whose invert at the first point is `startInvertMm`. */
export const drainStation = (
  ground: GroundStation,
  startInvertMm: number,
  { odMm, wallMm, bedMm, slopeMmPerM }: DrainPipeRun,
): DrainStation => {
  const invertMm = startInvertMm - dropOver(ground.alongMm, slopeMmPerM)
  const crownMm = invertMm - wallMm + odMm
  return {
    ...ground,
    invertMm,
    crownMm,
    coverMm: ground.groundMm - crownMm,
    digMm: ground.groundMm - invertMm + wallMm + bedMm,
  }
}

/**
 * The highest invert at the first point that keeps the cover everywhere:
 *
 *   z0 = min over s of ground(s) - cover - OD + wall + S s
 *
 * The tightest place may be in the middle of the run. All mm; 0 for no stations.
 */
export const startInvert = (
  stations: readonly GroundStation[],
  { odMm, wallMm, slopeMmPerM }: DrainPipeRun,
  coverMm: number,
): number => {
  let lowest = Infinity
  for (const { alongMm, groundMm } of stations)
    lowest = Math.min(lowest, groundMm - coverMm - odMm + wallMm + dropOver(alongMm, slopeMmPerM))
  return Number.isFinite(lowest) ? lowest : 0
}
