import type { FieldMeta } from '../model/fields'
import { fieldNumberWords } from '../model/fieldWords'
import type { Units } from '../units/length'
import { parseFall } from '../units/parseFall'
import { parseForce, parseMass, parsePressure, parseStress } from '../units/parseForce'
import { parseLength, type ParsedLength } from '../units/parseLength'
import { parseLevel } from '../units/parseLevel'
import {
  parseFlow,
  parseMinutes,
  parseShare,
  parseTemperature,
  parseVolume,
  parseWarming,
} from '../units/parseWater'
import { asTyped } from '../units/precision'
import { type LevelReading, plainReading } from '../units/writeLevel'
import { type Writer, writerFor } from '../units/writer'

/** What came of a typed text: a value for the file, or a sentence. */
export type Typed =
  { readonly ok: true; readonly value: number | string } | { readonly ok: false; readonly sentence: string }

/**
 * The writer of fields. A field shows every 1/64 in or 0.1 mm that the file holds: rounded to the tape, 15/32 in
 * would be read as 1/2. A level stands in its field as it is read everywhere else.
 */
export const fieldWriter = (units: Units, reading: LevelReading = plainReading): Writer =>
  writerFor(units, asTyped, reading)

/** A value as it stands in its field. */
export const fieldText = (unit: FieldMeta['unit'], value: unknown, writer: Writer): string => {
  if (typeof value === 'number') return fieldNumberWords(value, unit, writer)
  return typeof value === 'string' ? value : ''
}

/** A whole number without a sign. */
export const readCount = (text: string): Typed => {
  const typed = text.trim()
  return /^\d{1,9}$/.test(typed)
    ? { ok: true, value: Number(typed) }
    : { ok: false, sentence: `“${typed}” is not a whole number.` }
}

/** A plain number that may have a sign and decimals: degrees. */
export const readNumber = (text: string): Typed => {
  const typed = text.trim()
  return /^[+-]?\d{1,6}(\.\d{1,6})?$/.test(typed)
    ? { ok: true, value: Number(typed) }
    : { ok: false, sentence: `“${typed}” is not a number.` }
}

const typedMm = (read: ParsedLength): Typed => (read.ok ? { ok: true, value: read.mm } : read)

export const readLength = (text: string, units: Units): Typed => typedMm(parseLength(text, units))

const readFall = (text: string, units: Units): Typed => {
  const read = parseFall(text, units)
  return read.ok ? { ok: true, value: read.mmPerM } : read
}

/** What a builder typed into a field of a unit; its bounds are for the schema to judge. */
export const readField = (
  unit: FieldMeta['unit'],
  text: string,
  units: Units,
  reading: LevelReading = plainReading,
): Typed => {
  switch (unit) {
    case 'length':
      return readLength(text, units)
    case 'level':
      return typedMm(parseLevel(text, units, reading))
    case 'plain-level':
      return typedMm(parseLevel(text, units, { ...reading, zeroMm: 0 }))
    case 'fall':
      return readFall(text, units)
    case 'count':
      return readCount(text)
    case 'turns':
    case 'number':
      return readNumber(text)
    case 'volume':
      return parseVolume(text, units)
    case 'minutes':
      return parseMinutes(text)
    case 'flow':
      return parseFlow(text, units)
    case 'temperature':
      return parseTemperature(text, units)
    case 'warming':
      return parseWarming(text, units)
    case 'share':
      return parseShare(text)
    case 'mass':
      return parseMass(text, units)
    case 'force':
      return parseForce(text, units)
    case 'stress':
      return parseStress(text, units)
    case 'pressure':
      return parsePressure(text, units)
    case 'text':
    case 'choice':
    case 'switch':
    case 'list':
      return { ok: true, value: text }
  }
}
