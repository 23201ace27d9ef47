import { MIXED, NUMBER, readMixed } from './fraction'
import { feet, inches, INCHES_PER_FOOT, LONGEST_MM, MM_PER_CM, MM_PER_M, onTick } from './length'
import type { Units } from './length'
import { faultOfText, respell, splitSign } from './typed'
import { asTyped } from './precision'
import { writeLength } from './writeLength'

export type ParsedLength =
  { readonly ok: true; readonly mm: number } | { readonly ok: false; readonly sentence: string }

/** A magnitude in mm, or the fault of a text that was understood but means no length; undefined: not understood. */
type Reading =
  { readonly ok: true; readonly mm: number } | { readonly ok: false; readonly fault: string } | undefined

const EXAMPLES: Readonly<Record<Units, string>> = {
  'feet-inches': `5' 6-1/2", 66-1/2 or 1.69 m`,
  metric: `1690, 169 cm, 1.69 m or 5' 6-1/2"`,
}

const MM_PER_METRIC_UNIT: Readonly<Record<string, number>> = { mm: 1, cm: MM_PER_CM, m: MM_PER_M }

const METRIC = new RegExp(`^(${NUMBER}) ?(mm|cm|m)$`)
const BARE = new RegExp(`^${NUMBER}$`)
const FEET = new RegExp(`^(${MIXED}) ?'(?: ?-? ?(${MIXED}) ?"?)?$`)
const FEET_INCHES_FRACTION = /^(\d+)-(\d+)(?:(?: | ?- ?)(\d+\/\d+))? ?"?$/
const INCHES = new RegExp(`^(${MIXED}) ?"?$`)

const readMetric = (text: string): Reading => {
  const match = METRIC.exec(text)
  if (match === null) return undefined
  return { ok: true, mm: Number(match[1]) * (MM_PER_METRIC_UNIT[match[2] ?? ''] ?? 1) }
}

/** Feet with the inches beside them, if any. 12 in or more beside feet is a slip, and which one nobody can know. */
const readFeetAnd = (feetText: string, inchText: string | undefined): Reading => {
  const feetRead = readMixed(feetText)
  if (!feetRead.ok) return feetRead
  if (inchText === undefined) return { ok: true, mm: feet(feetRead.value) }
  if (!Number.isInteger(feetRead.value)) return { ok: false, fault: 'has a part of a foot beside its inches' }
  const rest = readMixed(inchText)
  if (!rest.ok) return rest
  const mm = feet(feetRead.value) + inches(rest.value)
  if (rest.value < INCHES_PER_FOOT) return { ok: true, mm }
  const meant = writeLength(mm, 'feet-inches', asTyped)
  return { ok: false, fault: `has 12 in or more beside its feet; write ${meant} if that is meant` }
}

const readFeet = (text: string): Reading => {
  const match = FEET.exec(text)
  return match === null ? undefined : readFeetAnd(match[1] ?? '', match[2])
}

/** `5-6-1/2` and `5-6`, as written on sketches; `66-1/2` is inches and does not match. */
const readDashed = (text: string): Reading => {
  const match = FEET_INCHES_FRACTION.exec(text)
  if (match === null) return undefined
  return readFeetAnd(match[1] ?? '', match[3] === undefined ? match[2] : `${match[2]} ${match[3]}`)
}

const readInches = (text: string): Reading => {
  const match = INCHES.exec(text)
  if (match === null) return undefined
  const read = readMixed(match[1] ?? '')
  return read.ok ? { ok: true, mm: inches(read.value) } : read
}

const readBareMm = (text: string): Reading => (BARE.test(text) ? { ok: true, mm: Number(text) } : undefined)

/** To a metric builder a text without a foot or inch mark is never feet and inches. */
const readMagnitude = (text: string, units: Units): Reading => {
  if (units === 'metric' && !/['"]/.test(text)) return readMetric(text) ?? readBareMm(text)
  return readMetric(text) ?? readFeet(text) ?? readDashed(text) ?? readInches(text)
}

/**
 * The length that a builder typed, in mm on the tick. Feet, inches, fractions, hyphens (`5-6-1/2` is feet, inches,
 * fraction), mm, cm and m are read whatever the units; without a mark it is inches or mm by `units`. A minus makes it a
 * level below zero. What is not clearly one length is refused with a sentence for the builder, never guessed at.
 */
export const parseLength = (text: string, units: Units): ParsedLength => {
  const fault = faultOfText(text, EXAMPLES[units])
  if (fault !== undefined) return { ok: false, sentence: fault }
  const typed = `“${text.trim()}”`
  const { sign, rest } = splitSign(respell(text))
  const reading = readMagnitude(rest, units)
  if (reading === undefined)
    return { ok: false, sentence: `${typed} is not a length. Write it like ${EXAMPLES[units]}.` }
  if (!reading.ok) return { ok: false, sentence: `${typed} ${reading.fault}.` }
  if (reading.mm > LONGEST_MM)
    return { ok: false, sentence: `${typed} is more than ${LONGEST_MM / MM_PER_M} m, longer than any bay.` }
  // Adding 0 makes the -0 of a typed "-0" an ordinary zero.
  return { ok: true, mm: onTick(sign * reading.mm) + 0 }
}
