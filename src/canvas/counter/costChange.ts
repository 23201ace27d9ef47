import { bayChange, type BayChange } from '../../evaluate/shop/change'
import type { Evaluation } from '../../evaluate/evaluation'
import { roundMoney } from '../../units/money'

const MINUS = '−'

/** `+3 boards`, or nothing where the number is none. */
const signed = (change: number, words: string): string => `${change < 0 ? MINUS : '+'}${words}`

const boardWords = ({ boards }: BayChange): string[] => {
  const count = Math.abs(boards)
  return count === 0 ? [] : [signed(boards, `${count} ${count === 1 ? 'board' : 'boards'}`)]
}

/** Prices that nobody has asked for are no part of the sum; invented ones say so. */
const moneyWords = ({ cents, unpriced, isPlaceholder }: BayChange, currency: string): string[] => {
  const blank = unpriced > 0 ? [`${unpriced} unpriced`] : []
  if (cents === 0) return blank
  const sum = `${signed(cents, roundMoney(Math.abs(cents), currency))}${isPlaceholder ? ' at placeholder prices' : ''}`
  return [[sum, ...blank].join(' and ')]
}

/** Hours to a tenth; less is no change. */
const hourWords = ({ hours }: BayChange): string[] => {
  const tenths = Math.abs(hours).toFixed(1)
  return Number(tenths) === 0 ? [] : [signed(hours, `${tenths} h`)]
}

/** A change in one line: `+3 boards · +$18 and 2 unpriced · +1.2 h`; no line where nothing changes. */
export const changeWords = (change: BayChange, currency: string): readonly string[] => {
  const words = [...boardWords(change), ...moneyWords(change, currency), ...hourWords(change)]
  return words.length > 0 ? [words.join(' · ')] : []
}

/** What a drag does to boards, money and hours against the bay before it. */
export const costChange = (before: Evaluation, after: Evaluation): readonly string[] =>
  before === after ? [] : changeWords(bayChange(before, after), after.layout.counter.currency)
