import { stockOf } from '../catalogue/stock'
import type { Finding } from '../model/finding'
import { writeDecimal } from '../units/writeDecimal'
import type { Words } from './context'
import { quantityWords } from './measuredWords'
import { loadWords } from './strengthRule'

const numberOf = (fact: string | number | undefined): number => Number(fact ?? NaN)

/** Over its assumed yield a conduit has no sag that could be told: it folds. Under it a proof load may speak for it. */
const afterwards = ({ state, measured, facts }: Finding, { stress }: Words): string => {
  const yieldMpa = numberOf(facts['yieldMpa'])
  if (measured.unit === 'MPa' && measured.value > yieldMpa)
    return ` Over ${stress(yieldMpa)}, where conduit is assumed to yield, it folds or stays bent.`
  if (state !== 'Proof-load') return ''
  return ` Try it with ${writeDecimal(numberOf(facts['proofTimes']), 2).replace(/\.?0+$/, '')} times its load before anyone works under it.`
}

/** A sag and its limit may be told apart by no tape: then in thousandths. */
const bothWords = ({ measured, limit }: Finding, words: Words): readonly [string, string] => {
  const [is, allowed] = [quantityWords(measured, words), quantityWords(limit, words)]
  const isAlike = is === allowed && measured.unit === 'mm'
  return isAlike ? [words.bore(measured.value), words.bore(limit.value)] : [is, allowed]
}

/** What a conduit as a beam carries or how far it sags, against what is allowed: `The rails of A reach 24.8 ksi between ...`. */
export const conduitWords = (finding: Finding, members: string, where: string, words: Words): string => {
  const { measured } = finding
  const [is, allowed] = bothWords(finding, words)
  const does = measured.unit === 'MPa' ? `reach ${is}` : `sag ${is}`
  return `${members} ${does} ${where} ${loadWords(finding)}; ${allowed} is allowed.${afterwards(finding, words)}`
}

/** What a stock is called in a sentence: `3/4 in conduit`. */
export const stockWords = (stock: string | number | undefined): string =>
  stock === undefined ? 'conduit' : stockOf(String(stock)).title
