import type { Evaluation } from '../../evaluate/evaluation'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import { fromTicks, toTicks } from '../../units/length'

/** Like pieces of a bundle. */
export interface BundlePiece {
  readonly mark: string
  readonly lengthMm: number
  readonly count: number
}

/** What is tied together at the saw: all sticks of one rack, or of a part that is no row of racks. */
export interface Bundle {
  /** Stays the same while it is of the same rack. */
  readonly key: string
  readonly part: PartId
  /** From 1 at the start of the row; undefined where there are no racks. */
  readonly rack: number | undefined
  /** Longest first. */
  readonly pieces: readonly BundlePiece[]
}

type Tally = Map<string, { readonly mark: string; readonly lengthTicks: number; count: number }>

const talliesOf = ({ sticks }: Built): ReadonlyMap<number, Tally> => {
  const racks = new Map<number, Tally>()
  for (const { rack, mark, lengthMm } of sticks) {
    const lengthTicks = toTicks(lengthMm)
    const tally = racks.get(rack) ?? (new Map() as Tally)
    racks.set(rack, tally)
    const key = `${mark} ${lengthTicks}`
    const piece = tally.get(key) ?? { mark, lengthTicks, count: 0 }
    tally.set(key, piece)
    piece.count += 1
  }
  return racks
}

const piecesOf = (tally: Tally): readonly BundlePiece[] =>
  [...tally.values()]
    .filter(({ lengthTicks }) => lengthTicks > 0)
    .sort((a, b) => b.lengthTicks - a.lengthTicks || (a.mark < b.mark ? -1 : 1))
    .map(({ mark, lengthTicks, count }) => ({ mark, lengthMm: fromTicks(lengthTicks), count }))

const ofPart = rememberEach<Built, null, readonly Bundle[]>((built) =>
  [...talliesOf(built)]
    .sort(([a], [b]) => a - b)
    .map(([rack, tally]) => ({
      key: `${built.part}/${rack + 1}`,
      part: built.part,
      rack: built.rack ? rack + 1 : undefined,
      pieces: piecesOf(tally),
    })),
)

/** Every bundle of a bay, row by row in the order of the plan. */
export const bundlesOf = ({ bay }: Pick<Evaluation, 'bay'>): readonly Bundle[] =>
  bay.built.flatMap((built) => ofPart(built, null)).filter(({ pieces }) => pieces.length > 0)

export const countOf = ({ pieces }: Bundle): number => pieces.reduce((sum, { count }) => sum + count, 0)

/** Bundles of the same pieces together, in the order of the first of each. */
export const alikeBundles = (bundles: readonly Bundle[]): readonly (readonly [Bundle, ...Bundle[]])[] => {
  const alike = new Map<string, [Bundle, ...Bundle[]]>()
  for (const bundle of bundles) {
    const sign = bundle.pieces.map((piece) => Object.values(piece).join(' ')).join('; ')
    const group = alike.get(sign)
    if (group) group.push(bundle)
    else alike.set(sign, [bundle])
  }
  return [...alike.values()]
}
