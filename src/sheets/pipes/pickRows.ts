import { clampsOf } from '../../catalogue/barbed'
import { fittingOf } from '../../catalogue/fittings'
import { polys } from '../../catalogue/pipe'
import { pieceLines, stockAndMark } from '../../evaluate/takeOff/pieces'
import type { Evaluation } from '../../evaluate/evaluation'
import { memberTitle } from '../../model/memberNames'
import type { CountLine } from '../../model/countLine'
import { bySize } from '../../units/bySize'
import type { Bag } from './bags'

/** One thing to pick: what it is, how many or how long, and what is clamped to it. */
export interface Pick {
  /** Catalogue key; of pipe with its role behind it. */
  readonly item: string
  readonly words: string
  readonly count: number
  readonly unit: CountLine['unit']
  /** Ends that pipe is pushed on, of all of them together; 0 for what has threads or no end at all. */
  readonly barbedEnds: number
}

/** In the order in which a plumber fills the bag. */
export const PICK_KINDS = ['pipe', 'fittings', 'valves', 'ends', 'small'] as const
export type PickKind = (typeof PICK_KINDS)[number]

const VALVES: ReadonlySet<string> = new Set([
  'pump',
  'foot-strainer',
  'check-valve',
  'filter',
  'bypass-valve',
  'head-box',
  'overflow-tee',
  'head-box-stand',
  'union',
  'ball-valve',
  'trim-valve',
  'nipple',
])

const ENDS: ReadonlySet<string> = new Set([
  'sight-tube',
  'sight-tube-tee',
  'lateral-flush-cap',
  'lateral-flush-valve',
  'lateral-plug',
  'main-cap',
])

const SMALL: ReadonlySet<string> = new Set([
  'clamp',
  'barb',
  'goof-plug',
  'ptfe-tape',
  'pipe-strap',
  'zip-tie',
])

/** Where a counted thing stands on the list. */
export const kindOfPick = (item: string): PickKind => {
  if (item.includes('#')) return 'pipe'
  const { noun } = fittingOf(item)
  if (VALVES.has(noun)) return 'valves'
  if (ENDS.has(noun)) return 'ends'
  return SMALL.has(noun) ? 'small' : 'fittings'
}

/** Pipe that holds one clamp an end wherever it lies above ground: what counts clamps on it counts ends. */
const ONE_CLAMP_PIPE = polys.find(({ key }) => key === 'pe-1/2')?.key ?? 'pe-1/2'

/** Barbs of one of a fitting, whatever pipe it is for. Saddles and what joins two sizes are not counted by one pipe. */
const barbedEndsOf = (item: string): number => {
  const { noun } = fittingOf(item)
  if (noun === 'saddle') return 1
  if (noun === 'reducing-coupling' || noun === 'family-adapter') return 2
  return clampsOf(noun, ONE_CLAMP_PIPE)
}

const pipeWords = (line: CountLine): string => {
  const [, role = ''] = stockAndMark(line.item)
  return `${memberTitle(role)}, ${line.title}`
}

const isWater = ({ group, item, isWork }: CountLine): boolean =>
  !isWork && (group === 'water' || item === 'zip-tie')

/** All that is picked for the bay's water: pipe by what it is for, and every counted thing. */
export const waterLines = ({ bay, counts }: Evaluation): readonly CountLine[] => [
  ...pieceLines([...bay.built, ...bay.joinedPipes]).filter(({ group }) => group === 'water'),
  ...counts.filter(isWater),
]

const pickOf = (line: CountLine, count: number): Pick => {
  const isPipe = line.item.includes('#')
  return {
    item: line.item,
    words: isPipe ? pipeWords(line) : line.title,
    count,
    unit: line.unit,
    barbedEnds: isPipe ? 0 : count * barbedEndsOf(line.item),
  }
}

const ofBag = ({ perPart }: Shares, { parts }: Bag): number =>
  parts.reduce((sum, part) => sum + (perPart.get(part) ?? 0), 0)

/** What of a line each part brings, found once: the line itself finds it anew each time that it is asked. */
interface Shares {
  readonly line: CountLine
  readonly perPart: CountLine['perPart']
}

export const sharesOf = (lines: readonly CountLine[]): readonly Shares[] =>
  lines.map((line) => ({ line, perPart: line.perPart }))

const order = (a: Pick, b: Pick): number =>
  PICK_KINDS.indexOf(kindOfPick(a.item)) - PICK_KINDS.indexOf(kindOfPick(b.item)) || bySize(a.words, b.words)

/** What goes in one bag, in the order in which it is picked; nothing of what it has none of. */
export const picksOf = (shares: readonly Shares[], bag: Bag): readonly Pick[] =>
  shares
    .map((share) => pickOf(share.line, ofBag(share, bag)))
    .filter(({ count }) => count > 0)
    .toSorted(order)

/** The whole bay's, for who loads the van. */
export const picksOfAll = (lines: readonly CountLine[]): readonly Pick[] =>
  lines.map((line) => pickOf(line, line.count)).toSorted(order)
