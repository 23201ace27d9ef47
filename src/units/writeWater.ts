import { toGph, toGpm, toLitresPerMinute } from './flow'
import { toHeadFeet, toHeadM } from './head'
import { asTyped, onSightTube } from './precision'
import { toFahrenheit, toFahrenheitWarmer } from './temperature'
import { toFeetPerSecond } from './velocity'
import { MINUTES_PER_HOUR, SECONDS_PER_MINUTE } from './time'
import { toCubicMetres, toCubicYards, toGallons } from './volume'
import { asIs, type Form, type Write, writeAs } from './writeAs'
import { writeDecimal } from './writeDecimal'
import { NO_VALUE, writeOnTape } from './writeLength'

/** The flow of a tower in litres an hour: `4.0 gph` or `15.1 L/h`. */
export const writeFlow = writeAs(
  { numberOf: toGph, decimals: 1, sign: 'gph' },
  { numberOf: asIs, decimals: 1, sign: 'L/h' },
)

/** The flow of a lateral, a main or a pump in litres an hour: `32.0 gpm` or `121 L/min`. */
export const writeFlowTotal = writeAs(
  { numberOf: toGpm, decimals: 1, sign: 'gpm' },
  { numberOf: toLitresPerMinute, decimals: 0, sign: 'L/min' },
)

/** A temperature in degrees Celsius: `68 °F` or `20 °C`. */
export const writeTemperature = writeAs(
  { numberOf: toFahrenheit, decimals: 0, sign: '°F' },
  { numberOf: asIs, decimals: 0, sign: '°C' },
)

/** How much warmer, in degrees Celsius: `60 °F` or `33 °C`. */
export const writeWarming = writeAs(
  { numberOf: toFahrenheitWarmer, decimals: 0, sign: '°F' },
  { numberOf: asIs, decimals: 0, sign: '°C' },
)

/** A velocity in metres a second: `3.2 ft/s` or `0.98 m/s`. */
export const writeVelocity = writeAs(
  { numberOf: toFeetPerSecond, decimals: 1, sign: 'ft/s' },
  { numberOf: asIs, decimals: 2, sign: 'm/s' },
)

/** A volume in litres: `120 gal` or `454 L`. */
export const writeVolume = writeAs(
  { numberOf: toGallons, decimals: 0, sign: 'gal' },
  { numberOf: asIs, decimals: 0, sign: 'L' },
)

/** Earth that is dug, in litres of the hole: `3.1 yd³` or `2.4 m³`. */
export const writeEarth = writeAs(
  { numberOf: toCubicYards, decimals: 1, sign: 'yd³' },
  { numberOf: toCubicMetres, decimals: 1, sign: 'm³' },
)

/** The head of a pump in mm: `12.5 ft` or `3.81 m`. */
export const writePumpHead = writeAs(
  { numberOf: toHeadFeet, decimals: 1, sign: 'ft' },
  { numberOf: toHeadM, decimals: 2, sign: 'm' },
)

const perCent: Form = { numberOf: (share) => share * 100, decimals: 1, sign: '%' }
const watts: Form = { numberOf: asIs, decimals: 0, sign: 'W' }

/** A share of 1: `31.6 %`. */
export const writeShare = writeAs(perCent, perCent)

/** A power in watts: `350 W`. */
export const writeWatts = writeAs(watts, watts)

/** A head in mm as it stands in a sight tube, never in feet: `7-1/4"` or `184 mm`. */
export const writeSightTube: Write = (headMm, units, { hasMoreDigits }) =>
  writeOnTape(headMm, units, hasMoreDigits ? asTyped : onSightTube)

const seconds = (minutes: number): string => `${Math.round(minutes * SECONDS_PER_MINUTE)} s`

const hours = (minutes: number): string => `${writeDecimal(minutes / MINUTES_PER_HOUR, 1)} h`

/** Under this a clock is read in seconds; from `HOURS_FROM` on in hours. */
const SECONDS_UNDER_MIN = 2
const HOURS_FROM_MIN = 120
const WHOLE_FROM_MIN = 10

/** A time in minutes: `45 s`, `3.6 min`, `2.2 h`. Typed fields have minutes alone. */
export const writeMinutes: Write = (minutes, _units, { hasMoreDigits }) => {
  if (!Number.isFinite(minutes)) return NO_VALUE
  if (hasMoreDigits) return `${writeDecimal(minutes, 1, 2)} min`
  if (minutes < SECONDS_UNDER_MIN) return seconds(minutes)
  if (minutes >= HOURS_FROM_MIN) return hours(minutes)
  return `${writeDecimal(minutes, minutes < WHOLE_FROM_MIN ? 1 : 0)} min`
}
