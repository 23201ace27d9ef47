/**
 * Where a text stops being JSON. Engines word this differently or not at all, so the place is found here, and only
 * after `JSON.parse` has refused the text. The scan keeps its own stack: no depth of nesting can overflow it.
 */
export interface JsonBreak {
  readonly line: number
  readonly column: number
  /** The text ends before its value does. */
  readonly isCutShort: boolean
  /** Keys and positions from the outermost value to the innermost that was open. */
  readonly path: readonly (string | number)[]
}

/** What may stand in a string as it is: from the space on, all but the quote and the backslash. */
const PLAIN = String.raw`[ !#-[\]-\uFFFF]`

const STRING = String.raw`"(?:${PLAIN}|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"`
const NUMBER = String.raw`-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?(?![0-9a-zA-Z.+-])`
const WORD = String.raw`(?:true|false|null)(?![0-9a-zA-Z])`
const MARK = String.raw`[{}[\],:]`

/** A string, number or word in full, or one mark; where one of them breaks off nothing matches. */
const TOKEN = new RegExp(`${STRING}|${NUMBER}|${WORD}|${MARK}`, 'y')

/** The start of a string, number or word, and then the end of the text. */
const CUT_TOKEN = new RegExp(
  String.raw`^(?:"(?:${PLAIN}|\\.)*\\?|-?[0-9][0-9.eE+-]*|-|t|tr|tru|f|fa|fal|fals|n|nu|nul)$`,
)

const BLANK = /[ \t\n\r]*/y

/** What may come next. `key` and `value` may also be the close of an empty record or list just opened. */
type Wanted = 'value' | 'first-value' | 'key' | 'first-key' | 'colon' | 'comma' | 'end'

interface Open {
  readonly closes: '}' | ']'
  at: string | number
}

interface Scan {
  readonly open: Open[]
  wanted: Wanted
}

const matchAt = (pattern: RegExp, text: string, index: number): string | undefined => {
  pattern.lastIndex = index
  return pattern.exec(text)?.[0]
}

const afterValue = ({ open }: Scan): Wanted => (open.length > 0 ? 'comma' : 'end')

const takeValue = (scan: Scan, token: string): boolean => {
  if (token === '{' || token === '[') {
    scan.open.push(token === '{' ? { closes: '}', at: '' } : { closes: ']', at: 0 })
    scan.wanted = token === '{' ? 'first-key' : 'first-value'
    return true
  }
  scan.wanted = afterValue(scan)
  return !'}],:'.includes(token)
}

const takeClose = (scan: Scan, token: string): boolean => {
  if (scan.open.at(-1)?.closes !== token) return false
  scan.open.pop()
  scan.wanted = afterValue(scan)
  return true
}

const takeKey = (scan: Scan, token: string): boolean => {
  const record = scan.open.at(-1)
  if (!record || !token.startsWith('"')) return false
  record.at = String(JSON.parse(token))
  scan.wanted = 'colon'
  return true
}

const takeComma = (scan: Scan, token: string): boolean => {
  const inner = scan.open.at(-1)
  if (token !== ',' || !inner) return takeClose(scan, token)
  if (typeof inner.at === 'number') inner.at += 1
  scan.wanted = typeof inner.at === 'number' ? 'value' : 'key'
  return true
}

/** Takes one token; false where JSON does not allow it there. */
const take = (scan: Scan, token: string): boolean => {
  switch (scan.wanted) {
    case 'first-value':
      return token === ']' ? takeClose(scan, token) : takeValue(scan, token)
    case 'value':
      return takeValue(scan, token)
    case 'first-key':
      return token === '}' ? takeClose(scan, token) : takeKey(scan, token)
    case 'key':
      return takeKey(scan, token)
    case 'colon':
      scan.wanted = 'value'
      return token === ':'
    case 'comma':
      return takeComma(scan, token)
    case 'end':
      return false
  }
}

const placeOf = (text: string, index: number): Pick<JsonBreak, 'line' | 'column'> => {
  const before = text.slice(0, index).split('\n')
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 }
}

/** Where `text` breaks, or undefined where it is JSON. */
export const jsonBreak = (text: string): JsonBreak | undefined => {
  const scan: Scan = { open: [], wanted: 'value' }
  let index = 0
  for (;;) {
    index += matchAt(BLANK, text, index)?.length ?? 0
    const isEnd = index >= text.length
    if (isEnd && scan.wanted === 'end') return undefined
    const token = matchAt(TOKEN, text, index)
    if (token === undefined || !take(scan, token)) {
      const isCutShort = isEnd || (token === undefined && CUT_TOKEN.test(text.slice(index)))
      return { ...placeOf(text, index), isCutShort, path: scan.open.map(({ at }) => at) }
    }
    index += token.length
  }
}
