import type { Words } from '../../../checks/context'
import { ruleOf } from '../../../checks'
import { quantityWords } from '../../../checks/measuredWords'
import { tellingWords } from '../../../checks/words'
import type { BayChange } from '../../../evaluate/shop/change'
import { strengthRank, stanceRank } from '../../../evaluate/strengthMends/ailments'
import type { RefusedMend, RowMend } from '../../../evaluate/strengthMends/mends'
import type { RowValues } from '../../../evaluate/strengthMends/rowTrial'
import type { Settings } from '../../../layout/settings'
import type { StateWord } from '../../../model/finding'
import { fieldNumberWords } from '../../../model/fieldWords'
import type { RowStrength, Screen, ScreenId, Tip } from '../../../model/strength'
import { strengthBasis } from '../../../model/strengthBasis'
import { rackRowSchema, type RackRow } from '../../../parts/rack-row/schema'
import { type Field, fieldList } from '../../../sidebar/fieldList'
import { money } from '../../../units/money'

/** One reader: units and names of parts, and the sign of the job's money. */
export interface Reader {
  readonly words: Words
  readonly currency: string
}

const rowFields: ReadonlyMap<string, Field> = new Map(
  fieldList(rackRowSchema).map((field) => [field.key, field]),
)

/** Conduit sizes are told as what they are, not as bare numbers. */
const CONDUIT_FIELDS = ['rail', 'bar']

/** Words that stand within a sentence; a joint keeps its letter. */
const inSentence = (words: string): string =>
  words.replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase())

const choiceWords = ({ key, choices }: Field, value: string): string => {
  const words = choices.find((choice) => choice.value === value)?.words ?? value
  return CONDUIT_FIELDS.includes(key) ? `${words} in conduit` : inSentence(words)
}

const valueWords = (field: Field | undefined, value: unknown, { words }: Reader): string => {
  if (value === null) return (field?.whenNull ?? '').toLowerCase()
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return field ? choiceWords(field, value) : value
  if (typeof value !== 'number') return ''
  return field?.meta.unit === 'length'
    ? words.exact().onTape(value)
    : fieldNumberWords(value, field?.meta.unit, words)
}

/** What changes, a line a field: `Riser pairs between rack ends: 0 to 1`. */
export const changeWords = (row: RackRow, values: RowValues, reader: Reader): readonly string[] =>
  Object.entries(values).map(([key, value]) => {
    const field = rowFields.get(key)
    const was: unknown = Reflect.get(row, key)
    return `${field?.meta.label ?? key}: ${valueWords(field, was, reader)} to ${valueWords(field, value, reader)}`
  })

/** The label of the one entry in the history: `Mend N1: riser pairs between rack ends 1`. */
export const mendLabel = (
  { values, changes }: Pick<RowMend, 'values' | 'changes'>,
  reader: Reader,
): string => {
  const [first, ...others] = changes.map(({ part }) => reader.words.name(part))
  const where = others.length > 0 ? `${first} and ${others.length} like it` : first
  const what = Object.entries(values).map(([key, value]) => {
    const field = rowFields.get(key)
    return `${(field?.meta.label ?? key).toLowerCase()} ${valueWords(field, value, reader)}`
  })
  return `Mend ${where}: ${what.join(', ')}`
}

/** One thing that ails now or then, with the state that it is then in. */
export interface Effect {
  readonly what: string
  /** Undefined where it stays as it is. */
  readonly before: string | undefined
  readonly after: string
  readonly state: StateWord
  readonly rank: number
}

const worstOf = ({ screens }: RowStrength, id: ScreenId): Screen | undefined =>
  screens
    .filter((screen) => screen.id === id)
    .reduce<Screen | undefined>((worst, each) => (worst && worst.used >= each.used ? worst : each), undefined)

/** In the order in which they are told. */
const screenIds = Object.keys(strengthBasis).filter((id): id is ScreenId => id !== 'stance')

/** The stress that goes with a sag: over the yield it never happens as reckoned. */
const stressOf: Partial<Record<ScreenId, ScreenId>> = { 'rail-sag': 'rail-stress', 'bar-sag': 'bar-stress' }

/** Why a sag is not told in a length. */
const FOLDS = 'folds or stays bent'

/** What a screen found. A sag of a sixteenth of an inch is told to the sixty-fourth. */
const foundWords = (
  row: RowStrength,
  { id, measured }: Screen,
  { words }: Reader,
  { conduitYieldMpa }: Pick<Settings, 'conduitYieldMpa'>,
): string => {
  const stress = stressOf[id]
  if (stress === undefined) return quantityWords(measured, words)
  const folds = (worstOf(row, stress)?.measured.value ?? 0) > conduitYieldMpa
  return folds ? FOLDS : quantityWords(measured, { ...words, ...words.exact() })
}

const effect = (what: string, before: string, after: string, state: StateWord, rank: number): Effect => ({
  what,
  before: before === after ? undefined : before,
  after,
  state,
  rank,
})

