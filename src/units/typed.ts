/** Nobody needs more characters for one measure; the rest is a slip of the clipboard. */
const LONGEST_TEXT = 40

const VULGAR_FRACTION = /[¼½¾⅐-⅞]/g

/** What stands for a mark on some keyboard, screen or tongue, and the one mark that the readers know. */
const SAME_MARK: readonly (readonly [RegExp, string])[] = [
  [/⁄/g, '/'],
  [/[−–—]/g, '-'],
  [/[″”“]|['′’]{2}/g, '"'],
  [/[′’‘]/g, "'"],
  [/millimet(?:er|re)s?/g, 'mm'],
  [/centimet(?:er|re)s?/g, 'cm'],
  [/met(?:er|re)s?/g, 'm'],
  [/(?:feet|foot|ft)(?![a-z])\.?/g, "'"],
  [/(?:inches|inch|in)(?![a-z])\.?/g, '"'],
  [/\s*\/\s*/g, '/'],
  [/\s+/g, ' '],
]

/** 6½ is 6 1/2: such a sign is set tight against its whole number. */
const spellOut = (text: string): string =>
  text.replace(VULGAR_FRACTION, (fraction) => ` ${fraction.normalize('NFKC')}`)

/**
 * What a builder typed, spelled one way: feet `'`, inches `"`, fractions `1/2`, minus `-`, single spaces, small letters.
 * It only respells; whether the text means anything is for its reader to say.
 */
export const respell = (text: string): string =>
  SAME_MARK.reduce((typed, [same, mark]) => typed.replace(same, mark), spellOut(text.toLowerCase())).trim()

/** Marks that mean the same in every measure, without the words of lengths: the `min` of L/min is no `m` and no inch. */
const PLAIN_MARK: typeof SAME_MARK = [
  [/[−–—]/g, '-'],
  [/[⁄∕]/g, '/'],
  [/º/g, '°'],
  [/\s*\/\s*/g, '/'],
  [/\s+/g, ' '],
]

/** What a builder typed of anything but a length, spelled one way: minus `-`, single spaces, small letters. */
export const respellPlain = (text: string): string =>
  PLAIN_MARK.reduce((typed, [same, mark]) => typed.replace(same, mark), text.toLowerCase()).trim()

/** The sign in front of a respelled text, and the rest. */
export const splitSign = (text: string): { readonly sign: 1 | -1; readonly rest: string } => {
  const match = /^([+-])?\s*(.*)$/.exec(text)
  return { sign: match?.[1] === '-' ? -1 : 1, rest: match?.[2] ?? '' }
}

/** A sentence on a text that no reader should try, or undefined. `examples` ends it. */
export const faultOfText = (text: string, examples: string): string | undefined => {
  const typed = text.trim()
  if (typed === '') return `Nothing is typed. Write it like ${examples}.`
  if (typed.length > LONGEST_TEXT) return `That is too long to be one measure. Write it like ${examples}.`
  if (typed.includes(','))
    return `“${typed}” has a comma. Write thousands without one, and decimals with a point.`
  return undefined
}
