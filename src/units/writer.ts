import type { Units } from './length'
import { asTyped, atSaw, type Precision } from './precision'
import { writeFall } from './writeFall'
import { writeForce, writeMass, writeMoment, writePressure, writeStress } from './writeForce'
import { writeBore, writeLength, writeOnTape } from './writeLength'
import { type LevelReading, plainReading, writeLevel } from './writeLevel'
import {
  writeEarth,
  writeFlow,
  writeFlowTotal,
  writeMinutes,
  writePumpHead,
  writeShare,
  writeSightTube,
  writeTemperature,
  writeVelocity,
  writeVolume,
  writeWarming,
  writeWatts,
} from './writeWater'

/** Numbers in the units of one reader; whoever makes words is handed one and never asks which units they are. */
export interface Writer {
  /** A length in mm: `5' 6-1/2"` or `1690 mm`. */
  readonly length: (mm: number) => string
  /** A length in mm as read along a tape, never in feet: `66-1/2"` or `1690 mm`. */
  readonly onTape: (mm: number) => string
  /** A level in mm above the file's zero, from the zero and in the unit that the crew reads levels in: `99.31 ft`. */
  readonly level: (mm: number) => string
  /** A level in mm whose number no benchmark moves, such as the benchmark's own value, in the unit of levels: `100.00 ft`. */
  readonly plainLevel: (mm: number) => string
  /** The bore of a small tube in mm: `0.125"` or `3.18 mm`. */
  readonly bore: (mm: number) => string
  /** A fall in mm per metre: `1/8 in/ft` or `10.4 mm/m`. */
  readonly fall: (mmPerM: number) => string
  /** The flow of a tower in litres an hour: `4.0 gph` or `15.1 L/h`. */
  readonly flow: (lph: number) => string
  /** The flow of a lateral, a main or a pump in litres an hour: `32.0 gpm` or `121 L/min`. */
  readonly flowTotal: (lph: number) => string
  /** A head in mm as it stands in a sight tube, to 1/4 in whatever the work, or exact: `7-1/4"` or `184 mm`. */
  readonly sightTube: (headMm: number) => string
  /** The head of a pump in mm: `12.5 ft` or `3.81 m`. */
  readonly pumpHead: (headMm: number) => string
  /** A temperature in degrees Celsius: `68 °F` or `20 °C`. */
  readonly temperature: (c: number) => string
  /** How much warmer, in degrees Celsius: `60 °F` or `33 °C`. */
  readonly warming: (c: number) => string
  /** A velocity in metres a second: `3.2 ft/s` or `0.98 m/s`. */
  readonly velocity: (ms: number) => string
  /** A volume in litres: `120 gal` or `454 L`. */
  readonly volume: (l: number) => string
  /** Earth that is dug, in litres of the hole: `3.1 yd³` or `2.4 m³`. */
  readonly earth: (l: number) => string
  /** A time in minutes: `3.6 min`, `45 s`, `2.2 h`. */
  readonly minutes: (min: number) => string
  /** A share of 1: `31.6 %`. */
  readonly share: (share: number) => string
  /** A power in watts: `350 W`. */
  readonly watts: (w: number) => string
  /** A mass in kilograms: `25 lb` or `11.3 kg`. */
  readonly mass: (kg: number) => string
  /** A force in newtons: `86 lb` or `384 N`. */
  readonly force: (n: number) => string
  /** A stress in megapascals: `9.9 ksi`, `209 psi` or `68.1 MPa`. */
  readonly stress: (mpa: number) => string
  /** A pressure on ground in kilopascals: `1500 psf` or `71.8 kPa`. */
  readonly pressure: (kpa: number) => string
  /** A moment in newton-millimetres: `515 lb-in` or `58.2 N·m`. */
  readonly moment: (nmm: number) => string
  /** The same units as typed, for the few numbers that the crew's step would make alike. */
  readonly exact: () => Writer
}

/** The writer of a reader's units, to the precision that the work can use; levels as the crew reads them. */
export const writerFor = (
  units: Units,
  precision: Precision = atSaw,
  reading: LevelReading = plainReading,
): Writer => ({
  length: (mm) => writeLength(mm, units, precision),
  onTape: (mm) => writeOnTape(mm, units, precision),
  level: (mm) => writeLevel(mm, units, precision, reading),
  plainLevel: (mm) => writeLevel(mm, units, precision, { ...reading, zeroMm: 0 }),
  bore: (mm) => writeBore(mm, units),
  fall: (mmPerM) => writeFall(mmPerM, units),
  flow: (lph) => writeFlow(lph, units, precision),
  flowTotal: (lph) => writeFlowTotal(lph, units, precision),
  sightTube: (headMm) => writeSightTube(headMm, units, precision),
  pumpHead: (headMm) => writePumpHead(headMm, units, precision),
  temperature: (c) => writeTemperature(c, units, precision),
  warming: (c) => writeWarming(c, units, precision),
  velocity: (ms) => writeVelocity(ms, units, precision),
  volume: (l) => writeVolume(l, units, precision),
  earth: (l) => writeEarth(l, units, precision),
  minutes: (min) => writeMinutes(min, units, precision),
  share: (share) => writeShare(share, units, precision),
  watts: (w) => writeWatts(w, units, precision),
  mass: (kg) => writeMass(kg, units, precision),
  force: (n) => writeForce(n, units, precision),
  stress: (mpa) => writeStress(mpa, units, precision),
  pressure: (kpa) => writePressure(kpa, units, precision),
  moment: (nmm) => writeMoment(nmm, units, precision),
  exact: () => writerFor(units, asTyped, reading),
})
