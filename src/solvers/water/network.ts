/**
 * A pipe network in plain arrays. Everything is SI: m, m3/s, degrees Celsius.
 *
 * Nodes are numbered levels first, then joints: node `i` is `levels[i]` while `i < levels.length`, and after that joint
 * `i - levels.length`. Every link runs `from` one node `to` another, and its flow is positive that way. The arrays of one
 * kind of link are all equally long.
 */
export interface Network {
  /** Head of each open level (a sump's surface, a head box), m above one common zero. */
  readonly levels: Float64Array
  /** What is drawn off at each joint, m3/s; 0 for nearly all. */
  readonly joints: Float64Array
  readonly pipes: Pipes
  readonly valves: Valves
  readonly pumps: Pumps
  readonly mouths: Mouths
}

export interface Pipes {
  readonly from: Int32Array
  readonly to: Int32Array
  readonly lengthM: Float64Array
  readonly boreM: Float64Array
  /** Minor losses, as multiples of the pipe's own velocity head; 0 for none. */
  readonly lossK: Float64Array
}

/** A fitting without length: it loses `lossK` velocity heads in its bore, or all where it is shut. */
export interface Valves {
  readonly from: Int32Array
  readonly to: Int32Array
  readonly boreM: Float64Array
  readonly lossK: Float64Array
  /** 1 where water can pass. */
  readonly isOpen: Uint8Array
  /** 1 where it can pass from `from` to `to` only. */
  readonly isCheck: Uint8Array
}

/** A pump lifts from `from` to `to`. Water never runs back through one. */
export interface Pumps {
  readonly from: Int32Array
  readonly to: Int32Array
  /** Index into `curves`. */
  readonly curve: Int32Array
  /** Share of the speed that the curve was taken at; 0 for a pump that stands. */
  readonly speed: Float64Array
  readonly curves: readonly CurvePoints[]
}

/** Three points of a pump curve or more, flow rising from 0, head falling. */
export interface CurvePoints {
  readonly flowM3S: Float64Array
  readonly headM: Float64Array
}

/** A microtube from a node into free air. It runs dry rather than backwards. */
export interface Mouths {
  readonly from: Int32Array
  readonly lengthM: Float64Array
  readonly boreM: Float64Array
  readonly lossK: Float64Array
  /** Height of the open end, m. */
  readonly levelM: Float64Array
}

export interface SolveOptions {
  /** Of the water; 20 where it is not said. */
  readonly temperatureC?: number
  /** The solver stops when no head changes by more, m; 1e-5 where it is not said. */
  readonly toleranceM?: number
  readonly mostSweeps?: number
}

export interface Solution {
  readonly ok: true
  readonly pipeM3S: Float64Array
  readonly valveM3S: Float64Array
  readonly pumpM3S: Float64Array
  readonly mouthM3S: Float64Array
  /** Head of every node, levels first, m; NaN for a joint that shut valves cut off from every open level. */
  readonly headM: Float64Array
  /** What each pump lifts by, m; its shut-off head where nothing moves. */
  readonly pumpHeadM: Float64Array
  readonly sweeps: number
  readonly largestChangeM: number
  /** False where `mostSweeps` came first: the numbers are the last ones. */
  readonly isSettled: boolean
}

export interface Fault {
  readonly ok: false
  /** One sentence with the numbers in it. */
  readonly sentence: string
}
