import type { LoadState } from '../../model/strength'
import type { Beam, BeamLoad, LineLoad } from '../../solvers/beam/beam'
import type { Bent } from '../../solvers/beam/bent'
import { beamOf } from '../../solvers/beam/solve'
import type { ConduitUsed } from './conduitUsed'
import { bentStates, supportWorst, worstOf, type BentStates } from './loadStates'

/** Towers at one place of a beam, by where they hang: left of the row's centreline, right of it, on it; N. */
export interface HungPoint {
  readonly atMm: number
  readonly leftN: number
  readonly rightN: number
  readonly middleN: number
}

/** Conduit from the end of the one before it to `toMm`. */
export interface CarryingStick {
  readonly toMm: number
  readonly conduit: ConduitUsed
}

/** A beam of conduit, what always lies on it, and the towers that hang off it in groups that are harvested together. */
export interface CarryingBeam {
  readonly fromMm: number
  readonly toMm: number
  readonly sticks: readonly CarryingStick[]
  /** Ascending. */
  readonly supportsMm: readonly number[]
  readonly hingesMm: readonly number[]
  readonly dead: BeamLoad
  readonly groups: readonly (readonly HungPoint[])[]
  readonly proofTimes: number
}

/** Something bent or sagging at its worst, and what hangs then. */
export interface Worst {
  readonly value: number
  readonly atMm: number
  readonly under: LoadState
}

export interface StretchWorst {
  readonly fromMm: number
  readonly toMm: number
  /** Nothing but the beam itself holds its outer end. */
  readonly isOverhang: boolean
  readonly conduit: ConduitUsed
  /** N·mm, with its sign; of all states but the proof load. */
  readonly moment: Worst
  /** mm downward; where a beam is bent upward nothing hangs that minds. */
  readonly sag: Worst
  readonly stressMpa: number
  /** With the towers `proofTimes` as heavy, all of them or those that make it worst. */
  readonly proofStressMpa: number
}

export interface SupportWorst {
  readonly atMm: number
  readonly fullN: number
  readonly mostN: number
  readonly leastN: number
  readonly leastUnder: LoadState
  /** The least of it with everything hung and with one side hung. */
  readonly leastHungN: number
}

export interface Carried {
  /** Spans and what overhangs, along the beam; each at the conduit that is worst in it. */
  readonly stretches: readonly StretchWorst[]
  readonly supports: readonly SupportWorst[]
  /** With everything hung. */
  readonly curve: {
    readonly atMm: readonly number[]
    readonly sagMm: readonly number[]
    readonly momentNmm: readonly number[]
  }
}

interface Stretch {
  readonly fromMm: number
  readonly toMm: number
  readonly isOverhang: boolean
}

/** A stretch shorter than this, mm, is the end of the beam over its support. */
const NO_STRETCH_MM = 1

const stretchesOf = ({ fromMm, toMm, supportsMm }: CarryingBeam): Stretch[] => {
  const ends = [fromMm, ...supportsMm, toMm]
  return ends
    .slice(1)
    .map((to, index) => ({
      fromMm: ends[index] ?? fromMm,
      toMm: to,
      isOverhang: index === 0 || index === supportsMm.length,
    }))
    .filter((stretch) => stretch.toMm - stretch.fromMm > NO_STRETCH_MM)
}

interface Part {
  readonly fromMm: number
  readonly toMm: number
  readonly conduit: ConduitUsed
}

/** Parts of a stretch that are of one conduit. */
const partsOf = ({ fromMm, sticks }: CarryingBeam, stretch: Stretch): Part[] =>
  sticks
    .map(({ toMm, conduit }, index) => ({
      conduit,
      fromMm: Math.max(stretch.fromMm, index === 0 ? fromMm : (sticks[index - 1]?.toMm ?? fromMm)),
      toMm: Math.min(stretch.toMm, toMm),
    }))
    .filter((part) => part.toMm > part.fromMm)

const placesIn = (stretch: Pick<Stretch, 'fromMm' | 'toMm'>, loads: readonly number[]): number[] => [
  stretch.fromMm,
  ...loads.filter((mm) => mm > stretch.fromMm && mm < stretch.toMm),
  (stretch.fromMm + stretch.toMm) / 2,
  stretch.toMm,
]

const stressOf = (momentNmm: number, { sectionMm3 }: ConduitUsed): number => Math.abs(momentNmm) / sectionMm3

const furthest = (bent: Bent, fromMm: number, toMm: number) => {
  const { most, least } = bent.moments(fromMm, toMm)
  return -least.value > most.value ? least : most
}

/** The worst moment with the towers that make it as heavy as the proof load: what lies there by itself is no heavier. */
const atProof = ({ value, atMm }: Worst, empty: Bent, proofTimes: number): number => {
  const alwaysNmm = empty.momentAt(atMm)
  return alwaysNmm + proofTimes * (value - alwaysNmm)
}

