import type { Finding, Mend, Quantity } from '../model/finding'
import type { Writer } from '../units/writer'
import type { Words } from './context'
import { ruleOf } from './index'
import { setWords, splitWords } from './setWords'

/**
 * How lengths are read. What a builder holds a tape to is in inches alone, `36"`: clearances, aisles, carts, headroom,
 * covers, drops, gaps, shims, and how far a mend shifts a thing. What is long, and where a thing lies, is in feet,
 * `34' 0"`: gutter runs, drains, stock, places, levels. A rule's sentence and its arithmetic never differ.
 */
export const quantityWords = ({ value, unit, isInFeet, isTotal }: Quantity, writer: Writer): string => {
  switch (unit) {
    case 'mm':
      return isInFeet ? writer.length(value) : writer.onTape(value)
    case 'mm/m':
      return writer.fall(value)
    case 'lph':
      return isTotal ? writer.flowTotal(value) : writer.flow(value)
    case 'm/s':
      return writer.velocity(value)
    case 'C':
      return writer.temperature(value)
    case 'share':
      return writer.share(value)
    case 'count':
      return String(value)
  }
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/**
 * Words that tell what was measured from its limit: to the step that the crew uses, or, where both would read 914 mm, as
 * exactly as anybody types.
 */
export const tellingWords = ({ measured, limit }: Finding, words: Words): Words =>
  quantityWords(measured, words) === quantityWords(limit, words) ? { ...words, ...words.exact() } : words

/** How far a thing goes by the compass: `8" north and 2" east`. */
export const shiftWords = (dxMm: number, dyMm: number, { onTape }: Writer): string =>
  [
    dyMm !== 0 ? `${onTape(Math.abs(dyMm))} ${dyMm > 0 ? 'north' : 'south'}` : '',
    dxMm !== 0 ? `${onTape(Math.abs(dxMm))} ${dxMm > 0 ? 'east' : 'west'}` : '',
  ]
    .filter(Boolean)
    .join(' and ')

/** What one press would do: `Move Row 3 8" east`. */
export const mendWords = (mend: Mend, finding: Finding, words: Words): string => {
  switch (mend.kind) {
    case 'move':
      return `Move ${listed(mend.parts.map(words.name))} ${shiftWords(mend.dxMm, mend.dyMm, words)}`
    case 'split':
      return splitWords(mend.feed, words.name(mend.part))
    case 'lay':
      return mend.what === 'main'
        ? `Lay a main to ${words.name(finding.parts[0] ?? '')}`
        : `Lay a drain line under ${words.name(finding.parts[0] ?? '')}`
    case 'level-rows':
      return 'Let the rails be level row by row'
    case 'dig':
      return `Dig a pit at the end of ${words.name(finding.parts[0] ?? '')}`
    case 'lower':
      return `Let ${words.name(mend.part)} down ${words.onTape(mend.byMm)}, all its levels but the rim`
    case 'set':
      return setWords(mend, words)
  }
}

/** What is wrong, by how much, and what would mend it. */
export const sentence = (finding: Finding, words: Words): string => {
  const telling = tellingWords(finding, words)
  const wrong = ruleOf(finding.rule).say(finding, telling)
  return finding.mend ? `${wrong} ${mendWords(finding.mend, finding, telling)}.` : wrong
}
