import type { Finding, Mend } from '../model/finding'
import type { Words } from './context'
import { ruleOf } from './index'
import { quantityWords, shiftWords } from './measuredWords'
import { setWords, splitWords } from './setWords'

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/**
 * Words that tell what was measured from its limit: to the step that the crew uses, or, where both would read 914 mm, as
 * exactly as anybody types.
 */
export const tellingWords = ({ measured, limit }: Finding, words: Words): Words =>
  quantityWords(measured, words) === quantityWords(limit, words) ? { ...words, ...words.exact() } : words

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
    case 'size-pit':
      return `Set the levels of ${words.name(mend.part)} from its inlet down, with room for ${words.volume(mend.asks.designL)}`
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
