import { folderOf, isCore } from './importRules'
import { registries, type Source } from './sources'

const LONGEST_FILE = 400

/** Says what is wrong with one file, nothing where all is well. */
type Judge = (source: Source) => readonly string[]

const page = [
  'document',
  'window',
  'globalThis',
  'self',
  'navigator',
  'localStorage',
  'sessionStorage',
  'indexedDB',
  'fetch',
  'requestAnimationFrame',
  'Image',
  'Path2D',
  'OffscreenCanvas',
  'Worker',
  'process',
]
const clock = ['Date', 'performance', 'setTimeout', 'setInterval', 'queueMicrotask']
const chance = ['Math.random', 'crypto']

const inCore =
  (isForbidden: (use: string) => boolean): Judge =>
  ({ path, uses }) =>
    isCore(path) ? [...uses].filter(isForbidden).map((use) => `uses ${use}`) : []

const oneOf = (names: readonly string[]) => inCore((use) => names.includes(use))

const localised = inCore((use) => ['Intl', '.localeCompare'].includes(use) || use.startsWith('.toLocale'))

/** Factors between trade and metric units, as written in decimals; those with more digits may be cut anywhere. */
const factors: readonly (readonly [RegExp, string])[] = [
  [/^25\.4$/, 'mm in an inch'],
  [/^2\.54$/, 'cm in an inch'],
  [/^0\.0254$/, 'm in an inch'],
  [/^0\.0393/, 'inches in a mm'],
  [/^304\.8$/, 'mm in a foot'],
  [/^0\.3048$/, 'm in a foot'],
  [/^3\.280/, 'feet in a metre'],
  [/^645\.16$/, 'square mm in a square inch'],
  [/^0\.0929/, 'square metres in a square foot'],
  [/^3\.785/, 'litres in a US gallon'],
  [/^0\.2641/, 'US gallons in a litre'],
  [/^0\.453[56]/, 'kg in a pound'],
  [/^453\.59/, 'grams in a pound'],
  [/^2\.2046/, 'pounds in a kg'],
  [/^4\.448/, 'newtons in a pound-force'],
  [/^6\.894/, 'kPa in a psi'],
  [/^6894\./, 'Pa in a psi'],
]

const conversionFactors: Judge = ({ path, numbers }) =>
  folderOf(path) === 'units'
    ? []
    : numbers.flatMap((value) => {
        const factor = factors.find(([digits]) => digits.test(String(value)))
        return factor === undefined ? [] : [`has ${value}, the ${factor[1]}: conversions stand in units`]
      })

const barrels: Judge = ({ path, hasExportAll }) => [
  ...(hasExportAll ? ['has `export *`'] : []),
  ...(/(^|\/)index\.tsx?$/.test(path) && !registries.some((folder) => path === `${folder}/index.ts`)
    ? ['is an index file but no registry']
    : []),
]

const tooLong: Judge = ({ lineCount }) =>
  lineCount > LONGEST_FILE ? [`has ${lineCount} lines, more than ${LONGEST_FILE}`] : []

const anyType: Judge = ({ hasAny }) => (hasAny ? ['has the type any'] : [])

const judges: Readonly<Record<string, Judge>> = {
  'the core touches no page': oneOf(page),
  'the core reads no clock': oneOf(clock),
  'the core leaves nothing to chance': oneOf(chance),
  'the core speaks no locale': localised,
  'conversion factors stand in units alone': conversionFactors,
  'the only index files are the registries, and nothing exports all of another file': barrels,
  'no file is longer than 400 lines': tooLong,
  'nothing has the type any': anyType,
}

export const contentRules = Object.entries(judges).map(([title, judge]) => ({
  title,
  /** Each breach as a sentence that names the file. */
  breaches: (sources: readonly Source[]) =>
    sources.flatMap((source) => judge(source).map((what) => `src/${source.path} ${what}`)),
}))
