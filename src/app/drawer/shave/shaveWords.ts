import type { Words } from '../../../checks/context'
import { ruleOf } from '../../../checks'
import { tellingWords } from '../../../checks/words'
import { offTicks, type NearMiss } from '../../../evaluate/shave/nearMisses'
import type { Saved } from '../../../evaluate/shave/saved'
import type { AllowedShave, BlockedShave, Hindrance } from '../../../evaluate/shave/shaves'
import type { ToleranceSave } from '../../../evaluate/shave/tolerance'
import type { Layout } from '../../../layout/schema'
import type { StockCount } from '../../../model/cutList'
import type { PartId } from '../../../model/ids'
import { kindOf } from '../../../parts'
import { unitOfStock } from '../../../sheets/cutWords'
import { fieldList } from '../../../sidebar/fieldList'
import { memberName } from '../../../sidebar/memberNames'
import { fromTicks, type Units } from '../../../units/length'
import { money } from '../../../units/money'
import { NO_VALUE } from '../../../units/writeLength'
import { writeStock } from '../../../units/writeStock'
import { atLeastWords, atMostWords } from '../../../sheets/saw/sawWords'

/** One reader: units, names of parts, and the sign of the job's money. */
export interface Reader {
  readonly units: Units
  readonly words: Words
  readonly currency: string
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

const several = (count: number, noun: string): string => `${count} ${count === 1 ? noun : `${noun}s`}`

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`

/** Members by what they are called, several of each: `gutter bearers`; those of one name once. */
export const memberWords = (marks: readonly string[]): string =>
  listed([...new Set(marks.map((mark) => `${memberName(mark).replace(/,.*/, '')}s`))])

const board = (stock: string, stockMm: number, units: Units): string =>
  `${writeStock(stockMm, units)} ${unitOfStock(stock)}`

/** `Gutter bearers, 81 of 61"`. */
export const pieceWords = ({ members }: NearMiss, { words }: Reader): string =>
  `${capital(memberWords(members.marks))}, ${members.count} of ${words.onTape(fromTicks(members.lengthTicks))}`

/** What comes off each piece, at the least. */
const leastOff = (near: NearMiss, { units }: Reader): string => atLeastWords(fromTicks(offTicks(near)), units)

/** `1-1/16" off, to 59-15/16"`: no less off than it takes, and to no more than a board gives. */
export const offWords = (near: NearMiss, reader: Reader): string =>
  `${leastOff(near, reader)} off, to ${atMostWords(fromTicks(near.targetTicks), reader.units)}`

/** What a board gives, and what the pieces would take if they came from such boards alone. */
export const yieldWords = (near: NearMiss, { units }: Reader): string => {
  const { members, fromABoard, stockMm } = near
  const of = board(members.stock, stockMm, units)
  if (fromABoard === 0) return `a ${of} then gives one; now it is too short`
  const boards = (each: number) => Math.ceil(members.count / each)
  const [then, now] = [boards(fromABoard + 1), boards(fromABoard)]
  const alone = then < now ? `: alone they take ${then}, not ${now}` : ''
  return `a ${of} gives ${fromABoard + 1}, not ${fromABoard}${alone}`
}

const fieldOf = (layout: Layout, id: PartId | undefined, key: string) => {
  const part = layout.parts.find((each) => each.id === id)
  return part && fieldList(kindOf(part).schema).find((field) => field.key === key)
}

/** What a field is called. */
const fieldWords = (layout: Layout, { members }: NearMiss, field: string): string =>
  (fieldOf(layout, members.parts[0], field)?.meta.label ?? field).toLowerCase()

const valueWords = (value: unknown, { words }: Reader): string => words.exact().onTape(Number(value))

/** The values of a field, each once, least first. */
const valuesWords = (values: readonly unknown[], reader: Reader): string =>
  [...new Set(values.map(Number))]
    .sort((a, b) => a - b)
    .map((value) => valueWords(value, reader))
    .join(', ')

/** Of more places than these the first few are named, and the rest counted. */
const MOST_NAMED = 8
const FEW = 3

const placesWords = (names: readonly string[]): string =>
  names.length > MOST_NAMED ? listed([...names.slice(0, FEW), `${names.length - FEW} more`]) : listed(names)

/** `bearer past the trough 15/32", not 1", in N1, S1 and S2`. */
export const howWords = (layout: Layout, { near, field, changes }: AllowedShave, reader: Reader): string => {
  const parts = changes.map(({ part }) => part)
  const now = layout.parts
    .filter(({ id }) => parts.includes(id))
    .map((part): unknown => Reflect.get(part, field))
  const then = changes.map(({ values }) => values[field])
  const where = placesWords(parts.map(reader.words.name))
  return `${fieldWords(layout, near, field)} ${valuesWords(then, reader)}, not ${valuesWords(now, reader)}, in ${where}`
}

/** `4 boards, 58' 0", $35.96`; money that nobody can tell is a dash. */
export const savedWords = ({ boards, lengthMm, cents }: Saved, stock: string, reader: Reader): string =>
  [
    ...(boards > 0 ? [several(boards, unitOfStock(stock))] : []),
    ...(lengthMm > 0 ? [writeStock(lengthMm, reader.units)] : []),
    cents === undefined ? NO_VALUE : money(cents, reader.currency),
  ].join(', ')

const countWords = (counts: readonly StockCount[], units: Units): string =>
  counts.map(({ stockMm, count }) => `${count} x ${writeStock(stockMm, units)}`).join(' + ') || 'nothing'

/** `first plans: 119 x 12 ft + 80 x 10 ft, not 128 x 12 ft + 75 x 10 ft`. */
export const boughtWords = ({ boughtNow, boughtThen }: AllowedShave, { units }: Reader): string =>
  `first plans: ${countWords(boughtThen, units)}, not ${countWords(boughtNow, units)}`

/** The label of the one entry in the history. */
export const shaveLabel = ({ near }: AllowedShave, reader: Reader): string =>
  `Shave ${leastOff(near, reader)} off ${memberWords(near.members.marks)}`

const hindranceWords = (layout: Layout, near: NearMiss, hindrance: Hindrance, reader: Reader): string => {
  const field = fieldWords(layout, near, hindrance.field)
  switch (hindrance.kind) {
    case 'bounds':
      return `by ${field}: ${hindrance.sentence}`
    case 'saves-nothing':
      return `by ${field}: all in all the bay would buy no less.`
    case 'breaks': {
      const [finding] = hindrance.findings
      const rule = ruleOf(finding.rule)
      const more = hindrance.findings.length - 1
      const others = more > 0 ? ` And ${several(more, 'more warning')}.` : ''
      return `by ${field}: ${rule.title.toLowerCase()}. ${rule.say(finding, tellingWords(finding, reader.words))}${others}`
    }
  }
}

/** Why a near miss stays one, a sentence for each thing that was tried. */
export const blockedWords = (layout: Layout, blocked: BlockedShave, reader: Reader): readonly string[] =>
  blocked.hindrances.length === 0
    ? ['Not possible: nothing in the plan makes them shorter.']
    : blocked.hindrances.map(
        (hindrance) => `Not possible ${hindranceWords(layout, blocked.near, hindrance, reader)}`,
      )

/** What is gained without a change of the bay, since a piece may come a little short. */
export const toleranceWords = (save: ToleranceSave, { units, words }: Reader): string => {
  const { marks, lengthTicks, offTicks: off, boards, stock } = save
  const drawn = words.onTape(fromTicks(lengthTicks))
  return `${capital(memberWords(marks))} of ${drawn} may come short: cut up to ${atMostWords(fromTicks(off), units)} under, they save ${several(boards, unitOfStock(stock))}. The saw list has them so.`
}
