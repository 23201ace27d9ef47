import { firstIssueWords, placeWords, quoted, unknownField } from './faultWords'
import { jsonBreak } from './jsonBreak'
import { broughtUp, isKnownVersion, type Document } from './migrations'
import { FORMAT, layoutSchema, VERSION, type Layout } from './schema'
import { layoutFault } from './soundness'

/** A layout of 5,000 rows is well under half of this. */
const LARGEST_FILE = 32 * 1024 * 1024

export type Read =
  { readonly ok: true; readonly layout: Layout } | { readonly ok: false; readonly sentence: string }

/**
 * The layout as a file: keys in the order of the schema, parts in their own order, lengths on the tick, so that any
 * diff tool can compare two files. A layout that the schema refuses is written as it stands: a file that needs
 * mending by hand is better than a bay that can't be saved.
 */
export const writeLayout = (layout: Layout): string => {
  const settled = layoutSchema.safeParse(layout)
  return `${JSON.stringify(settled.success ? settled.data : layout, null, 2)}\n`
}

const refused = (what: string): Read => ({
  ok: false,
  sentence: `${what}, so it was not opened. Your bay is untouched.`,
})

const refusedFor = (fault: string): Read => ({
  ok: false,
  sentence: `This file was not opened. In it, ${fault}. Your bay is untouched.`,
})

/** The piece of a layout that a path leads into, where it leads into a layout. */
const nearby = ([first, second]: readonly (string | number)[]): string | undefined => {
  if (first === 'parts' && typeof second === 'number') return `part ${second + 1}`
  return first === 'house' || first === 'settings' ? `the ${first}` : undefined
}

const breakWords = (text: string): string => {
  if (text.trim() === '') return 'This file is empty'
  const at = jsonBreak(text)
  if (!at) return 'This file is nested too deep to be a layout'
  const near = nearby(at.path)
  if (at.isCutShort) return `This file ends in the middle${near ? ` of ${near}` : ''}`
  return `This file is not JSON from line ${at.line}, column ${at.column}${near ? `, in ${near}` : ''}, on`
}

const isDocument = (value: unknown): value is Document =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** What is wrong with a document's own label, before anything else in it is looked at. */
const labelFault = ({ format, version }: Document): string | undefined => {
  if (format !== FORMAT) return 'This file is JSON, but not a Kerf & Fall layout'
  if (isKnownVersion(version)) return undefined
  if (Number.isInteger(version) && Number(version) > VERSION)
    return `This file was made by a newer Kerf & Fall (version ${String(version)}; this one reads up to ${VERSION})`
  return `This file says no version that there ever was${typeof version === 'number' ? ` (${version})` : ''}`
}

const unknownWords = (path: readonly PropertyKey[], value: unknown): string => {
  const place = placeWords(path, value).slice(0, -1).join(', ')
  return `${place || 'the layout'} has a field that no layout has, ${quoted(String(path.at(-1)))}`
}

const readDocument = (value: unknown): Read => {
  if (!isDocument(value)) return refused('This file is JSON, but not a Kerf & Fall layout')
  const fault = labelFault(value)
  if (fault) return refused(fault)
  const document = broughtUp(value, Number(value['version']))
  const checked = layoutSchema.safeParse(document)
  if (!checked.success) return refusedFor(firstIssueWords(layoutSchema, checked.error.issues, document))
  const lost = unknownField(document, checked.data)
  const unsound = lost ? unknownWords(lost, document) : layoutFault(checked.data)
  return unsound ? refusedFor(unsound) : { ok: true, layout: checked.data }
}

const parsed = (text: string): { readonly value: unknown } | undefined => {
  try {
    return { value: JSON.parse(text) }
  } catch {
    return undefined
  }
}

/** Reads a layout file whole or not at all; whatever the text, it never throws and says in one sentence what is wrong. */
export const readLayout = (text: string): Read => {
  if (text.length > LARGEST_FILE) return refused('This file is larger than 32 MB, more than any layout')
  // Some editors put a byte order mark before the text.
  const bare = text.replace(/^\uFEFF/, '')
  const document = parsed(bare)
  return document ? readDocument(document.value) : refused(breakWords(bare))
}
