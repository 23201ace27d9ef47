/** Steps of a carpenter's tape, as parts of an inch. A 1/64 in is 127 ticks, so each is a whole number of ticks. */
export type Denominator = 2 | 4 | 8 | 16 | 32 | 64

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b)

/** So many parts of a whole, neither negative, as a carpenter writes them: `6`, `1/2`, `6-1/2`, in lowest terms. */
export const writeMixed = (parts: number, denominator: Denominator): string => {
  const whole = Math.floor(parts / denominator)
  const rest = parts % denominator
  if (rest === 0) return String(whole)
  const shared = greatestCommonDivisor(rest, denominator)
  const fraction = `${rest / shared}/${denominator / shared}`
  return whole === 0 ? fraction : `${whole}-${fraction}`
}

/** A plain number, as a regular expression: `66`, `66.5`, `.5`. No exponent: nobody types one at a bench. */
export const NUMBER = String.raw`(?:\d+\.?\d*|\.\d+)`

/** A number or a carpenter's fraction, as a regular expression: `66.5`, `1/2`, `66 1/2`, `66-1/2`. */
export const MIXED = String.raw`(?:\d+(?:\s+|\s*-\s*)\d+/\d+|\d+/\d+|${NUMBER})`

const PARTS = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\/(\d+)$/

export type Read =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly fault: string }

/** The value of a text that `MIXED` matches; a fault, which reads on from the text itself, where the fraction is none. */
export const readMixed = (text: string): Read => {
  const match = PARTS.exec(text)
  if (match === null) return { ok: true, value: Number(text) }
  const [over, under] = [Number(match[2]), Number(match[3])]
  if (under === 0) return { ok: false, fault: 'has 0 under its fraction' }
  if (match[1] !== undefined && over >= under)
    return { ok: false, fault: 'has a fraction that is 1 or more beside a whole number' }
  return { ok: true, value: Number(match[1] ?? 0) + over / under }
}
