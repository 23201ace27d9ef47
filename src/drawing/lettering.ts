import { lengthsIn } from '../units/lengthsIn'

/**
 * Advance widths of Helvetica in thousandths of the letter height, by width; Liberation Sans and Arial have the same.
 * Source: Adobe Core 14 AFM files, Helvetica.afm (from memory; checked in a browser against Liberation Sans).
 */
const ADVANCES: readonly (readonly [width: number, letters: string])[] = [
  [191, "'"],
  [222, 'ijl’‘'],
  [260, '|'],
  [278, ' !,./:;I[\\]ft·'],
  [333, '()-`r'],
  [355, '"'],
  [400, '°'],
  [500, 'Jcksvxyz'],
  [556, '#$0123456789?L_abdeghnopqu–'],
  [584, '+<=>~×'],
  [611, 'FTZ'],
  [667, '&ABEKPSVXY'],
  [722, 'CDHNRUw'],
  [778, 'GOQ'],
  [833, 'Mm'],
  [889, '%'],
  [944, 'W'],
  [1000, '—→←↑↓…'],
  [1015, '@'],
]

/** As wide as a capital, so that a foreign letter is never clipped. */
const UNKNOWN = 0.78

const widths: ReadonlyMap<string, number> = new Map(
  ADVANCES.flatMap(([width, letters]) => letters.split('').map((letter) => [letter, width / 1000] as const)),
)

/** Width of a line of words at a letter height, both in the same unit. */
export const textWidth = (text: string, height: number): number => {
  let ems = 0
  for (const letter of text) ems += widths.get(letter) ?? UNKNOWN
  return ems * height
}

/** A space that no line breaks at. */
const HELD = '\u00a0'

/** The size of a fitting as the trade names it, a mass, and `2 x` before what there are two of. */
const BEFORE_UNIT = /(\d) (?=(?:in|lb|kg)\b)/g
const TIMES = /(\d) x (?=\S)/g

/** The words of a text; a measure and its unit are one, for 10.0 at the end of a line is read without its unit. */
const wordsOf = (text: string): readonly string[] =>
  lengthsIn(text)
    .map((part) => (part.isLength ? part.text.replaceAll(' ', HELD) : part.text))
    .join('')
    .replace(BEFORE_UNIT, `$1${HELD}`)
    .replace(TIMES, `$1${HELD}x${HELD}`)
    .split(/[^\S\u00a0]+/)
    .filter((word) => word !== '')
    .map((word) => word.replaceAll(HELD, ' '))

/** Words broken into lines no wider than `width`; a single word that is wider stands alone. */
export const wrapped = (text: string, height: number, width: number): string[] => {
  const lines: string[] = []
  let line = ''
  for (const word of wordsOf(text)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line !== '' && textWidth(longer, height) > width) {
      lines.push(line)
      line = word
    } else line = longer
  }
  return line === '' ? lines : [...lines, line]
}

/** The words, cut at the end with an ellipsis where they are wider than `width`. */
export const clipped = (text: string, height: number, width: number): string => {
  if (textWidth(text, height) <= width) return text
  let kept = text
  while (kept !== '' && textWidth(`${kept}…`, height) > width) kept = kept.slice(0, -1)
  return `${kept.trimEnd()}…`
}
