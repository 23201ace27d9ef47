import { polyOf } from '../catalogue/pipe'
import type { Built } from '../model/built'
import type { FeedFacts, FeedPipe } from '../model/feedFacts'
import type { Finding, Mend } from '../model/finding'
import type { Join } from '../model/levels'
import type { Bay, BayRule } from './context'
import { found } from './found'
import { rowPlace } from './rowPlace'

const RULE = 'poly-family-same'

const stockOf = ({ pipes }: FeedFacts, isWanted: (pipe: FeedPipe) => boolean): string | undefined =>
  pipes.find(isWanted)?.stock

const lateralStock = (feed: FeedFacts) => stockOf(feed, ({ role }) => role === 'lateral')

/** What the header is made of, or would be: the row's riser pipe and inlet are of the same. */
const isMixed = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && polyOf(a).family !== polyOf(b).family

/** Two pipes that a fitting should join, of which it takes only one. */
interface Mix {
  readonly built: Built
  readonly other: Built | undefined
  readonly header: string
  readonly against: string
  readonly what: 'laterals' | 'header'
  readonly mend: Mend | undefined
}

/** A header one size over the laterals is always of their family. */
const nextUp = ({ part }: Built): Mend => ({ kind: 'set', part, field: 'header', value: 'next-up' })

const inRow = (built: Built): Mix[] => {
  const { feed } = built
  const against = feed && lateralStock(feed)
  if (!feed || against === undefined || !isMixed(feed.inletStock, against)) return []
  return [
    { built, other: undefined, header: feed.inletStock, against, what: 'laterals', mend: nextUp(built) },
  ]
}

/** A row that takes its water at another's riser pipe is joined to it by a barbed tee. */
const betweenRows = (join: Join, { builtOf }: Bay): Mix[] => {
  if (join.kind !== 'zone-to-zone' || join.to === undefined) return []
  const [built, other] = [builtOf.get(join.from), builtOf.get(join.to)]
  const [header, against] = [built?.feed?.inletStock, other?.feed?.inletStock]
  if (!built?.feed || !other || !header || !against || !isMixed(header, against)) return []
  // Where its own header is the odd one out, that mends both.
  const mend = isMixed(header, lateralStock(built.feed)) ? nextUp(built) : undefined
  return [{ built, other, header, against, what: 'header', mend }]
}

const findingOf = ({ built, other, header, against, what, mend }: Mix): Finding[] => {
  const { part, rack } = built
  if (!rack) return []
  return [
    found({
      rule: RULE,
      subject: 'fit',
      state: 'Clash',
      parts: other ? [part, other.part] : [part],
      detail: what,
      at: rowPlace(rack),
      measured: { value: 2, unit: 'count' },
      limit: { value: 1, unit: 'count' },
      facts: { what, header: polyOf(header).title, against: polyOf(against).title },
      ...(mend && { mend }),
    }),
  ]
}

/** Poly pipe and drip tubing of one name differ in bore, and neither takes the other's fittings. */
export const polyFamilySame: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Poly pipe and drip tubing apart',
  limit: 'One family of pipe wherever a barbed fitting joins two',
  source: 'Common practice, no source: the two families are made to different bores and share no fittings',
  mending: 'Take the header of the family of its laterals.',
  check: (bay) => [
    ...bay.built.flatMap(inRow).flatMap(findingOf),
    ...bay.joins.flatMap((join) => betweenRows(join, bay)).flatMap(findingOf),
  ],
  say: ({ parts, facts }, { name }) =>
    facts['what'] === 'laterals'
      ? `The header of ${name(parts[0] ?? '')} is ${facts['header']} and its laterals are ${facts['against']}: no fitting joins the two.`
      : `The header of ${name(parts[0] ?? '')} is ${facts['header']} and the riser pipe of ${name(parts[1] ?? '')} that it takes its water from is ${facts['against']}: no fitting joins the two.`,
}
