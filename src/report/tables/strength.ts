import { quantityWords } from '../../checks/measuredWords'
import { strengthOf } from '../../evaluate/5-loads'
import { rankOf, type Quantity } from '../../model/finding'
import type { RailLine, RailSpan, RowStrength, Screen, Tip } from '../../model/strength'
import { strengthBasis } from '../../model/strengthBasis'
import { blank, type Cell, said } from '../../model/table'
import { type Field, numberCell, numberField, quiet, sectionOf, textField, type Section } from '../fields'
import { writeDecimal } from '../../units/writeDecimal'
import type { Told } from '../told'

interface Of {
  readonly part: string
}

/** Whose it is: its id for programs and its name for the reader. */
const whose = <T extends Of>({ words }: Told): readonly Field<T>[] => [
  quiet(textField('part', 'Part', ({ part }) => part)),
  textField('name', 'Row', ({ part }) => words.name(part)),
]

const strengths = ({ plan }: Told): readonly RowStrength[] => [...strengthOf(plan.bay).values()]

type ScreenOf = Of & {
  readonly screen: Screen
  /** Whether the member folds there, by the stress it comes to: then it has no sag to be told. */
  readonly folds: boolean
}

/** The screen of stress that says whether one of sag can be told. */
const BENT: Partial<Record<Screen['id'], Screen['id']>> = {
  'rail-sag': 'rail-stress',
  'bar-sag': 'bar-stress',
}

const cellOf = ({ screen, folds }: ScreenOf, quantity: Quantity, words: Told['words']): Cell =>
  folds && quantity === screen.measured
    ? blank('folds')
    : numberCell(quantity.value, () => quantityWords(quantity, words))

/** Beyond so many times a limit the digits say nothing more. */
const MOST_TIMES = 10

const usedWords =
  ({ words }: Told) =>
  (used: number): string =>
    used > MOST_TIMES ? `over ${MOST_TIMES} x` : words.share(used)

/** A number with its own unit beside it, for screens measure different things. */
const quantityFields = (
  key: string,
  title: string,
  of: (screen: Screen) => Quantity,
  { words }: Told,
): readonly Field<ScreenOf>[] => [
  {
    ...textField<ScreenOf>(key, title, () => ''),
    cell: (item) => cellOf(item, of(item.screen), words),
  },
  quiet(textField(`${key}Unit`, `${title}, unit`, ({ screen }) => of(screen).unit)),
]

const strengthFields = (told: Told): readonly Field<ScreenOf>[] => [
  ...whose<ScreenOf>(told),
  textField('member', 'Member', ({ screen }) => screen.mark),
  quiet(textField('screen', 'Screen', ({ screen }) => screen.id)),
  textField('screenedFor', 'Screened for', ({ screen }) => strengthBasis[screen.id].title),
  textField('state', 'State', ({ screen }) => screen.state),
  {
    ...numberField<ScreenOf>('usedShare', 'Used', 'share', usedWords(told), ({ screen }) => screen.used),
    cell: ({ screen: { used } }) =>
      used === Infinity ? blank('refused') : numberCell(used, usedWords(told)),
  },
  ...quantityFields('measured', 'Measured', ({ measured }) => measured, told),
  ...quantityFields('limit', 'Limit', ({ limit }) => limit, told),
  textField('under', 'Under', ({ screen }) => screen.under),
  quiet(numberField('alongMm', 'Along the row', 'mm', told.words.length, ({ screen }) => screen.at.u)),
  quiet(numberField('rightMm', 'To its right', 'mm', told.words.length, ({ screen }) => screen.at.v)),
]

const screensOf = ({ part, screens }: RowStrength, yieldMpa: number): ScreenOf[] =>
  screens.map((screen) => {
    const folds = screens.some(
      ({ id, mark, measured }) => id === BENT[screen.id] && mark === screen.mark && measured.value > yieldMpa,
    )
    return { part, screen, folds }
  })

/** On a terminal the worst of each row is enough, and all that is not within. */
const isTelling = ({ screen }: ScreenOf, index: number): boolean =>
  index === 0 || rankOf({ subject: 'strength', state: screen.state }) > 0

/** Every screen of every member of every row at its worst place, worst first. */
export const strengthSection = (told: Told): Section => {
  const over = (items: readonly ScreenOf[]): Section =>
    sectionOf({
      id: 'strength',
      title: 'Strength: screened, not rated',
      fields: strengthFields(told),
      items,
      keyOf: ({ part, screen }) => `${part}/${screen.id}/${screen.mark}`,
    })
  const rows = strengths(told)
  const all = (row: RowStrength) => screensOf(row, told.plan.bay.settings.conduitYieldMpa)
  return {
    table: over(rows.flatMap(all)).table,
    onTerminal: over(rows.flatMap((row) => all(row).filter(isTelling))).onTerminal,
  }
}

