import type { Hole } from '../../model/built'
import type { RailLine, RowSpot } from '../../model/strength'
import { type Frame, type FrameStick, sticksOf } from './frame'
import type { RowInput } from './rowInput'

/** Marks of risers: with a plain hole, a sleeve's hole, two holes side by side. */
export const RISERS = ['RS-p', 'RS-s', 'RS-d'] as const

/** How a riser is kept from leaning one way. */
export interface Braced {
  /** By its own brace, or by a rail that ties it to a riser with one. */
  readonly isHeld: boolean
  /** Where its own brace is fixed to it, mm over its foot; undefined without one. */
  readonly nodeMm: number | undefined
}

/** A riser as built, with what it carries. */
export interface Riser {
  readonly mark: string
  /** The middle of its hole. */
  readonly at: RowSpot
  readonly hole: Hole
  /** What of the board's face its holes take, mm: two that lie side by side run into one. */
  readonly boredMm: number
  readonly lengthMm: number
  /** Sides of the board, mm: the way the row runs, and across it. */
  readonly alongMm: number
  readonly acrossMm: number
  readonly along: Braced
  readonly across: Braced
  /** The most that its rail hands down, N. */
  readonly carriesN: number
}

/** What is fixed to a riser, or lies in its hole, has its middle within so much of the riser's, mm: two boards' thickness and more. */
const AT_RISER_MM = 100

const isAt = (a: number, b: number): boolean => Math.abs(a - b) <= AT_RISER_MM

const isSameSide = (a: number, b: number): boolean => Math.sign(a) === Math.sign(b)

const endsOf = ({ from, to }: FrameStick): readonly [lower: RowSpot, upper: RowSpot] =>
  from.z < to.z ? [from, to] : [to, from]

/** Height over the rack datum at which the axis of a brace passes `place`, along the row or across it. */
const heightAt = (brace: FrameStick, way: 'u' | 'v', place: number): number => {
  const [lower, upper] = endsOf(brace)
  const run = upper[way] - lower[way]
  return run === 0 ? upper.z : lower.z + ((place - lower[way]) / run) * (upper.z - lower.z)
}

/** A brace with the riser or the pair that it holds, told by where along the row its upper end is, and its node's height. */
interface Node {
  readonly u: number
  readonly v: number
  readonly z: number
}

/** Side braces lean along the row, each on its own side. */
const sideNodes = (frame: Frame, risers: readonly FrameStick[]): Node[] =>
  sticksOf(frame, 'SB').flatMap((brace) => {
    const [, upper] = endsOf(brace)
    const riser = risers.find(({ from }) => isSameSide(from.v, upper.v) && isAt(from.u, upper.u))
    return riser ? [{ u: riser.from.u, v: riser.from.v, z: heightAt(brace, 'u', riser.from.u) }] : []
  })

/** Cross braces lean across it, from one riser's foot up to the other of the pair, which the top tie shares. */
const crossNodes = (frame: Frame, risers: readonly FrameStick[]): Node[] =>
  sticksOf(frame, 'XB').flatMap((brace) => {
    const [, upper] = endsOf(brace)
    const pair = risers.filter(({ from }) => isAt(from.u, upper.u))
    const end = pair.find(({ from }) => isSameSide(from.v, upper.v))
    if (!end) return []
    const z = heightAt(brace, 'v', end.from.v)
    return pair.map(({ from: { u, v } }) => ({ u, v, z }))
  })

/** The rail that lies in a riser's hole. */
const railAt = (rails: readonly RailLine[], v: number): RailLine | undefined =>
  rails.find((rail) => isSameSide(rail.v, v))

/** Whether one line of rails, joined stick to stick, passes through both places. */
const isTied = (rail: RailLine | undefined, a: number, b: number): boolean => {
  const [first, last] = [rail?.sticks[0], rail?.sticks.at(-1)]
  if (!first || !last) return false
  return Math.min(a, b) >= first.fromU - AT_RISER_MM && Math.max(a, b) <= last.toU + AT_RISER_MM
}

const bracedBy = (nodes: readonly Node[], riser: FrameStick, rail: RailLine | undefined): Braced => {
  const { u, v, z: footZ } = riser.from
  const onSide = nodes.filter((node) => isSameSide(node.v, v))
  const own = onSide.find((node) => node.u === u)
  return {
    isHeld: own !== undefined || onSide.some((node) => isTied(rail, node.u, u)),
    nodeMm: own && own.z - footZ,
  }
}

const carriedAt = (rail: RailLine | undefined, u: number): number =>
  (rail?.reactions ?? []).reduce((most, at) => (isAt(at.u, u) ? Math.max(most, at.mostN) : most), 0)

const boredAcross = (holes: readonly Hole[]): number => {
  const edges = (sign: 1 | -1) =>
    holes.map(({ asideMm = 0, diameterMm }) => asideMm + (sign * diameterMm) / 2)
  return Math.max(...edges(1)) - Math.min(...edges(-1))
}

/** The row's risers along it, with what braces them as built and what the rails hand down to each. */
export const risersBuilt = ({ frame, rails }: Pick<RowInput, 'frame' | 'rails'>): readonly Riser[] => {
  const laid = sticksOf(frame, ...RISERS)
  const [side, cross] = [sideNodes(frame, laid), crossNodes(frame, laid)]
  return laid.flatMap((riser) => {
    const { stick, from } = riser
    const [hole] = stick.holes
    if (!hole) return []
    const rail = railAt(rails, from.v)
    return {
      mark: stick.mark,
      at: { u: from.u, v: from.v, z: from.z + hole.centreMm },
      hole,
      boredMm: boredAcross(stick.holes),
      lengthMm: stick.lengthMm,
      alongMm: stick.widthMm,
      acrossMm: stick.heightMm,
      along: bracedBy(side, riser, rail),
      across: bracedBy(cross, riser, rail),
      carriesN: carriedAt(rail, from.u),
    }
  })
}