const screenEffects = (
  before: RowStrength,
  after: RowStrength,
  reader: Reader,
  settings: Pick<Settings, 'conduitYieldMpa'>,
): Effect[] =>
  screenIds.flatMap((id) => {
    const [was, is] = [worstOf(before, id), worstOf(after, id)]
    if (!was || (strengthRank(was) === 0 && (!is || strengthRank(is) === 0))) return []
    const wasWords = foundWords(before, was, reader, settings)
    // What is hung from the house no more is no more screened for it.
    if (!is) return [effect(strengthBasis[id].title, wasWords, 'none', 'Within', 0)]
    const isWords = foundWords(after, is, reader, settings)
    // Its bending says it.
    if (isWords === FOLDS) return []
    return [effect(strengthBasis[id].title, wasWords, isWords, is.state, strengthRank(is))]
  })

const leastTip = ({ stance }: RowStrength): Tip | undefined =>
  stance.tips.reduce<Tip | undefined>(
    (least, tip) => (least && least.tipsAtN <= tip.tipsAtN ? least : tip),
    undefined,
  )

const HELD = { anchored: 'held by anchors', tied: 'held by ties' } as const

const tipWords = (row: RowStrength, { words }: Reader): string => {
  if (row.stance.heldBy) return HELD[row.stance.heldBy]
  const tip = leastTip(row)
  return tip ? words.force(tip.tipsAtN) : 'nothing'
}

const stanceEffects = (before: RowStrength, after: RowStrength, reader: Reader): Effect[] =>
  stanceRank(before.stance) === 0 && stanceRank(after.stance) === 0
    ? []
    : [
        effect(
          'Push that tips it',
          tipWords(before, reader),
          tipWords(after, reader),
          after.stance.state,
          stanceRank(after.stance),
        ),
      ]

/** What ailed and what ails then, before and after. */
export const effectsOf = (
  before: RowStrength,
  after: RowStrength,
  reader: Reader,
  settings: Pick<Settings, 'conduitYieldMpa'>,
): readonly Effect[] => [
  ...screenEffects(before, after, reader, settings),
  ...stanceEffects(before, after, reader),
]

/** A sign stays on the line of its number. */
const signed = (value: number, words: string): string => `${value < 0 ? '−' : '+'}\u00A0${words}`

const many = (count: number, noun: string): string => `${count} ${count === 1 ? noun : `${noun}s`}`

/** Fewer hours than this are no more than a rounding. */
const LEAST_HOURS = 0.05

/** Longer than this, hours are told whole. */
const MOST_TENTHS = 10

const hoursWords = (hours: number): string =>
  `${Math.abs(hours).toFixed(Math.abs(hours) < MOST_TENTHS ? 1 : 0)} h`

/** What it costs beside what the bay costs: `+ $18.40, + 2 boards, + 0.4 h`, or nothing. */
export const takesWords = (
  { cents, unpriced, boards, hours }: Omit<BayChange, 'isPlaceholder'>,
  currency: string,
): string => {
  const parts = [
    ...(unpriced > 0 ? [`${many(unpriced, 'thing')} without a price`] : []),
    ...(cents !== 0 ? [signed(cents, money(Math.abs(cents), currency))] : []),
    ...(boards !== 0 ? [signed(boards, many(Math.abs(boards), 'board'))] : []),
    ...(Math.abs(hours) >= LEAST_HOURS ? [signed(hours, hoursWords(hours))] : []),
  ]
  return parts.join(', ') || 'Nothing'
}

/** `Gives up 30 towers`; nothing where all stay. */
export const lostWords = (towersLost: number): string =>
  towersLost > 0 ? `Gives up ${many(towersLost, 'tower')}` : ''

/** Why the bay does not allow it. */
export const refusedWords = ({ findings }: RefusedMend, { words }: Reader): string => {
  const [finding] = findings
  const rule = ruleOf(finding.rule)
  const more = findings.length - 1
  const others = more > 0 ? ` And ${many(more, 'more warning')}.` : ''
  return `${rule.title}. ${rule.say(finding, tellingWords(finding, words))}${others}`
}

/** What a row that is within and stands has in hand. */
export const inHandWords = (row: RowStrength, pushN: number, { words }: Reader): string => {
  const [most] = row.screens
  const used = most
    ? ` What is used most is ${words.share(most.used)} of its limit (${strengthBasis[most.id].title.toLowerCase()}); ${words.share(1 - most.used)} is in hand.`
    : ''
  const tip = leastTip(row)
  const stands = row.stance.heldBy
    ? ` It is ${HELD[row.stance.heldBy]}.`
    : tip
      ? ` It takes ${words.force(tip.tipsAtN)} at its rails to tip it; a person leans with ${words.force(pushN)}.`
      : ''
  return `${words.name(row.part)} is within and stands: nothing is to be mended.${used}${stands}`
}
