import { NUMBER } from './fraction'
import { faultOfText, respellPlain, splitSign } from './typed'

/** What a builder typed, as a number in the program's own unit, or a sentence. */
export type ParsedNumber =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly sentence: string }

export type Convert = (value: number) => number

/** One way of writing a measure: the text after the number, and what the number then becomes. */
export type Sign = readonly [RegExp, Convert]

export interface Measure {
  readonly noun: string
  readonly examples: string
  readonly signs: readonly Sign[]
  /** What a number without a sign becomes. */
  readonly bare: Convert
}

const LEADING_NUMBER = new RegExp(`^(${NUMBER}) ?(.*)$`)

export const asIs: Convert = (value) => value

/** A typed measure as a number in the program's own unit, or a sentence. */
export const readMeasure = (text: string, { noun, examples, signs, bare }: Measure): ParsedNumber => {
  const fault = faultOfText(text, examples)
  if (fault !== undefined) return { ok: false, sentence: fault }
  const { sign, rest } = splitSign(respellPlain(text))
  const [, digits = '', unit = ''] = LEADING_NUMBER.exec(rest) ?? []
  const convert = unit === '' ? bare : signs.find(([pattern]) => pattern.test(unit))?.[1]
  if (digits === '' || !convert)
    return { ok: false, sentence: `“${text.trim()}” is not ${noun}. Write it like ${examples}.` }
  // Adding 0 makes the -0 of a typed "-0" an ordinary zero.
  return { ok: true, value: convert(sign * Number(digits)) + 0 }
}
