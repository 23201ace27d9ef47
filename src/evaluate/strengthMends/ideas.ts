import { conduitOf, type ConduitTrade } from '../../catalogue/conduit'
import type { Settings } from '../../layout/settings'
import type { RowStrength } from '../../model/strength'
import type { RackRow } from '../../parts/rack-row/schema'
import { inches, onTick } from '../../units/length'
import { ailing, type AilmentId, type Ailments } from './ailments'
import type { RowValues } from './rowTrial'

/** Something that may mend a row: fields and what they would be. */
export interface Idea {
  readonly values: RowValues
  /**
   * How much has to be taken in hand for it, to try the lighter ones first where two are put together: 0 is what only stands
   * elsewhere, more is more to buy and to do, and towers that are given up come last.
   */
  readonly weight: number
}

/** All that ideas are had from. */
export interface Ailing {
  readonly row: RackRow
  readonly strength: RowStrength
  readonly ailments: Ailments
  readonly settings: Settings
}

const QUARTER = inches(1 / 4)

const idea = (weight: number, values: RowValues): Idea => ({ weight, values })

const isAny = ({ ailments }: Ailing, is: (id: AilmentId) => boolean): boolean => ailing(ailments).some(is)

const ofRails = (id: AilmentId): boolean => id.startsWith('rail')

/** What a rail hands down ails by the rail. */
const ofRisers = (id: AilmentId): boolean => id.startsWith('riser') || id.startsWith('hole')

/** A bit is so much over its conduit, to the next sixteenth: common practice, no source. */
const bitFor = (trade: string): number => {
  const sixteenths = Math.ceil(((conduitOf(trade).odMm + inches(1 / 64)) / inches(1)) * 16 - 0.01)
  return inches(sixteenths / 16)
}

const MOST_MID_PAIRS = 4

const moreMidPairs = (ill: Ailing): Idea[] =>
  isAny(ill, (id) => ofRails(id) || ofRisers(id) || id === 'stance' || id === 'ground-bearing')
    ? Array.from(
        { length: Math.max(0, MOST_MID_PAIRS - ill.row.midPairs) },
        (_, k) => ill.row.midPairs + k + 1,
      ).map((midPairs) => idea(2, { midPairs }))
    : []

/** A rail goes into its sleeve by four of its diameters: common practice, no source, as rail-insertion-min asks. */
const insertionFor = (trade: string): number => Math.ceil((4 * conduitOf(trade).odMm) / QUARTER) * QUARTER

const SLEEVED: readonly RackRow['joint'][] = ['J1', 'J2', 'J4']

/** Joints at which what the rail slides into goes through a hole. */
const BIG_IN_HOLE: readonly RackRow['joint'][] = ['J1', 'J3']

const railSizes = ['1/2', '3/4', '1'] as const satisfies readonly RackRow['rail'][]

/** A bigger rail with what goes with it: bits that let it through, and enough of it in its sleeves. */
const asRail = (row: RackRow, rail: RackRow['rail']): RowValues => {
  const { racks, joint, railBitMm, sleeveBitMm, insertionMm } = row
  const bitMm = bitFor(rail)
  const big: ConduitTrade | undefined = conduitOf(rail).slidesInto
  const inMm = racks > 1 && SLEEVED.includes(joint) ? insertionFor(rail) : 0
  const bigBitMm = big && racks > 1 && BIG_IN_HOLE.includes(joint) ? bitFor(big) : 0
  return {
    rail,
    ...(railBitMm < bitMm && { railBitMm: bitMm }),
    ...(sleeveBitMm < bigBitMm && { sleeveBitMm: bigBitMm }),
    ...(insertionMm < inMm && { insertionMm: inMm }),
  }
}

const biggerRails = (ill: Ailing): Idea[] =>
  isAny(ill, ofRails)
    ? railSizes
        .slice(railSizes.indexOf(ill.row.rail) + 1)
        .map((rail, over) => idea(over === 0 ? 3 : 4, asRail(ill.row, rail)))
    : []

const barSizes = ['1/2', '3/4', '1', '1-1/4'] as const satisfies readonly RackRow['bar'][]

const ofBars = (id: AilmentId): boolean => id.startsWith('bar')

const biggerBars = (ill: Ailing): Idea[] =>
  isAny(ill, ofBars)
    ? barSizes.slice(barSizes.indexOf(ill.row.bar) + 1).map((bar, over) => idea(over === 0 ? 3 : 4, { bar }))
    : []

/** Heavier than anything that keeps every tower. */
const GIVES_UP_TOWERS = 20

const fewerLines = (ill: Ailing): Idea[] => {
  const { lines, laterals } = ill.row
  if (lines === 1 || !isAny(ill, (id) => id !== 'stance')) return []
  const left = lines - 1
  return [idea(GIVES_UP_TOWERS, { lines: left, ...(laterals > left && { laterals: left }) })]
}

const LEAST_SPACING = inches(12)
const MOST_SPACING = inches(54)

/** What a builder sets rails to: half inches, or centimetres. */
const spacingStep = ({ units }: Settings): number => (units === 'metric' ? 10 : inches(1 / 2))

const toStep = (mm: number, stepMm: number): number => onTick(Math.round(mm / stepMm) * stepMm)

