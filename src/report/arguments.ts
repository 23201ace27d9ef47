import { paperNames } from '../layout/papers'
import type { PaperName } from '../drawing/paper'
import { sheets } from '../sheets/index'
import type { Sheet } from '../sheets/sheet'
import type { Units } from '../units/length'
import { possibleFails, USUAL_FAILS } from './failing'

export const formats = ['text', 'json', 'csv', 'svg'] as const
export type Format = (typeof formats)[number]

/** What is asked for of one bay. */
export interface ReportCommand {
  readonly does: 'report'
  /** `-` is what comes in. */
  readonly file: string
  readonly sheet: Sheet | undefined
  /** Of several tables the one that is wanted. */
  readonly table: string | undefined
  readonly format: Format
  readonly out: string | undefined
  readonly units: Units | undefined
  readonly paper: PaperName | undefined
  readonly fail: readonly string[]
  /** As it is to stand on papers; undefined for the day. */
  readonly dateText: string | undefined
}

export interface DiffCommand {
  readonly does: 'diff'
  readonly before: string
  readonly after: string
  readonly format: 'text' | 'json'
  readonly out: string | undefined
  readonly units: Units | undefined
}

export type Command = ReportCommand | DiffCommand | { readonly does: 'help' }

export type Parsed =
  { readonly ok: true; readonly command: Command } | { readonly ok: false; readonly sentence: string }

const VALUED = ['sheet', 'table', 'format', 'out', 'units', 'paper', 'fail', 'date'] as const
const BARE = ['diff', 'help'] as const

type Valued = (typeof VALUED)[number]
type Bare = (typeof BARE)[number]

/** A flag that can't be read, as the sentence that says why; it never leaves this file. */
class Unreadable extends Error {}

const refuse = (sentence: string): never => {
  throw new Unreadable(sentence)
}

interface Split {
  readonly valued: ReadonlyMap<Valued, string>
  readonly bare: ReadonlySet<Bare>
  readonly files: readonly string[]
}

const isIn = <T extends string>(list: readonly T[], word: string): word is T =>
  (list as readonly string[]).includes(word) // widened, to look up any word

const quoted = (word: string): string => `“${word}”`

const split = (given: readonly string[]): Split => {
  const valued = new Map<Valued, string>()
  const bare = new Set<Bare>()
  const files: string[] = []
  const rest = [...given]
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (!word.startsWith('--')) {
      files.push(word)
      continue
    }
    const [, name = '', own] = /^--([^=]*)(?:=(.*))?$/s.exec(word) ?? []
    if (isIn(BARE, name)) {
      if (own !== undefined) refuse(`--${name} takes no value.`)
      bare.add(name)
    } else if (isIn(VALUED, name)) {
      if (valued.has(name)) refuse(`--${name} is given twice.`)
      const value = own ?? rest.shift()
      if (value === undefined || value === '' || (own === undefined && value.startsWith('--')))
        refuse(`--${name} needs a value after it.`)
      valued.set(name, value ?? '')
    } else refuse(`There is no flag ${quoted(word)}; --help lists those that there are.`)
  }
  return { valued, bare, files }
}

const oneOf = <T extends string>(
  flag: string,
  given: string | undefined,
  list: readonly T[],
): T | undefined => {
  if (given === undefined) return undefined
  const found = list.find((each) => each.toLowerCase() === given.toLowerCase())
  return found ?? refuse(`--${flag} can be ${list.join(', ')}, not ${quoted(given)}.`)
}

const sheetOf = (given: string | undefined): Sheet | undefined => {
  if (given === undefined) return undefined
  const wanted = given.toLowerCase()
  const found = sheets.find(({ id, code }) => id === wanted || code.toLowerCase() === wanted)
  return (
    found ?? refuse(`There is no paper ${quoted(given)}; there are ${sheets.map(({ id }) => id).join(', ')}.`)
  )
}

const failsOf = (given: string | undefined): readonly string[] => {
  if (given === undefined) return USUAL_FAILS
  const words = given.split(',').map((word) => word.trim())
  const named = words
    .filter((word) => word !== '')
    .flatMap((word) => oneOf('fail', word, possibleFails) ?? [])
  return [...new Set(named)]
}

const dateOf = (given: string | undefined): string | undefined =>
  given === undefined || /^\d{4}-\d{2}-\d{2}$/.test(given)
    ? given
    : refuse(`--date is year-month-day, such as 2027-05-01, not ${quoted(given)}.`)

const UNITS: readonly Units[] = ['feet-inches', 'metric']

const diffOf = ({ valued, files }: Split): DiffCommand => {
  const [before, after, more] = files
  if (before === undefined || after === undefined || more !== undefined)
    return refuse('--diff needs two layout files, before and after.')
  for (const flag of ['sheet', 'table', 'fail', 'paper', 'date'] as const)
    if (valued.has(flag)) refuse(`--${flag} is nothing that --diff knows.`)
  return {
    does: 'diff',
    before,
    after,
    format: oneOf('format', valued.get('format'), ['text', 'json'] as const) ?? 'text',
    out: valued.get('out'),
    units: oneOf('units', valued.get('units'), UNITS),
  }
}

const reportCommand = ({ valued, files }: Split): ReportCommand => {
  const [file, more] = files
  if (file === undefined)
    return refuse('Name a layout file, such as bay.json; --help says what else can be asked.')
  if (more !== undefined) return refuse(`One layout file at a time; ${quoted(more)} is one more.`)
  return {
    does: 'report',
    file,
    sheet: sheetOf(valued.get('sheet')),
    table: valued.get('table'),
    format: oneOf('format', valued.get('format'), formats) ?? 'text',
    out: valued.get('out'),
    units: oneOf('units', valued.get('units'), UNITS),
    paper: oneOf('paper', valued.get('paper'), paperNames),
    fail: failsOf(valued.get('fail')),
    dateText: dateOf(valued.get('date')),
  }
}

/** The words after `npm run report --` as what they ask for, or one sentence that says what is wrong with them. */
export const readArguments = (given: readonly string[]): Parsed => {
  try {
    const parts = split(given)
    if (parts.bare.has('help')) return { ok: true, command: { does: 'help' } }
    return { ok: true, command: parts.bare.has('diff') ? diffOf(parts) : reportCommand(parts) }
  } catch (trouble) {
    if (trouble instanceof Unreadable) return { ok: false, sentence: trouble.message }
    throw trouble
  }
}
