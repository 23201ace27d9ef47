import { polyOf } from '../../catalogue/pipe'
import type { FeedChoice } from '../../evaluate/water/compareFeeds'
import type { FeedKind } from '../../model/feedFacts'
import { money } from '../../units/money'
import type { Writer } from '../../units/writer'

const kindWords: Readonly<Record<FeedKind, string>> = {
  straight: 'Straight',
  'centre-split': 'Split once',
  'double-split': 'Split twice',
  ring: 'Ring',
}

/** A feed by name: `Split once, 3/4 in poly pipe`. */
export const feedName = ({ kind, lateral, isGraded }: FeedChoice): string =>
  `${kindWords[kind]}, ${polyOf(lateral).title}${isGraded ? ', tubes cut by station' : ''}`

const signed = (value: number, words: string): string => {
  if (value === 0) return 'as drawn'
  return value > 0 ? `+${words}` : `−${words}`
}

const moneyWords = ({ cents, unpriced }: FeedChoice['difference'], currency: string): string => {
  const known = signed(cents, money(Math.round(Math.abs(cents)), currency))
  return unpriced > 0 ? `${known}, ${unpriced} unpriced` : known
}

/** One feed in the columns of the comparison, without its name and its state; money in the job's currency. */
export interface FeedRow {
  readonly spread: string
  readonly least: string
  readonly head: string
  readonly pieces: string
  readonly pipe: string
  readonly price: string
}

export const feedRow = (
  { alone, difference, isChosen }: FeedChoice,
  writer: Writer,
  currency: string,
): FeedRow => {
  const { share, flow, sightTube, length } = writer
  const { pieces, pipeMm } = difference
  return {
    spread: share(alone.figures.spread),
    least: flow(alone.figures.least.flowLph),
    head: sightTube(alone.inletHeadMm),
    pieces: isChosen ? 'as drawn' : signed(pieces, String(Math.abs(pieces))),
    pipe: isChosen ? 'as drawn' : signed(Math.round(pipeMm), length(Math.abs(pipeMm))),
    price: isChosen ? 'as drawn' : moneyWords(difference, currency),
  }
}
