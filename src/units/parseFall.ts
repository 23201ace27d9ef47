import { MIXED, NUMBER, readMixed } from './fraction'
import type { Units } from './length'
import { MM_PER_CM, MM_PER_M } from './length'
import { inchesPerFoot, oneIn, perCent } from './slope'
import { faultOfText, respell, splitSign } from './typed'

export type ParsedFall =
  { readonly ok: true; readonly mmPerM: number } | { readonly ok: false; readonly sentence: string }

type Reading =
  { readonly ok: true; readonly mmPerM: number } | { readonly ok: false; readonly fault: string } | undefined

const EXAMPLES = '1/8 in/ft, 10 mm/m, 1 % or 1:96'

/** Steeper than this, one in one, water no longer runs in a trough or a drain: it drops. */
const STEEPEST_MM_PER_M = MM_PER_M

const INCHES_PER_FOOT = new RegExp(`^(${MIXED}) ?"? ?(?:/|per) ?'$`)
const MM_PER_METRE = new RegExp(`^(${NUMBER}) ?(mm|cm) ?(?:/|per) ?m$`)
const PER_CENT = new RegExp(`^(${NUMBER}) ?%$`)
const ONE_IN = new RegExp(`^1 ?: ?(${NUMBER})$`)
const BARE = new RegExp(`^${NUMBER}$`)
const BARE_MIXED = new RegExp(`^${MIXED}$`)

const readInchesPerFoot = (text: string): Reading => {
  const read = readMixed(text)
  return read.ok ? { ok: true, mmPerM: inchesPerFoot(read.value) } : read
}

const readBare = (text: string, units: Units): Reading => {
  if (units === 'metric') return BARE.test(text) ? { ok: true, mmPerM: Number(text) } : undefined
  return BARE_MIXED.test(text) ? readInchesPerFoot(text) : undefined
}

const readOneIn = (run: number): Reading =>
  run === 0 ? { ok: false, fault: 'has no run' } : { ok: true, mmPerM: oneIn(run) }

const readMarked = (text: string): Reading => {
  const inch = INCHES_PER_FOOT.exec(text)
  if (inch !== null) return readInchesPerFoot(inch[1] ?? '')
  const metre = MM_PER_METRE.exec(text)
  if (metre !== null) return { ok: true, mmPerM: Number(metre[1]) * (metre[2] === 'cm' ? MM_PER_CM : 1) }
  const hundred = PER_CENT.exec(text)
  if (hundred !== null) return { ok: true, mmPerM: perCent(Number(hundred[1])) }
  const one = ONE_IN.exec(text)
  return one === null ? undefined : readOneIn(Number(one[1]))
}

/**
 * The fall that a builder typed, in mm per metre: inches per foot, mm or cm per metre, per cent, or one in so many,
 * whatever the units; a bare number is inches per foot or mm per metre by `units`. A minus is a rise.
 */
export const parseFall = (text: string, units: Units): ParsedFall => {
  const fault = faultOfText(text, EXAMPLES)
  if (fault !== undefined) return { ok: false, sentence: fault }
  const typed = `“${text.trim()}”`
  const { sign, rest } = splitSign(respell(text))
  const reading = readMarked(rest) ?? readBare(rest, units)
  if (reading === undefined)
    return { ok: false, sentence: `${typed} is not a fall. Write it like ${EXAMPLES}.` }
  if (!reading.ok) return { ok: false, sentence: `${typed} ${reading.fault}.` }
  if (reading.mmPerM > STEEPEST_MM_PER_M)
    return { ok: false, sentence: `${typed} is steeper than one in one, which no drain is laid to.` }
  // Adding 0 makes the -0 of a typed "-0" an ordinary zero.
  return { ok: true, mmPerM: sign * reading.mmPerM + 0 }
}
