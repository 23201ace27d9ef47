import { polyOf, polys } from '../../catalogue/pipe'
import type { FeedKind } from '../../model/feedFacts'
import type { RackRow } from './schema'

type Fed = Pick<RackRow, 'feed' | 'lines' | 'laterals'>

/** A ring takes two laterals, and so two lines: a single line is fed straight. */
export const feedKindOf = ({ feed, lines }: Pick<RackRow, 'feed' | 'lines'>): FeedKind =>
  feed === 'ring' && lines < 2 ? 'straight' : feed

export const isFedInMiddle = ({ feed }: Pick<RackRow, 'feed'>): boolean =>
  feed === 'centre-split' || feed === 'double-split'

/** No more laterals than lines; a ring has two at least. */
export const lateralCount = (part: Fed): number =>
  Math.min(Math.max(part.laterals, feedKindOf(part) === 'ring' ? 2 : 1), part.lines)

/** The next bigger pipe of the same family; the pipe itself where it is the biggest. */
const nextUp = (key: string): string => {
  const { family, idMm } = polyOf(key)
  const bigger = polys.filter((poly) => poly.family === family && poly.idMm > idMm)
  return bigger.toSorted((a, b) => a.idMm - b.idMm)[0]?.key ?? key
}

const NEXT_UP: ReadonlyMap<string, string> = new Map(polys.map(({ key }) => [key, nextUp(key)]))

/** Catalogue key of the header and the riser pipe. One size over the laterals: common practice, no source. */
export const headerStock = ({ lateral, header }: Pick<RackRow, 'lateral' | 'header'>): string =>
  header === 'next-up' ? (NEXT_UP.get(lateral) ?? lateral) : header
