import type { Solution } from './network'
import type { PumpCurve } from './pumpCurve'
import { type Resistances, roomFor } from './resistance'
import type { Shape } from './shape'

/** What a link is to a sweep. */
export const PLAIN = 0
export const CHECK = 1
export const PUMP = 2
export const SHUT = 3

export interface RunningPump {
  readonly curve: PumpCurve
  readonly speed: number
}

/** The arrays that sweeps work on. By place and slot as in `Shape`; a shape's room is used again by its next network. */
export interface Work {
  readonly shape: Shape
  readonly links: Resistances
  /** By slot: `PLAIN` to `SHUT`, and whether a check or a pump is held shut by the heads at its ends. */
  readonly kind: Uint8Array
  readonly isHeld: Uint8Array
  /** Slots of checks and pumps. */
  readonly oneWay: number[]
  /** Mouths, here and below, in the order of their places. */
  readonly mouths: Resistances
  /** By mouth, m; out of reach where shut valves cut it off. */
  readonly mouthLevelM: Float64Array
  /** By mouth: its flow at the head at which it was last taken, m3/s, and how it grows with that, m2/s. */
  readonly mouthFlow: Float64Array
  readonly mouthPerHead: Float64Array
  /** By place: what is drawn off, m3/s; head, m; and whether shut valves cut it off from every level. */
  readonly draw: Float64Array
  readonly head: Float64Array
  readonly isCut: Uint8Array
  /** By place: the head at which its mouths were last taken, m. */
  readonly takenAt: Float64Array
  /**
   * By place: the flow out of a joint into its mouths and what hangs from it is `conductance * head - supply`, in m2/s
   * and m3/s. In the core it is counted from the last head.
   */
  readonly conductance: Float64Array
  readonly supply: Float64Array
  /** By slot: flow from upper to lower, m3/s; head lost there is taken as `offset + slope * flow`. */
  readonly flow: Float64Array
  readonly offset: Float64Array
  readonly slope: Float64Array
  /** By slot of the trees: 1 / (1 + slope * conductance of the lower place), and 0 where the slot is blocked. */
  readonly share: Float64Array
  /** By edge of the core, m2/s. */
  readonly edge: Float64Array
  /** By pump; `pumpAt` says which stands in a slot. */
  readonly pumps: RunningPump[]
  readonly pumpAt: Int32Array
  /** By block: changed since the last network; swept, as all trunk is; and the head that it was last solved under, m. */
  readonly isChanged: Uint8Array
  readonly isAwake: Uint8Array
  readonly solvedUnder: Float64Array
  /** By block: how much head a link missed in its last sweep, the most, m. */
  readonly misfits: Float64Array
  /** Of the water that the resistances are for. */
  kinematicM2S: number
  /** What was last solved here, whose heads, flows and straight lines are still in these arrays. */
  last: Solution | undefined
  /** Mouths are taken by their chord from dry, not by their tangent: see `takeMouths`. */
  isWary: boolean
  /** Of the last sweep: how much a head changed and how much head a link missed, the most of each, m. */
  change: number
  misfit: number
}

export const workOn = (shape: Shape): Work => {
  const slots = shape.upper.length
  const places = shape.nodeAt.length
  const mouths = shape.mouthPlace.length
  const blocks = shape.blocks.isBranch.length
  return {
    shape,
    links: roomFor(slots),
    kind: new Uint8Array(slots),
    isHeld: new Uint8Array(slots),
    oneWay: [],
    mouths: roomFor(mouths),
    mouthLevelM: new Float64Array(mouths),
    mouthFlow: new Float64Array(mouths),
    mouthPerHead: new Float64Array(mouths),
    draw: new Float64Array(places),
    head: new Float64Array(places),
    isCut: new Uint8Array(places),
    takenAt: new Float64Array(places),
    conductance: new Float64Array(places),
    supply: new Float64Array(places),
    flow: new Float64Array(slots),
    offset: new Float64Array(slots),
    slope: new Float64Array(slots),
    share: new Float64Array(slots),
    edge: new Float64Array(shape.core.edgeCount),
    pumps: [],
    pumpAt: new Int32Array(slots),
    isChanged: new Uint8Array(blocks),
    isAwake: new Uint8Array(blocks),
    solvedUnder: new Float64Array(blocks),
    misfits: new Float64Array(blocks),
    kinematicM2S: 0,
    last: undefined,
    isWary: false,
    change: 0,
    misfit: 0,
  }
}
