import type { BeamLoad, LineLoad, PointLoad } from '../../solvers/beam/beam'
import { carryAlike } from './carryAlike'
import { ontoBeam, type Carried, type HungPoint } from './carrying'
import type { ConduitsUsed, ConduitUsed } from './conduitUsed'
import { pipeOnRail, shareOn, type Hung, type HungBar } from './hung'
import { SAME_PLACE_MM, type BearingPiece, type RailChain } from './railChain'

/** What a bar puts on a rail: what always lies on it, and its towers by where they hang. */
export interface Hanger extends HungPoint {
  readonly deadN: number
}

export const fullOf = ({ deadN, leftN, rightN, middleN }: Hanger): number => deadN + leftN + rightN + middleN

export const hangerOf = (bar: HungBar, railV: number, otherV: number): Hanger => {
  const share = ({ atMm, downN }: PointLoad): number => downN * shareOn(railV, otherV, atMm)
  const sum = (loads: readonly PointLoad[]): number => loads.reduce((total, load) => total + share(load), 0)
  const ownN = bar.ownNPerMm * (bar.toV - bar.fromV)
  const towers = (isHere: (v: number) => boolean): number =>
    sum(bar.towers.filter(({ atMm }) => isHere(atMm)))
  return {
    atMm: bar.u,
    deadN: sum(bar.pipes) + share({ atMm: (bar.fromV + bar.toV) / 2, downN: ownN }),
    leftN: towers((v) => v < -SAME_PLACE_MM),
    rightN: towers((v) => v > SAME_PLACE_MM),
    middleN: towers((v) => Math.abs(v) <= SAME_PLACE_MM),
  }
}

/** A part of a rail line that bends by itself: from a support under a slip joint, or an end, to the next. */
export interface Part {
  readonly fromU: number
  readonly toU: number
  readonly pieces: readonly BearingPiece[]
}

const isOn = (u: number, supportsU: readonly number[]): boolean =>
  supportsU.some((support) => Math.abs(support - u) < SAME_PLACE_MM)

/** A hinge over a support hands nothing on: what lies left of it and right of it bend apart. */
export const partsOf = ({ pieces, supportsU }: RailChain): Part[] => {
  const parts: BearingPiece[][] = []
  for (const piece of pieces) {
    const last = parts.at(-1)
    const before = last?.at(-1)
    const isApart = !before || piece.fromU > before.toU || isOn(piece.fromU, supportsU)
    if (isApart) parts.push([piece])
    else last?.push(piece)
  }
  return parts.map((each) => ({
    fromU: each[0]?.fromU ?? 0,
    toU: each.at(-1)?.toU ?? 0,
    pieces: each,
  }))
}

/** A place at an end of a part that is meant to be that end. */
const within = (u: number, { fromU, toU }: Part): number => Math.min(Math.max(u, fromU), toU)

const isAlong = (u: number, { fromU, toU }: Part): boolean =>
  u > fromU - SAME_PLACE_MM && u < toU + SAME_PLACE_MM

const together = (loads: readonly BeamLoad[]): BeamLoad => ({
  points: loads.flatMap(({ points }) => points),
  lines: loads.flatMap(({ lines }) => lines),
})

export interface Laid {
  readonly chain: RailChain
  readonly parts: readonly Part[]
  readonly conduits: ConduitsUsed
}

/** What of a line load lies on a part; what sticks out at the line's own ends presses there. */
const lineOn = (line: LineLoad, part: Part, { parts }: Laid): BeamLoad => {
  const clipped = {
    ...line,
    fromMm: part === parts[0] ? line.fromMm : Math.max(line.fromMm, part.fromU),
    toMm: part === parts.at(-1) ? line.toMm : Math.min(line.toMm, part.toU),
  }
  return clipped.toMm > clipped.fromMm ? ontoBeam(clipped, part.fromU, part.toU) : { points: [], lines: [] }
}

const weightsOn = (part: Part, laid: Laid): BeamLoad[] =>
  laid.chain.sticks.map(({ stock, fromU, toU }) =>
    lineOn({ fromMm: fromU, toMm: toU, downNPerMm: laid.conduits.get(stock)?.weightNPerMm ?? 0 }, part, laid),
  )

/** Of two parts that meet over a riser, the one to the right has what hangs there. */
const owns = (part: Part, u: number, { parts }: Laid): boolean => {
  const next = parts[parts.indexOf(part) + 1]
  return (part === parts[0] || u >= part.fromU) && (next === undefined || u < next.fromU)
}

const pipesOn = (part: Part, laid: Laid, hung: Hung, otherV: number): BeamLoad[] =>
  hung.railPipes.map((pipe) => {
    const { points, lines } = pipeOnRail(pipe, laid.chain.v, otherV)
    return together([
      {
        points: points
          .filter(({ atMm }) => owns(part, atMm, laid))
          .map((point) => ({ ...point, atMm: within(point.atMm, part) })),
        lines: [],
      },
      ...lines.map((line) => lineOn(line, part, laid)),
    ])
  })

/** Hangers by the span that they hang in. */
const bySpan = (hangers: readonly Hanger[], supportsMm: readonly number[]): Hanger[][] => {
  const groups = Array.from({ length: supportsMm.length + 1 }, (): Hanger[] => [])
  for (const hanger of hangers) {
    const after = supportsMm.findIndex((mm) => mm > hanger.atMm)
    groups[after < 0 ? supportsMm.length : after]?.push(hanger)
  }
  return groups.filter((group) => group.length > 0)
}

const conduitOf = (conduits: ConduitsUsed, stock: string): ConduitUsed => {
  const conduit = conduits.get(stock)
  if (!conduit) throw new RangeError(`"${stock}" is a rail but no conduit.`)
  return conduit
}

/** A part of a line in every state of load; undefined where it is loose. */
export const carriedPart = (
  part: Part,
  laid: Laid,
  hung: Hung,
  hangers: readonly Hanger[],
  otherV: number,
  proofTimes: number,
): Carried | undefined => {
  const own = hangers
    .filter(({ atMm }) => owns(part, atMm, laid))
    .map((hanger) => ({ ...hanger, atMm: within(hanger.atMm, part) }))
  const supportsMm = laid.chain.supportsU.filter((u) => isAlong(u, part)).map((u) => within(u, part))
  const deadPoints = own.map(({ atMm, deadN }) => ({ atMm, downN: deadN }))
  return carryAlike({
    fromMm: part.fromU,
    toMm: part.toU,
    sticks: part.pieces.map(({ stick, toU }) => ({
      toMm: toU,
      conduit: conduitOf(laid.conduits, stick.stock),
    })),
    supportsMm,
    hingesMm: part.pieces.slice(1).map(({ fromU }) => fromU),
    dead: together([
      { points: deadPoints, lines: [] },
      ...weightsOn(part, laid),
      ...pipesOn(part, laid, hung, otherV),
    ]),
    groups: bySpan(own, supportsMm),
    proofTimes,
  })
}
