import * as z from 'zod/mini'
import { LONGEST_MM, onTick } from '../units/length'

/** The words of a field, as the inspector shows them. */
export interface FieldWords {
  readonly label: string
  /** Heading under which the inspector groups it. */
  readonly group: string
  /** Words for each value of a choice. */
  readonly choices?: Readonly<Record<string, string>>
  /** One sentence for the curious. */
  readonly help?: string
  /** For a field that may be null: what the program does then. */
  readonly whenNull?: string
  /** For a field that counts only while a choice of the same part is one of these: the inspector leaves it out otherwise. */
  readonly appliesTo?: { readonly field: string; readonly values: readonly string[] }
}

/** The schema is the only place where labels and units of a field stand. */
export interface FieldMeta extends FieldWords {
  readonly unit:
    | 'length'
    | 'level'
    | 'plain-level'
    | 'fall'
    | 'flow'
    | 'temperature'
    | 'warming'
    | 'share'
    | 'volume'
    | 'minutes'
    | 'mass'
    | 'force'
    | 'stress'
    | 'pressure'
    | 'number'
    | 'count'
    | 'turns'
    | 'text'
    | 'choice'
    | 'switch'
    | 'list'
  /** What a choice is between, in the order in which it is shown: an object's keys that are numbers would come first. */
  readonly order?: readonly string[]
}

export const fields = z.registry<FieldMeta>()

/** The length that a file gives back: on the tick, and never the -0 that mirrors and turns make. */
const kept = (mm: number): number => onTick(mm) + 0

/**
 * A number of mm kept on the tick. It is rounded before it is compared, and with bounds on the tick too: 24 in is
 * 609.5999... in floating point, and must pass where 24 in is the most.
 */
export const tickMm = (minMm: number, maxMm: number) =>
  z.number().check(z.overwrite(kept), z.gte(onTick(minMm)), z.lte(onTick(maxMm)))

/** A length of at least 0 unless `minMm` says otherwise, mm, kept on the tick. */
export const length = (defaultMm: number, meta: FieldWords, minMm = 0, maxMm = LONGEST_MM) =>
  z._default(tickMm(minMm, maxMm), onTick(defaultMm)).register(fields, { ...meta, unit: 'length' })

const upOrDown = (defaultMm: number) => z._default(tickMm(-LONGEST_MM, LONGEST_MM), onTick(defaultMm))

/** A level above the file's zero, which may be negative, mm; read and typed as the crew reads levels. */
export const level = (defaultMm: number, meta: FieldWords) =>
  upOrDown(defaultMm).register(fields, { ...meta, unit: 'level' })

/** A level that says where the crew's levels are counted from, and so is never counted from there itself, mm. */
export const plainLevel = (defaultMm: number, meta: FieldWords) =>
  upOrDown(defaultMm).register(fields, { ...meta, unit: 'plain-level' })

/** How far up from what its label names, such as the floor, mm; less than 0 is down. */
export const rise = (defaultMm: number, meta: FieldWords) =>
  upOrDown(defaultMm).register(fields, { ...meta, unit: 'length' })

/** A fall, mm per metre. */
export const fall = (defaultMmPerM: number, meta: FieldWords, min = 0, max = 200) =>
  z
    ._default(z.number().check(z.gte(min), z.lte(max)), defaultMmPerM)
    .register(fields, { ...meta, unit: 'fall' })

/** Parts of a unit that are kept of what has no tick: all nine decimals of a gallon in litres, and none of the rounding. */
const KEPT_PARTS = 1e9

const withoutRounding = (value: number): number => Math.round(value * KEPT_PARTS) / KEPT_PARTS + 0

/** A number without the rounding of conversions, so that a bound typed in the reader's unit is not just outside it. */
export const measured = (min: number, max: number) =>
  z.number().check(z.overwrite(withoutRounding), z.gte(withoutRounding(min)), z.lte(withoutRounding(max)))

const measuredFrom = (value: number, min: number, max: number) =>
  z._default(measured(min, max), withoutRounding(value))