/** Under four lines, two to two and a third of their spacing: trade notes, statics of a bar with four like loads on two rails. */
const OF_LINE_SPACING = [2, 7 / 3]

const isNew = (value: number, now: number): boolean => Math.abs(value - now) > inches(1 / 64)

const spacings = (ill: Ailing, list: readonly number[]): Idea[] => {
  const stepMm = spacingStep(ill.settings)
  const set = new Set(list.map((mm) => toStep(mm, stepMm)))
  return [...set]
    .filter((mm) => mm >= LEAST_SPACING && mm <= MOST_SPACING && isNew(mm, ill.row.railSpacingMm))
    .map((railSpacingMm) => idea(1, { railSpacingMm }))
}

/** Rails where the bar bends alike over them and between them. */
const betterSpacings = (ill: Ailing): Idea[] => {
  const bestMm = ill.strength.bar?.bestSpacingMm
  if (!isAny(ill, (id) => ofBars(id) || ofRails(id)) || ill.row.lines < 2) return []
  const times = ill.row.lines === 4 ? OF_LINE_SPACING.map((share) => share * ill.row.lineSpacingMm) : []
  return spacings(ill, [...(bestMm === undefined ? [] : [bestMm]), ...times])
}

const WIDER_BY = inches(2)

/** Wider and wider bases, to be gone through until one stands. */
export const widerBases = (ill: Ailing): Idea[] => {
  if (!isAny(ill, (id) => id === 'stance')) return []
  const count = Math.floor((MOST_SPACING - ill.row.railSpacingMm) / WIDER_BY)
  return spacings(
    ill,
    Array.from({ length: Math.max(0, count) }, (_, k) => ill.row.railSpacingMm + (k + 1) * WIDER_BY),
  )
}

/** A dowel inside the rails is a repair, which is not proposed. */
const joints = ['J1', 'J2', 'J3', 'J5'] as const satisfies readonly RackRow['joint'][]

const otherJoints = (ill: Ailing): Idea[] =>
  ill.row.racks > 1 && isAny(ill, (id) => ofRails(id) || ofRisers(id))
    ? joints.filter((joint) => joint !== ill.row.joint).map((joint) => idea(3, { joint }))
    : []

const holds = (ill: Ailing): Idea[] =>
  ill.row.hold === 'free' && isAny(ill, (id) => id === 'stance')
    ? [idea(1, { hold: 'anchored' }), idea(1, { hold: 'tied' })]
    : []

const braces = (ill: Ailing): Idea[] =>
  ill.row.bracing !== 'both' && isAny(ill, ofRisers) ? [idea(2, { bracing: 'both' })] : []

/** More wood over the hole, to the next quarter inch, and risers as long as that takes. */
const higherRisers = (ill: Ailing): Idea[] => {
  const end = ill.strength.screens.find(({ id, state }) => id === 'hole-end' && state !== 'Within')
  if (!end) return []
  const topMarginMm = Math.ceil(end.limit.value / QUARTER - 0.01) * QUARTER
  const isFixed = ill.row.riserMm !== null
  return [idea(1, { topMarginMm, ...(isFixed && { riserMm: null }) })]
}

const ownBits = (ill: Ailing): Idea[] =>
  ill.row.oneBit && isAny(ill, (id) => id.startsWith('hole')) ? [idea(0, { oneBit: false })] : []

const longerRunners = (ill: Ailing): Idea[] =>
  ill.row.base === 'short-runners' && isAny(ill, (id) => id === 'ground-bearing' || id === 'stance')
    ? [idea(2, { base: 'long-runners' })]
    : []

const offTheHouse = (ill: Ailing): Idea[] =>
  ill.row.carriedBy === 'house' && isAny(ill, (id) => id === 'house-load')
    ? [idea(4, { carriedBy: 'floor' })]
    : []

/** Single changes that may mend a row, for what ails it; whether they do is not told yet. */
export const ideasFor = (ill: Ailing): readonly Idea[] => [
  ...moreMidPairs(ill),
  ...biggerRails(ill),
  ...biggerBars(ill),
  ...betterSpacings(ill),
  ...otherJoints(ill),
  ...holds(ill),
  ...braces(ill),
  ...higherRisers(ill),
  ...ownBits(ill),
  ...longerRunners(ill),
  ...offTheHouse(ill),
  ...fewerLines(ill),
]

/** Places of the end pairs that are tried. */
const endStep = ({ units }: Settings): number => (units === 'metric' ? 25 : inches(1))

const MOST_IN = inches(36)

/** End pairs move in by a third of a rack at most: rack-row/pairPlaces.ts has the same. */
const MOST_SHARE = 1 / 3

/** The end pairs moved in step by step, to be gone through for the best. */
export const endsIn = (ill: Ailing): Idea[] => {
  if (!isAny(ill, (id) => ofRails(id) || ofRisers(id))) return []
  const stepMm = endStep(ill.settings)
  const count = Math.floor(Math.min(MOST_IN, ill.row.rackLengthMm * MOST_SHARE) / stepMm)
  return Array.from({ length: count + 1 }, (_, k) => onTick(k * stepMm))
    .filter((endInMm) => isNew(endInMm, ill.row.endInMm))
    .map((endInMm) => idea(0, { endInMm }))
}
