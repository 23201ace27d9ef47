import { polyOf } from '../../catalogue/pipe'
import { type PriceOf, pricesOf } from '../../catalogue/priceBook/knownPrice'
import type { Built } from '../../model/built'
import type { FeedKind } from '../../model/feedFacts'
import type { RowGrade } from '../../model/levels'
import { isSameList, rememberEach } from '../../model/remember'
import { feedKindOf } from '../../parts/rack-row/feedSizes'
import { LATERALS, type RackRow } from '../../parts/rack-row/schema'
import { type FeedValues, feedVariant, type FeedVariant, type RowBay, waterGivers } from './feedVariant'
import { gradedRow } from './gradedRow'
import { type RowAlone, rowAlone } from './rowAlone'
import { laidToReach } from './riserPlace'
import { type PartsDifference, partsDifference, pieceCount, pipeLengthMm, rowParts } from './rowParts'

/** One way of feeding a row, and what comes of it. */
export interface FeedChoice {
  readonly kind: FeedKind
  /** Catalogue key of the lateral. */
  readonly lateral: string
  /** Tubes cut by station instead of alike. */
  readonly isGraded: boolean
  /** False for the family that the row is not made of: it takes other fittings. */
  readonly isOffered: boolean
  /** The row as it is drawn. */
  readonly isChosen: boolean
  readonly alone: RowAlone
  /** Of all water parts with the pipe from the main: pieces, and pipe without microtubes. */
  readonly pieces: number
  readonly pipeMm: number
  /** Against the row as drawn. */
  readonly difference: PartsDifference
  /** What one press writes into the row. */
  readonly values: FeedValues
}

const KINDS: readonly FeedKind[] = ['straight', 'centre-split', 'double-split', 'ring']

/** A header chosen by hand is kept while the laterals can be fed by it: of the same family and no smaller. */
const headerFor = ({ header }: RackRow, lateral: RackRow['lateral']): RackRow['header'] => {
  if (header === 'next-up') return header
  const [own, fed] = [polyOf(header), polyOf(lateral)]
  return own.family === fed.family && own.idMm >= fed.idMm ? header : 'next-up'
}

interface Option {
  readonly kind: FeedKind
  readonly lateral: RackRow['lateral']
  readonly isGraded: boolean
  readonly variant: FeedVariant
  readonly values: FeedValues
}

const isDrawn = (row: RackRow, { kind, lateral, isGraded }: Omit<Option, 'variant' | 'values'>): boolean =>
  kind === feedKindOf(row) && lateral === row.lateral && isGraded === row.gradedTubes.length > 0

/** Every feed with all tubes cut alike; the drawn row stands for itself. */
const plainOptions = (row: RackRow, drawn: FeedVariant, bay: RowBay): Option[] =>
  KINDS.filter((kind) => kind !== 'ring' || row.lines > 1).flatMap((kind) =>
    LATERALS.map((lateral): Option => {
      const values = { feed: kind, lateral, header: headerFor(row, lateral), gradedTubes: [] }
      const named = { kind, lateral, isGraded: false }
      return isDrawn(row, named)
        ? { ...named, variant: drawn, values }
        : { ...named, ...laidToReach(row, values, bay) }
    }),
  )

/** Straight, with the row's own lateral and its tubes cut by station; and the drawn row where its tubes are so cut. */
const gradedOptions = (row: RackRow, drawn: FeedVariant, bay: RowBay): Option[] => {
  const { lateral } = row
  const own = { kind: feedKindOf(row), lateral, isGraded: true }
  const asDrawn: Option[] = isDrawn(row, own) ? [{ ...own, variant: drawn, values: {} }] : []
  if (asDrawn[0]?.kind === 'straight') return asDrawn
  const straight: FeedValues = { feed: 'straight', lateral, header: headerFor(row, lateral) }
  const cut = gradedRow({ ...row, ...straight }, bay)
  if (!cut) return asDrawn
  const values = { ...straight, gradedTubes: cut.gradedTubes }
  const variant = feedVariant(row, values, bay)
  return [{ kind: 'straight', lateral, isGraded: true, variant, values }, ...asDrawn]
}

const inOrder = (a: Option, b: Option): number =>
  KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) ||
  Number(a.isGraded) - Number(b.isGraded) ||
  LATERALS.indexOf(a.lateral) - LATERALS.indexOf(b.lateral)

const choiceOf = (
  row: RackRow,
  { variant, ...option }: Option,
  drawn: FeedVariant,
  bay: RowBay,
  priceOf: PriceOf,
): readonly FeedChoice[] => {
  const alone = rowAlone(variant.built, bay)
  if (!alone) return []
  const parts = rowParts(variant.things)
  return [
    {
      ...option,
      isOffered: polyOf(option.lateral).family === polyOf(row.lateral).family,
      isChosen: variant === drawn,
      alone,
      pieces: pieceCount(parts),
      pipeMm: pipeLengthMm(parts),
      difference: partsDifference(rowParts(drawn.things), parts, priceOf),
    },
  ]
}

/** The very same at every call, so that a comparison made with it is remembered. */
const placeholders = pricesOf()

/** All that the comparison of a row depends on besides the row, so that it is known when to make it again. */
interface Context {
  readonly bay: RowBay
  readonly priceOf: PriceOf
  readonly datumMm: number | undefined
  readonly grade: RowGrade | undefined
  /** What could give the row its water. */
  readonly givers: readonly Built[]
}

const isSameContext = (a: Context, b: Context): boolean =>
  a.bay.site === b.bay.site &&
  a.bay.settings === b.bay.settings &&
  a.priceOf === b.priceOf &&
  a.datumMm === b.datumMm &&
  a.grade === b.grade &&
  isSameList(a.givers, b.givers)

const compared = rememberEach<RackRow, Context, readonly FeedChoice[]>((row, { bay, priceOf }) => {
  const drawn = feedVariant(row, {}, bay)
  return [...plainOptions(row, drawn, bay), ...gradedOptions(row, drawn, bay)]
    .toSorted(inOrder)
    .flatMap((option) => choiceOf(row, option, drawn, bay, priceOf))
}, isSameContext)

/**
 * Every way of feeding one row, side by side: each kind of feed in each size of lateral, with its own tubes, and straight
 * with tubes cut by station. Each is derived in the row's place and solved by itself at the flow wanted, valves wide
 * open. In the order of kinds, then of sizes. Empty for a row without towers. Remembered while row, site, settings and
 * what could give the row its water are the same.
 */
export const compareFeeds = (
  row: RackRow,
  bay: RowBay,
  priceOf: PriceOf = placeholders,
): readonly FeedChoice[] =>
  compared(row, {
    bay,
    priceOf,
    datumMm: bay.levels.datums.get(row.id),
    grade: bay.levels.grades.get(row.id),
    givers: waterGivers(row, bay),
  })
