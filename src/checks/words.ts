import type { Finding, Mend } from '../model/finding'
import type { Words } from './context'
import { ruleOf } from './index'

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

const compass = (dxMm: number, dyMm: number, { length }: Words): string =>
  [
    dyMm !== 0 ? `${length(Math.abs(dyMm))} ${dyMm > 0 ? 'north' : 'south'}` : '',
    dxMm !== 0 ? `${length(Math.abs(dxMm))} ${dxMm > 0 ? 'east' : 'west'}` : '',
  ]
    .filter(Boolean)
    .join(' and ')

/** What one press would do: `Move Row 3 8 in east`. */
export const mendWords = (mend: Mend, finding: Finding, words: Words): string => {
  switch (mend.kind) {
    case 'move':
      return `Move ${listed(mend.parts.map(words.name))} ${compass(mend.dxMm, mend.dyMm, words)}`
    case 'lay':
      return mend.what === 'main'
        ? `Lay a main to ${words.name(finding.parts[0] ?? '')}`
        : `Lay a drain line under ${words.name(finding.parts[0] ?? '')}`
    case 'dig':
      return `Dig a pit at the end of ${words.name(finding.parts[0] ?? '')}`
    case 'set':
      return setWords(mend, words)
  }
}

const setWords = ({ part, field, value }: Mend & { kind: 'set' }, { name, length, fall }: Words): string => {
  switch (field) {
    case 'slope':
      return `Give ${name(part)} a fall of ${fall(Number(value))}`
    case 'startInvertMm':
      return `Start ${name(part)} as high as its cover allows`
    case 'overflowMm':
      return `Set the overflow of ${name(part)} to ${length(Number(value))}`
    case 'riserMm':
      return `Let the risers of ${name(part)} be as long as the levels ask`
    default:
      return `Set ${field} of ${name(part)}`
  }
}

/** What is wrong, by how much, and what would mend it. */
export const sentence = (finding: Finding, words: Words): string => {
  const wrong = ruleOf(finding.rule).say(finding, words)
  return finding.mend ? `${wrong} ${mendWords(finding.mend, finding, words)}.` : wrong
}
