import type { RackFacts } from '../../../../model/rackFacts'
import {
  type LoadState,
  type Stance,
  type StanceState,
  STANDS_AT,
  TALLEST_TO_BASE,
  type Tip,
} from '../../../../model/strength'
import { massOfWeight } from '../../../../units/force'
import { writeDecimal } from '../../../../units/writeDecimal'
import type { Writer } from '../../../../units/writer'
import { loadWords } from '../screenWords'

/** 0 stands, 1 is to be looked at, 2 tips. */
export const stanceRank = (state: StanceState): number => ['Stands', 'Shaky', 'Tips'].indexOf(state)

/** The tip that takes least; undefined of a row that hangs from the house. */
export const leastTip = ({ tips }: Stance): Tip | undefined =>
  tips.reduce<Tip | undefined>(
    (least, tip) => (least === undefined || tip.safety < least.safety ? tip : least),
    undefined,
  )

const wayWords: Readonly<Record<Tip['way'], string>> = { across: 'across the row', along: 'along the row' }

/** `With nothing hung`. */
const withWords = (under: LoadState): string => `With ${loadWords[under]}`

/** What tips a row, against whom, in a sentence. */
export const tipWords = (tip: Tip, { railMm }: Stance, pushN: number, write: Writer): string => {
  if (tip.tipsAtN === 0) return `${withWords(tip.under)}, it falls over by itself ${wayWords[tip.way]}.`
  return `${withWords(tip.under)}, ${write.force(tip.tipsAtN)} ${wayWords[tip.way]} at its rails, ${write.onTape(railMm)} up, tips it; a person leans or pulls with ${write.force(pushN)} (assumed).`
}

/** How a row comes to stand as it does. */
export const standsWords = ({ state, heldBy, tips }: Stance, pushN: number, write: Writer): string => {
  if (heldBy)
    return `It is ${heldBy}, and stands by that. What holds it must bear what it is short by, below.`
  if (tips.length === 0) return 'It hangs from the house, and has no feet to tip over.'
  if (state === 'Stands')
    return `It stands by its weight: nothing under ${writeDecimal(STANDS_AT, 0, 1)} times the ${write.force(pushN)} of a person tips it.`
  return 'Anchor it to the ground, tie it to the next row, or widen its base. Until then nobody leans on it.'
}

/** What anchors or ties must bear at the rails, N, so that a row stands as it should in a state; 0 where it does by itself. */
export const mustHoldN = ({ tipsAtN }: Tip, pushN: number): number => Math.max(0, STANDS_AT * pushN - tipsAtN)

export const tipColumns = [
  'With',
  'Weighs',
  'Pushed',
  'Weight to edge',
  'Tips at',
  'Over the push',
  'Short by',
  'State',
]

/** The cells of a state of load, but for its state word. */
export const tipCells = (tip: Tip, pushN: number, write: Writer): readonly string[] => [
  loadWords[tip.under],
  write.mass(massOfWeight(tip.weightN)),
  tip.way,
  write.onTape(tip.armMm),
  tip.tipsAtN === 0 ? 'by itself' : write.force(tip.tipsAtN),
  writeDecimal(tip.safety, 2),
  mustHoldN(tip, pushN) > 0 ? write.force(mustHoldN(tip, pushN)) : '',
]

export const ruleColumns = ['Rule of the trade', 'Here', 'At most']

/** The two rules that a row is held to beside a push. Common practice, no source. */
export const ruleRows = (stance: Stance, write: Writer): readonly (readonly string[])[] => [
  [
    'Towers of one side, taken together, from the centreline',
    write.onTape(stance.oneSideMm),
    write.onTape(stance.oneSideLimitMm),
  ],
  [
    'Riser over the width of the base',
    writeDecimal(stance.heightToBase, 2),
    writeDecimal(TALLEST_TO_BASE, 1, 2),
  ],
]

const holdWords: Readonly<Record<RackFacts['hold'], string>> = {
  free: 'Nothing but its weight holds it',
  anchored: 'Anchored to the ground',
  tied: 'Tied to its neighbour or to the house',
}

/** What holds a row, as its own field says. */
export const heldWords = ({ hold, carriedBy }: Pick<RackFacts, 'hold' | 'carriedBy'>): string =>
  carriedBy === 'house' ? 'The house holds it up' : holdWords[hold]
