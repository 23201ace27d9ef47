import type { LoadState } from '../../model/strength'
import type { HungAt } from './frame'
import type { RowInput } from './rowInput'
import { edgesUnder, type Edges, type Reach, standingPieces } from './stanceBase'

/** One piece of the row that tips by itself: what it stands on, what it weighs bare, and its towers. */
export interface Piece {
  readonly reach: Reach
  readonly across: Edges
  readonly along: Edges
  readonly ownN: number
  readonly towers: readonly HungAt[]
}

export const sumOf = <T>(items: readonly T[], valueOf: (item: T) => number): number =>
  items.reduce((sum, item) => sum + valueOf(item), 0)

/** Half way from one piece to the next. */
const between = (a: Reach | undefined, b: Reach | undefined, none: number): number =>
  a && b ? (a.to + b.from) / 2 : none

/** The pieces of a row, along it; none where nothing stands on the ground. Racks are alike: each has of the bare weight what it has of the length. */
export const piecesOf = ({ frame, loads }: Pick<RowInput, 'frame' | 'loads'>): readonly Piece[] => {
  const reaches = standingPieces(frame)
  const lengthMm = sumOf(reaches, ({ from, to }) => to - from)
  return reaches.flatMap((reach, index) => {
    const [across, along] = [edgesUnder(frame, reach, 'v'), edgesUnder(frame, reach, 'u')]
    if (!across || !along) return []
    const from = between(reaches[index - 1], reach, -Infinity)
    const to = between(reach, reaches[index + 1], Infinity)
    return {
      reach,
      across,
      along,
      ownN: (loads.ownN * (reach.to - reach.from)) / lengthMm,
      towers: frame.towers.filter(({ u }) => u > from && u <= to),
    }
  })
}

/** Towers of lines off the centreline by more than this, mm, hang to one side of it. */
const OFF_CENTRE_MM = 1

export const onSide = (towers: readonly HungAt[], side: -1 | 1): readonly HungAt[] =>
  towers.filter(({ v }) => v * side > OFF_CENTRE_MM)

/** What may hang in a state of load: of one side, either side. */
export const hungIn = (state: LoadState, towers: readonly HungAt[]): readonly (readonly HungAt[])[] => {
  if (state === 'empty') return [[]]
  return state === 'one-side' ? [onSide(towers, -1), onSide(towers, 1)] : [towers]
}
