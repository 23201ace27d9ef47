import { shimStack } from '../catalogue/shims'
import { along, turnHeading } from '../geometry/motion'
import type { Point } from '../geometry/point'
import type { Foot } from '../model/levels'
import type { RackFace, RackFacts } from '../model/rackFacts'
import type { Writer } from '../units/writer'

/** One stack of shims in words: its height to the tape, and the pieces that make it. */
export interface ShimWords {
  readonly height: string
  /** Thickest first, like ones together: `2 x 1"`, `1/8"`. */
  readonly pieces: readonly string[]
}

const piecesWords = (heightMm: number, { onTape }: Writer): string[] =>
  shimStack(heightMm).map(({ thickMm, count }) =>
    count > 1 ? `${count} x ${onTape(thickMm)}` : onTape(thickMm),
  )

const shimWords = (heightMm: number, writer: Writer): ShimWords => ({
  height: writer.onTape(heightMm),
  pieces: piecesWords(heightMm, writer),
})

/** What goes under every trough at one bearer. */
export interface BearerRow extends ShimWords {
  /** From 1 at the high end of the gutters. */
  readonly bearer: number
  readonly fromHigh: string
}

export const bearerRows = ({ bearerShims }: RackFacts, writer: Writer): readonly BearerRow[] =>
  bearerShims.map(({ fromHighMm, shimMm }, index) => ({
    bearer: index + 1,
    fromHigh: writer.length(fromHighMm),
    ...shimWords(shimMm, writer),
  }))

/** What goes under the two feet of one riser pair; left and right as seen from the row's start to its end. */
export interface PairRow {
  /** From 1 at the row's start. */
  readonly pair: number
  readonly left: ShimWords
  readonly right: ShimWords
}

/** How far a place lies past a point along a direction, mm. */
const past = (at: Point, from: Point, direction: Point): number =>
  (at.x - from.x) * direction.x + (at.y - from.y) * direction.y

/** How far inside a face a place lies, mm. */
const behind = ({ from, facing }: RackFace, at: Point): number => -past(at, from, along(facing))

/** The two feet of one riser pair. */
export interface FootPair {
  /** From 1 at the row's start. */
  readonly pair: number
  readonly left: Foot
  readonly right: Foot | undefined
}

/** Riser pairs from the row's start. Feet of one side are as many as of the other: each pair has both. */
export const footPairs = ({ leftFace, rightFace }: RackFacts, feet: readonly Foot[]): readonly FootPair[] => {
  const onward = along(turnHeading(leftFace.facing, 3))
  const fromStart = [...feet].sort(
    (a, b) => past(a.at, leftFace.from, onward) - past(b.at, leftFace.from, onward),
  )
  const isLeft = ({ at }: Foot): boolean => behind(leftFace, at) < behind(rightFace, at)
  const rights = fromStart.filter((foot) => !isLeft(foot))
  return fromStart.filter(isLeft).map((left, index) => ({ pair: index + 1, left, right: rights[index] }))
}

export const pairRows = (rack: RackFacts, feet: readonly Foot[], writer: Writer): readonly PairRow[] =>
  footPairs(rack, feet).map(({ pair, left, right }) => ({
    pair,
    left: shimWords(left.shimMm, writer),
    right: shimWords(right?.shimMm ?? 0, writer),
  }))

/** `1-1/8" = 1" + 1/8"`; of one piece its height alone. */
export const stackWords = (heightMm: number, writer: Writer): string => {
  const { height, pieces } = shimWords(heightMm, writer)
  if (pieces.length === 0) return 'no shim'
  return pieces.length === 1 && pieces[0] === height ? height : `${height} = ${pieces.join(' + ')}`
}
