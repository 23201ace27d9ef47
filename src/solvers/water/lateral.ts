import { type Pipe, pipeLoss } from './friction'
import { tubeFlowM3S } from './tube'

/**
 * A lateral by its laws, stations counted from the inlet to the far end. Heads are in m above one zero; what an outlet
 * gives must not fall when the head rises, nor a loss when the flow does.
 */
export interface Lateral {
  readonly stations: number
  /** Head lost along the pipe that leads to a station from the one before it, or from the inlet, m. */
  readonly lossM: (flowM3S: number, station: number) => number
  /** What a station draws off at the head there, m3/s. */
  readonly drawM3S: (headM: number, station: number) => number
}

/** Heads and draws of a lateral, station by station. */
export interface HeadLine {
  readonly inletHeadM: number
  readonly inletM3S: number
  readonly headM: Float64Array
  readonly drawM3S: Float64Array
}

/**
 * Marches from the far end to the inlet: a head at the last station says what it draws, that says what its pipe loses,
 * and so on. No guess is needed, so that nothing can go round in circles.
 */
export const headLineFrom = (lateral: Lateral, farHeadM: number): HeadLine => {
  const headM = new Float64Array(lateral.stations)
  const drawM3S = new Float64Array(lateral.stations)
  let head = farHeadM
  let flow = 0
  for (let station = lateral.stations - 1; station >= 0; station -= 1) {
    const draw = lateral.drawM3S(head, station)
    headM[station] = head
    drawM3S[station] = draw
    flow += draw
    head += lateral.lossM(flow, station)
  }
  return { inletHeadM: head, inletM3S: flow, headM, drawM3S }
}

/** First step away from the guess, m, and how often it may double: from a millimetre to a kilometre and back. */
const FIRST_STEP_M = 1e-3
const MOST_DOUBLINGS = 40
const MOST_STEPS = 100

/** Two heads of which the first gives too little and the second enough, found by ever longer steps from a guess. */
const bracketFrom = (excess: (farHeadM: number) => number, guessM: number): readonly [number, number] => {
  const isGuessEnough = excess(guessM) >= 0
  let near = guessM
  let step = isGuessEnough ? -FIRST_STEP_M : FIRST_STEP_M
  for (let i = 0; i < MOST_DOUBLINGS && excess(guessM + step) >= 0 === isGuessEnough; i += 1) {
    near = guessM + step
    step *= 2
  }
  return isGuessEnough ? [guessM + step, near] : [near, guessM + step]
}

/**
 * The far-end head at which something that rises with it comes up to what is wanted: false position, with the value
 * of an end that stays twice in a row halved so that it moves too (the Illinois rule; Dowell and Jarratt, BIT 11, 1971).
 */
const farHeadWhere = (excess: (farHeadM: number) => number, guessM: number, closeEnough: number): number => {
  let [low, high] = bracketFrom(excess, guessM)
  let [under, over] = [excess(low), excess(high)]
  let stayed = 0
  for (let i = 0; i < MOST_STEPS && over > closeEnough && high > low; i += 1) {
    const middle = (low * over - high * under) / (over - under)
    const value = excess(middle)
    if (Math.abs(value) <= closeEnough) return middle
    if (value > 0) {
      ;[high, over] = [middle, value]
      under *= stayed < 0 ? 0.5 : 1
      stayed = -1
    } else {
      ;[low, under] = [middle, value]
      over *= stayed > 0 ? 0.5 : 1
      stayed = 1
    }
  }
  return high
}

/** Shares of what is wanted, far below what any tube or gauge could show. */
const CLOSE_SHARE = 1e-10

/** The head line of a lateral that stands under a head at its inlet, m. */
export const headLineUnder = (lateral: Lateral, inletHeadM: number): HeadLine => {
  const excess = (farHeadM: number) => headLineFrom(lateral, farHeadM).inletHeadM - inletHeadM
  return headLineFrom(lateral, farHeadWhere(excess, inletHeadM, CLOSE_SHARE))
}

/**
 * The head line of a lateral that takes a flow, m3/s: its `inletHeadM` is the head that a zone's valve must leave for
 * towers that get their target on the average. The draws must rise with the head.
 */
export const headLineTaking = (lateral: Lateral, inletM3S: number): HeadLine => {
  const excess = (farHeadM: number) => headLineFrom(lateral, farHeadM).inletM3S - inletM3S
  return headLineFrom(lateral, farHeadWhere(excess, 0, CLOSE_SHARE * inletM3S))
}

/** A plastic lateral as it is built; the arrays have an entry a station. */
export interface TubedLateral {
  /** The pipe that leads to each station. */
  readonly pipes: readonly Pipe[]
  /** The microtube of each tower of a station. */
  readonly tubes: readonly Pipe[]
  /** How many towers hang there. */
  readonly towers: readonly number[]
  /** Level of their open tube ends, m above the zero of the heads. */
  readonly outletM: readonly number[]
}

const NO_PIPE: Pipe = { lengthM: 0, boreM: 1, lossK: 0 }

/** The laws of a lateral with microtubes. */
export const lateralOf = (built: TubedLateral, kinematicM2S: number): Lateral => {
  const { pipes, tubes, towers, outletM } = built
  return {
    stations: pipes.length,
    lossM: (flowM3S, station) => pipeLoss(flowM3S, pipes[station] ?? NO_PIPE, kinematicM2S),
    drawM3S: (headM, station) => {
      const tube = tubes[station]
      const overOutletM = headM - (outletM[station] ?? 0)
      return tube === undefined ? 0 : (towers[station] ?? 0) * tubeFlowM3S(overOutletM, tube, kinematicM2S)
    },
  }
}

/** The laws of a lateral from which each station draws what it is told, whatever the head. */
export const lateralDrawing = (
  drawM3S: ArrayLike<number>,
  pipes: readonly Pipe[],
  kinematicM2S: number,
): Lateral => ({
  stations: pipes.length,
  lossM: (flowM3S, station) => pipeLoss(flowM3S, pipes[station] ?? NO_PIPE, kinematicM2S),
  drawM3S: (_, station) => drawM3S[station] ?? 0,
})
