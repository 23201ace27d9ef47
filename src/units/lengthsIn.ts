/** A written number: `5' 6-1/2`, `17-1/2`, `1/2`, `12.3`, with its sign. */
const WRITTEN = String.raw`-?(?:\d+' )?(?:\d+-)?\d+(?:[./]\d+)?`

/** Signs of units that end in a letter; the longer of two that begin alike first. */
const LETTERS =
  'mm/m|mm|in/ft|ft/s|ft|m/s|min|m|gph|gpm|gal|L/h|L/min|lb-in|lb|kg|ksi|psi|MPa|psf|kPa|N·m|N|L|W|h|s'

/** A written measure with its unit, as the writers write them. */
const LENGTH = new RegExp(String.raw`(${WRITTEN}(?:"| (?:yd³|m³|(?:${LETTERS})\b|%|°[CF]\b)))`)

export interface Wording {
  readonly text: string
  /** A length or another measure: on a page it stands on one line, for 2' at the end of a line is read as 2 feet. */
  readonly isLength: boolean
}

/** A sentence taken apart into its measures and the words between them, in order; nothing is lost. */
export const lengthsIn = (sentence: string): readonly Wording[] =>
  sentence
    .split(LENGTH)
    .map((text, index) => ({ text, isLength: index % 2 === 1 }))
    .filter(({ text }) => text !== '')