const partWorst = (
  states: BentStates,
  loads: readonly number[],
  { fromMm, toMm, conduit }: Part,
  proofTimes: number,
) => {
  const moment = worstOf(states, {
    worst: (bent) => furthest(bent, fromMm, toMm),
    at: (bent, mm) => bent.momentAt(mm),
    places: placesIn({ fromMm, toMm }, loads),
    isBadBelow: true,
  })
  const proofNmm = Math.max(
    Math.abs(furthest(states.proof, fromMm, toMm).value),
    Math.abs(atProof(moment, states.empty, proofTimes)),
  )
  return {
    conduit,
    moment,
    stressMpa: stressOf(moment.value, conduit),
    proofStressMpa: stressOf(proofNmm, conduit),
  }
}

const sagOf = (states: BentStates, { fromMm, toMm }: Stretch): Worst =>
  worstOf(states, {
    worst: (bent) => bent.sags(fromMm, toMm).most,
    at: (bent, mm) => bent.sagAt(mm),
    places: [...placesIn({ fromMm, toMm }, []), states.full.sags(fromMm, toMm).most.atMm],
    isBadBelow: false,
  })

const stretchWorst = (
  beam: CarryingBeam,
  states: BentStates,
  loads: readonly number[],
  stretch: Stretch,
): StretchWorst | undefined => {
  const parts = partsOf(beam, stretch).map((part) => partWorst(states, loads, part, beam.proofTimes))
  const [first, ...rest] = parts
  if (!first) return undefined
  const worst = rest.reduce((a, b) => (b.stressMpa > a.stressMpa ? b : a), first)
  return {
    ...stretch,
    ...worst,
    proofStressMpa: Math.max(...parts.map(({ proofStressMpa }) => proofStressMpa)),
    sag: sagOf(states, stretch),
  }
}

/** So many points to a span of the curve that is drawn. */
const CURVE_STEPS = 8

/** Even steps, every load, and where sag and moment are at their most. */
const curvePlaces = (full: Bent, { fromMm, toMm }: Stretch): number[] => [
  ...Array.from({ length: CURVE_STEPS + 1 }, (_, step) => fromMm + ((toMm - fromMm) * step) / CURVE_STEPS),
  full.sags(fromMm, toMm).most.atMm,
  full.moments(fromMm, toMm).most.atMm,
]

const curveOf = (full: Bent, stretches: readonly Stretch[], loads: readonly number[]): Carried['curve'] => {
  const places = stretches.flatMap((stretch) => curvePlaces(full, stretch))
  const atMm = [...new Set([...places, ...loads])].sort((a, b) => a - b)
  return { atMm, sagMm: atMm.map(full.sagAt), momentNmm: atMm.map(full.momentAt) }
}

const beamSolved = ({ fromMm, toMm, sticks, supportsMm, hingesMm }: CarryingBeam): Beam => ({
  fromMm,
  toMm,
  sections: sticks.map((stick) => ({ toMm: stick.toMm, eiNmm2: stick.conduit.eiNmm2 })),
  // A hole holds a rail down as well as up; what would have to is found and told as uplift.
  supports: supportsMm.map((atMm) => ({ atMm, holds: 'both' })),
  hinges: hingesMm,
})

/** What comes of a beam in every state of load; undefined where it rests on too little to stay where it is. */
export const carry = (beam: CarryingBeam): Carried | undefined => {
  const solved = beamOf(beamSolved(beam))
  if (!solved.ok) return undefined
  const states = bentStates(solved, beam)
  const loads = beam.groups.flat().map(({ atMm }) => atMm)
  const stretches = stretchesOf(beam)
  return {
    stretches: stretches.flatMap((stretch) => stretchWorst(beam, states, loads, stretch) ?? []),
    supports: beam.supportsMm.map((atMm, index) => supportWorst(states, atMm, index)),
    curve: curveOf(states.full, stretches, loads),
  }
}

/** A line load over what of it lies on a beam; what sticks out presses on the end. */
export const ontoBeam = (line: LineLoad, fromMm: number, toMm: number): BeamLoad => {
  const on = { fromMm: Math.max(line.fromMm, fromMm), toMm: Math.min(line.toMm, toMm) }
  const past = [
    { atMm: fromMm, downN: Math.max(0, Math.min(fromMm, line.toMm) - line.fromMm) * line.downNPerMm },
    { atMm: toMm, downN: Math.max(0, line.toMm - Math.max(toMm, line.fromMm)) * line.downNPerMm },
  ]
  return {
    points: past.filter(({ downN }) => downN > 0),
    lines: on.toMm > on.fromMm ? [{ ...on, downNPerMm: line.downNPerMm }] : [],
  }
}
