import { gph, gpm, litresPerMinute } from './flow'
import type { Units } from './length'
import { fahrenheit, fahrenheitWarmer } from './temperature'
import { MINUTES_PER_HOUR, SECONDS_PER_MINUTE } from './time'
import { asIs, type Convert, type ParsedNumber, readMeasure, type Sign } from './parseMeasure'
import { gallons } from './volume'

const GALLONS = '(?:us )?gal(?:lons?|s)?\\.?'
const LITRES = '(?:l|lit(?:er|re)s?)'
const AN_HOUR = ' ?(?:/|per |an )(?:h|hr|hour)\\.?'
const A_MINUTE = ' ?(?:/|per |a )(?:m|min|minute)\\.?'

const flowSigns: readonly Sign[] = [
  [new RegExp(`^(?:gph|${GALLONS}${AN_HOUR})$`), gph],
  [new RegExp(`^(?:gpm|${GALLONS}${A_MINUTE})$`), gpm],
  [new RegExp(`^(?:lph|${LITRES}${AN_HOUR})$`), asIs],
  [new RegExp(`^(?:lpm|${LITRES}${A_MINUTE})$`), litresPerMinute],
]

/**
 * The flow that a builder typed, in litres an hour: US gallons or litres, an hour or a minute, whatever the units; a bare
 * number is gallons or litres an hour by `units`. Its bounds are for the schema to judge, and so is a minus.
 */
export const parseFlow = (text: string, units: Units): ParsedNumber =>
  readMeasure(text, {
    noun: 'a flow',
    examples: units === 'metric' ? '15 L/h, 120 L/min or 4 gph' : '4 gph, 32 gpm or 15 L/h',
    signs: flowSigns,
    bare: units === 'metric' ? asIs : gph,
  })

const DEGREES = '(?:°|deg(?:rees?)?\\.?)? ?'

const temperatureSigns: readonly Sign[] = [
  [new RegExp(`^${DEGREES}(?:f|fahrenheit)$`), fahrenheit],
  [new RegExp(`^${DEGREES}(?:c|celsius)$`), asIs],
]

const BARE_DEGREES = /^(?:°|deg(?:rees?)?\.?)$/

/** The temperature that a builder typed, in degrees Celsius; without a letter it is Fahrenheit or Celsius by `units`. */
export const parseTemperature = (text: string, units: Units): ParsedNumber => {
  const bare = units === 'metric' ? asIs : fahrenheit
  return readMeasure(text, {
    noun: 'a temperature',
    examples: units === 'metric' ? '20 °C or 68 °F' : '68 °F or 20 °C',
    signs: [...temperatureSigns, [BARE_DEGREES, bare]],
    bare,
  })
}

const warmingSigns: readonly Sign[] = [
  [new RegExp(`^${DEGREES}(?:f|fahrenheit)$`), fahrenheitWarmer],
  [new RegExp(`^${DEGREES}(?:c|celsius)$`), asIs],
]

/** How much warmer a builder typed, in degrees Celsius; without a letter it is Fahrenheit or Celsius by `units`. */
export const parseWarming = (text: string, units: Units): ParsedNumber => {
  const bare = units === 'metric' ? asIs : fahrenheitWarmer
  return readMeasure(text, {
    noun: 'a number of degrees',
    examples: units === 'metric' ? '33 °C or 60 °F' : '60 °F or 33 °C',
    signs: [...warmingSigns, [BARE_DEGREES, bare]],
    bare,
  })
}

const inTheHundred: Convert = (value) => value / 100

/** The share that a builder typed, per cent with the sign or without, as a share of 1. */
export const parseShare = (text: string): ParsedNumber =>
  readMeasure(text, {
    noun: 'a share',
    examples: '3 % or 31.6 %',
    signs: [[/^(?:%|per ?cent)$/, inTheHundred]],
    bare: inTheHundred,
  })

const volumeSigns: readonly Sign[] = [
  [new RegExp(`^${GALLONS}$`), gallons],
  [new RegExp(`^${LITRES}$`), asIs],
]

/** The volume that a builder typed, in litres; a bare number is gallons or litres by `units`. */
export const parseVolume = (text: string, units: Units): ParsedNumber =>
  readMeasure(text, {
    noun: 'a volume',
    examples: units === 'metric' ? '450 L or 120 gal' : '120 gal or 450 L',
    signs: volumeSigns,
    bare: units === 'metric' ? asIs : gallons,
  })

const minuteSigns: readonly Sign[] = [
  [/^(?:m|min|minutes?)\.?$/, asIs],
  [/^(?:s|sec|seconds?)\.?$/, (value) => value / SECONDS_PER_MINUTE],
  [/^(?:h|hr|hours?)\.?$/, (value) => value * MINUTES_PER_HOUR],
]

/** The time that a builder typed, in minutes; so is a bare number. */
export const parseMinutes = (text: string): ParsedNumber =>
  readMeasure(text, { noun: 'a time', examples: '20 min, 90 s or 1 h', signs: minuteSigns, bare: asIs })