type TipOf = Of & { readonly tip: Tip; readonly heldBy: string }

const stanceFields = (told: Told): readonly Field<TipOf>[] => [
  ...whose<TipOf>(told),
  textField('under', 'Under', ({ tip }) => tip.under),
  textField('way', 'Tips', ({ tip }) => tip.way),
  numberField('weightN', 'Weight', 'N', told.words.force, ({ tip }) => tip.weightN),
  numberField('tipsAtN', 'Tips at', 'N', told.words.force, ({ tip }) => tip.tipsAtN),
  numberField(
    'safety',
    'Over a push',
    'ratio',
    (value) => writeDecimal(value, 2),
    ({ tip }) => tip.safety,
  ),
  textField('state', 'State', ({ tip }) => tip.state),
  textField('heldBy', 'Held', ({ heldBy }) => heldBy),
]

/** How each row stands a push at its rails, in each state of load. */
export const stanceSection = (told: Told): Section =>
  sectionOf({
    id: 'stance',
    title: 'Stance',
    fields: stanceFields(told),
    items: strengths(told).flatMap(({ part, stance }) =>
      stance.tips.map((tip) => ({ part, tip, heldBy: stance.heldBy ?? '' })),
    ),
    keyOf: ({ part, tip }) => `${part}/${tip.under}/${tip.way}`,
  })

type OnRail = Of & { readonly rail: 'left' | 'right' }
type SpanOf = OnRail & { readonly span: RailSpan }

const railsOf = ({ part, rails }: RowStrength): (OnRail & { readonly line: RailLine })[] =>
  rails.map((line) => ({ part, rail: line.v < 0 ? 'left' : 'right', line }))

const railField = <T extends OnRail>(): Field<T> => textField('rail', 'Rail', ({ rail }) => rail)

const spanFields = (told: Told): readonly Field<SpanOf>[] => {
  const { length, bore, stress, moment } = told.words
  const { conduitYieldMpa } = told.plan.bay.settings
  return [
    ...whose<SpanOf>(told),
    railField(),
    numberField('fromMm', 'From', 'mm', length, ({ span }) => span.fromU),
    numberField('toMm', 'To', 'mm', length, ({ span }) => span.toU),
    {
      ...textField<SpanOf>('is', 'Is', () => ''),
      cell: ({ span }) => said(span.isOverhang ? 'overhang' : 'span'),
    },
    textField('stock', 'Stock', ({ span }) => span.stock),
    numberField('momentNmm', 'Moment', 'N·mm', moment, ({ span }) => span.momentNmm),
    numberField('stressMpa', 'Stress', 'MPa', stress, ({ span }) => span.stressMpa),
    // Past its assumed yield a rail folds, and the sag that it would have is no number.
    numberField('sagMm', 'Sag', 'mm', bore, ({ span }) =>
      span.stressMpa > conduitYieldMpa ? undefined : span.sagMm,
    ),
    numberField('usedShare', 'Used', 'share', usedWords(told), ({ span }) => span.used),
    textField('state', 'State', ({ span }) => span.state),
    textField('under', 'Under', ({ span }) => span.under),
  ]
}

/** Each span and overhang of each rail, worst of all states of load. */
export const railSpansSection = (told: Told): Section =>
  sectionOf({
    id: 'railSpans',
    title: 'Spans of the rails',
    fields: spanFields(told),
    items: strengths(told)
      .flatMap(railsOf)
      .flatMap(({ line, ...on }) => line.spans.map((span): SpanOf => ({ ...on, span }))),
    keyOf: ({ part, rail, span }, index) => `${part}/${rail}/${span.fromU.toFixed(3)}/${index}`,
    isForPrograms: true,
  })

type ReactionOf = OnRail & { readonly reaction: RailLine['reactions'][number] }

const reactionFields = (told: Told): readonly Field<ReactionOf>[] => {
  const { length, force } = told.words
  return [
    ...whose<ReactionOf>(told),
    railField(),
    numberField('atMm', 'At', 'mm', length, ({ reaction }) => reaction.u),
    numberField('fullN', 'All hung', 'N', force, ({ reaction }) => reaction.fullN),
    numberField('mostN', 'Most', 'N', force, ({ reaction }) => reaction.mostN),
    numberField('leastN', 'Least', 'N', force, ({ reaction }) => reaction.leastN),
  ]
}

/** What each riser carries of its rail. */
export const reactionsSection = (told: Told): Section =>
  sectionOf({
    id: 'reactions',
    title: 'What risers carry',
    fields: reactionFields(told),
    items: strengths(told)
      .flatMap(railsOf)
      .flatMap(({ line, ...on }) => line.reactions.map((reaction): ReactionOf => ({ ...on, reaction }))),
    keyOf: ({ part, rail, reaction }, index) => `${part}/${rail}/${reaction.u.toFixed(3)}/${index}`,
    isForPrograms: true,
  })
