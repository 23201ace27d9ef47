import type * as z from 'zod/mini'
import { stocks } from '../catalogue/stock'
import type { FieldMeta } from '../model/fields'
import { fieldAt, type FieldPath } from './fieldAt'
import type { Limits } from './limits'

/** Writes the number of a field of this unit, or of a field without one. */
export type NumberWriter = (value: number, unit: FieldMeta['unit'] | undefined) => string

/** Units of the numbers in a file; a share is of 1 and has none. */
const unitsInFile: Readonly<Partial<Record<FieldMeta['unit'], string>>> = {
  length: 'mm',
  level: 'mm',
  'plain-level': 'mm',
  fall: 'mm/m',
  flow: 'L/h',
  temperature: '°C',
  volume: 'L',
  minutes: 'min',
  mass: 'kg',
  force: 'N',
  stress: 'MPa',
  pressure: 'kPa',
}

/** Numbers as they stand in a file: in the file's own units, every digit. */
export const asInFile: NumberWriter = (value, unit) => {
  const sign = unit && unitsInFile[unit]
  return sign ? `${value} ${sign}` : String(value)
}

const LONGEST_QUOTE = 40

/** A text from a file, shortened and made one line, in quotes. */
export const quoted = (text: string): string => {
  const short = text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}...` : text
  return `"${short.replaceAll(/\s+/g, ' ')}"`
}

/** One thing of each list of the layout, as people say it. */
const oneOf: Readonly<Record<string, string>> = {
  parts: 'part',
  outline: 'corner',
  curvedWalls: 'curved wall',
  profile: 'height',
  spotLevels: 'spot level',
  services: 'service',
  points: 'point',
  takenOut: 'tower taken out',
  gradedTubes: 'tube group',
  lumberMm: 'lumber length',
  accepted: 'accepted warning',
  measured: 'measured stock',
  leftovers: 'leftover',
  issues: 'issue of papers',
  choices: 'sheet choice',
  versions: 'version',
}

const valueAt = (value: unknown, path: FieldPath): unknown =>
  path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null && Object.hasOwn(at, key) ? Reflect.get(at, key) : undefined,
    value,
  )

/** `the rack row "Row 2"`, for what the file calls a part; undefined where it does not say. */
const partTitle = (part: unknown): string | undefined => {
  const [kind, name] = [valueAt(part, ['kind']), valueAt(part, ['name'])]
  if (typeof kind !== 'string') return undefined
  const words = kind.slice(0, LONGEST_QUOTE).replaceAll('-', ' ')
  return typeof name === 'string' && name !== '' ? `the ${words} ${quoted(name)}` : `the ${words}`
}

const versionTitle = (version: unknown): string | undefined => {
  const name = valueAt(version, ['name'])
  return typeof name === 'string' && name !== '' ? quoted(name) : undefined
}

/** What a list of stock calls its material; undefined of other lists. */
const stockTitle = (value: unknown): string | undefined => {
  const stock = valueAt(value, ['stock'])
  return stocks.find(({ key }) => key === stock)?.title
}

const listWords = (list: string, index: number, value: unknown): string => {
  const words = `${oneOf[list] ?? list} ${index + 1}`
  const title =
    list === 'parts' ? partTitle(value) : list === 'versions' ? versionTitle(value) : stockTitle(value)
  return title ? `${words}, ${title}` : words
}

/** Sections of a layout or of a plan that is kept in it; a plan of a version is the version. */
const sections: Readonly<Record<string, string>> = {
  house: 'the house',
  settings: 'the settings',
  papers: 'the papers',
  issued: 'the plan of the last issue',
  before: 'the plan of the issue before the last',
  plan: '',
}

/** Where a plan starts in a path: at its beginning, or after a plan that is kept among the papers. */
const planStart = ([first, second, , fourth]: FieldPath): number => {
  if (first !== 'papers') return 0
  if (second === 'issued' || second === 'before') return 2
  return second === 'versions' && fourth === 'plan' ? 4 : 0
}

const isSection = (path: FieldPath, index: number): boolean =>
  Object.hasOwn(sections, path[index] ?? '') && index <= planStart(path)

/** Words of each step of a path, outermost first: `the house`, `curved wall 1`, `height 3`. */
export const placeWords = (path: FieldPath, value: unknown): string[] =>
  path.flatMap((key, index) => {
    if (typeof key === 'number')
      return [listWords(String(path[index - 1] ?? 'place'), key, valueAt(value, path.slice(0, index + 1)))]
    const isList = typeof path[index + 1] === 'number'
    if (isList) return []
    const section = isSection(path, index) ? sections[String(key)] : String(key)
    return section ? [section] : []
  })

/** What was found, in a word or two. Only plain values are quoted: a record from a file may be of any depth. */
const shown = (value: unknown, unit: FieldMeta['unit'] | undefined, write: NumberWriter): string => {
  if (typeof value === 'number')
    return Number.isFinite(value) ? write(value, unit) : 'too large a number to hold'
  if (typeof value === 'string') return quoted(value)
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (value === null || typeof value === 'boolean') return String(value)
  return 'a record'
}

const listed = (values: readonly unknown[]): string => {
  const words = values.map(String)
  const last = words.pop() ?? 'nothing'
  return words.length > 0 ? `${words.join(', ')} or ${last}` : last
}

const span = (least: number | undefined, most: number | undefined, words: (n: number) => string): string => {
  if (least !== undefined && most !== undefined) return `${words(least)} to ${words(most)}`
  return least !== undefined ? `${words(least)} or more` : `up to ${words(most ?? Infinity)}`
}

const allowed = (
  { type, values, least, most }: Limits,
  unit: FieldMeta['unit'] | undefined,
  write: NumberWriter,
): string => {
  const numbers = () => span(least, most, (n) => write(n, unit))
  if (values) return values.length > 1 ? `can be ${listed(values)}` : `must be ${String(values[0])}`
  switch (type) {
    case 'number':
      return `can be ${numbers()}`
    case 'whole number':
      return unit === 'count' ? `can be ${numbers()}` : `can be a whole number, ${numbers()}`
    case 'text':
      return most === undefined
        ? 'must be a text of the right form'
        : `can be a text of ${span(least ?? 0, most, String)} letters`
    case 'list':
      return `can be a list of ${span(least ?? 0, most, String)}`
    case 'switch':
      return 'can be true or false'
    case 'record':
      return 'must be a record'
  }
}

/** `Racks chained is 4000; it can be 1 to 20`, without place or full stop. */
const complaint = (schema: z.core.$ZodType, path: FieldPath, value: unknown, write: NumberWriter): string => {
  const field = fieldAt(schema, path, value)
  const unit = field?.meta?.unit
  const found = valueAt(value, path)
  const label = field?.meta?.label ?? placeWords(path, value).at(-1) ?? 'The file'
  const can = field ? allowed(field.limits, unit, write) : 'must be a known kind of part'
  return found === undefined
    ? `${label} is missing; it ${can}`
    : `${label} is ${shown(found, unit, write)}; it ${can}`
}

/**
 * What is wrong at the first place where a value is not what its schema asks, in words without a full stop:
 * `part 3, the rack row "Row 2": Racks chained is 4000; it can be 1 to 20`.
 */
export const issueWords = (
  schema: z.core.$ZodType,
  path: FieldPath,
  value: unknown,
  write: NumberWriter = asInFile,
): string => {
  const place = placeWords(path, value).slice(0, -1).join(', ')
  const words = complaint(schema, path, value, write)
  return place ? `${place}: ${words}` : words
}

/** `issueWords` of the first of some issues; one that a schema tells in its own words keeps them. */
export const firstIssueWords = (
  schema: z.core.$ZodType,
  [issue]: readonly z.core.$ZodIssue[],
  value: unknown,
  write: NumberWriter = asInFile,
): string => {
  const path = issue?.path ?? []
  if (issue?.code !== 'custom') return issueWords(schema, path, value, write)
  return [placeWords(path, value).slice(0, -1).join(', '), issue.message].filter(Boolean).join(': ')
}

/** The path of the first field that the schema did not take over, so that no field is ever silently lost. */
export const unknownField = (read: unknown, kept: unknown, path: FieldPath = []): FieldPath | undefined => {
  if (typeof read !== 'object' || read === null || typeof kept !== 'object' || kept === null) return undefined
  for (const key of Object.keys(read)) {
    const step = [...path, Array.isArray(read) ? Number(key) : key]
    if (!Object.hasOwn(kept, key)) return step
    const deeper = unknownField(Reflect.get(read, key), Reflect.get(kept, key), step)
    if (deeper) return deeper
  }
  return undefined
}