/** A flow, litres an hour. */
export const flow = (defaultLph: number, meta: FieldWords, minLph: number, maxLph: number) =>
  measuredFrom(defaultLph, minLph, maxLph).register(fields, { ...meta, unit: 'flow' })

/** A temperature, degrees Celsius. */
export const temperature = (defaultC: number, meta: FieldWords, minC: number, maxC: number) =>
  measuredFrom(defaultC, minC, maxC).register(fields, { ...meta, unit: 'temperature' })

/** How much warmer, degrees Celsius: of a Fahrenheit scale only the size of its degrees counts. */
export const warming = (defaultC: number, meta: FieldWords, minC: number, maxC: number) =>
  measuredFrom(defaultC, minC, maxC).register(fields, { ...meta, unit: 'warming' })

/** A share of 1, typed and read per cent. */
export const share = (defaultShare: number, meta: FieldWords, min = 0, max = 1) =>
  measuredFrom(defaultShare, min, max).register(fields, { ...meta, unit: 'share' })

/** A volume, litres. */
export const volume = (defaultL: number, meta: FieldWords, minL: number, maxL: number) =>
  measuredFrom(defaultL, minL, maxL).register(fields, { ...meta, unit: 'volume' })

/** A time, minutes. */
export const minutes = (defaultMin: number, meta: FieldWords, min: number, max: number) =>
  measuredFrom(defaultMin, min, max).register(fields, { ...meta, unit: 'minutes' })

/** A mass, kilograms. */
export const mass = (defaultKg: number, meta: FieldWords, minKg: number, maxKg: number) =>
  measuredFrom(defaultKg, minKg, maxKg).register(fields, { ...meta, unit: 'mass' })

/** A force, newtons. */
export const force = (defaultN: number, meta: FieldWords, minN: number, maxN: number) =>
  measuredFrom(defaultN, minN, maxN).register(fields, { ...meta, unit: 'force' })

/** A stress, megapascals. */
export const stress = (defaultMpa: number, meta: FieldWords, minMpa: number, maxMpa: number) =>
  measuredFrom(defaultMpa, minMpa, maxMpa).register(fields, { ...meta, unit: 'stress' })

/** A pressure on ground, kilopascals. */
export const pressure = (defaultKpa: number, meta: FieldWords, minKpa: number, maxKpa: number) =>
  measuredFrom(defaultKpa, minKpa, maxKpa).register(fields, { ...meta, unit: 'pressure' })

/** A plain number, such as a roughness. */
export const number = (defaultValue: number, meta: FieldWords, min: number, max: number) =>
  measuredFrom(defaultValue, min, max).register(fields, { ...meta, unit: 'number' })

export const count = (defaultCount: number, meta: FieldWords, min: number, max: number) =>
  z._default(z.int().check(z.gte(min), z.lte(max)), defaultCount).register(fields, { ...meta, unit: 'count' })

/** Turns of a valve's stem; half turns and less are common. */
export const turns = (defaultTurns: number, meta: FieldWords, min: number, max: number) =>
  z
    ._default(z.number().check(z.gte(min), z.lte(max)), defaultTurns)
    .register(fields, { ...meta, unit: 'turns' })

export const text = (defaultText: string, meta: FieldWords, longest = 200) =>
  z._default(z.string().check(z.maxLength(longest)), defaultText).register(fields, { ...meta, unit: 'text' })

export const toggle = (on: boolean, meta: FieldWords) =>
  z._default(z.boolean(), on).register(fields, { ...meta, unit: 'switch' })

/** One of some values. The cast: one of T is one of what its enum holds, which the compiler does not see for a generic T. */
export const choice = <const T extends readonly [string, ...string[]]>(
  values: T,
  first: T[number],
  meta: FieldWords,
) => z._default(z.enum(values), first as never).register(fields, { ...meta, unit: 'choice', order: values })

/** A place on the floor, mm. */
export const point = z.object({ x: tickMm(-LONGEST_MM, LONGEST_MM), y: tickMm(-LONGEST_MM, LONGEST_MM) })

export const heading = z.literal([0, 90, 180, 270])
