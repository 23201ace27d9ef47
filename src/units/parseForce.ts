import { ksi, poundsForce, psf, psi } from './force'
import type { Units } from './length'
import { pounds } from './mass'
import { asIs, type Convert, type ParsedNumber, readMeasure, type Sign } from './parseMeasure'

const POUNDS = /^(?:lbs?|lbf|pounds?)\.?$/

const barePer = (units: Units, inFeet: Convert): Convert => (units === 'metric' ? asIs : inFeet)

const massSigns: readonly Sign[] = [
  [POUNDS, pounds],
  [/^(?:kg|kilos?|kilograms?)\.?$/, asIs],
]

/** The mass that a builder typed, in kilograms; a bare number is pounds or kilograms by `units`. */
export const parseMass = (text: string, units: Units): ParsedNumber =>
  readMeasure(text, {
    noun: 'a weight',
    examples: units === 'metric' ? '11 kg or 25 lb' : '25 lb or 11 kg',
    signs: massSigns,
    bare: barePer(units, pounds),
  })

const forceSigns: readonly Sign[] = [
  [POUNDS, poundsForce],
  [/^(?:n|newtons?)$/, asIs],
]

/** The force that a builder typed, in newtons; a bare number is pounds or newtons by `units`. */
export const parseForce = (text: string, units: Units): ParsedNumber =>
  readMeasure(text, {
    noun: 'a force',
    examples: units === 'metric' ? '220 N or 50 lb' : '50 lb or 220 N',
    signs: forceSigns,
    bare: barePer(units, poundsForce),
  })

const stressSigns: readonly Sign[] = [
  [/^ksi$/, ksi],
  [/^psi$/, psi],
  [/^mpa$/, asIs],
]

/** The stress that a builder typed, in megapascals; a bare number is ksi or MPa by `units`. */
export const parseStress = (text: string, units: Units): ParsedNumber =>
  readMeasure(text, {
    noun: 'a stress',
    examples: units === 'metric' ? '200 MPa or 30 ksi' : '30 ksi or 200 MPa',
    signs: stressSigns,
    bare: barePer(units, ksi),
  })

const pressureSigns: readonly Sign[] = [
  [/^psf$/, psf],
  [/^kpa$/, asIs],
]

/** The pressure on ground that a builder typed, in kilopascals; a bare number is psf or kPa by `units`. */
export const parsePressure = (text: string, units: Units): ParsedNumber =>
  readMeasure(text, {
    noun: 'a pressure on ground',
    examples: units === 'metric' ? '70 kPa or 1500 psf' : '1500 psf or 70 kPa',
    signs: pressureSigns,
    bare: barePer(units, psf),
  })
