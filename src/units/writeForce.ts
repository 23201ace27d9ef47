import { toInchPounds, toKsi, toNewtonMetres, toPoundsForce, toPsf, toPsi } from './force'
import { toPounds } from './mass'
import { asIs, type Write, writeAs } from './writeAs'

/** A mass in kilograms: `25 lb` or `11.3 kg`. */
export const writeMass = writeAs(
  { numberOf: toPounds, decimals: 0, sign: 'lb' },
  { numberOf: asIs, decimals: 1, sign: 'kg' },
)

/** A force in newtons: `86 lb` or `384 N`. */
export const writeForce = writeAs(
  { numberOf: toPoundsForce, decimals: 0, sign: 'lb' },
  { numberOf: asIs, decimals: 0, sign: 'N' },
)

const metricStress = { numberOf: asIs, decimals: 1, sign: 'MPa' }
const inKsi = writeAs({ numberOf: toKsi, decimals: 1, sign: 'ksi' }, metricStress)
const inPsi = writeAs({ numberOf: toPsi, decimals: 0, sign: 'psi' }, metricStress)

/** Steel is read in ksi and wood in psi: under so many ksi it is wood. A field has ksi alone. */
const KSI_FROM = 2

/** A stress in megapascals: `9.9 ksi`, `209 psi` or `68.1 MPa`. */
export const writeStress: Write = (mpa, units, precision) =>
  precision.hasMoreDigits || toKsi(mpa) >= KSI_FROM
    ? inKsi(mpa, units, precision)
    : inPsi(mpa, units, precision)

/** A pressure on ground in kilopascals: `1500 psf` or `71.8 kPa`. */
export const writePressure = writeAs(
  { numberOf: toPsf, decimals: 0, sign: 'psf' },
  { numberOf: asIs, decimals: 1, sign: 'kPa' },
)

/** A moment in newton-millimetres: `515 lb-in` or `58.2 N·m`. */
export const writeMoment = writeAs(
  { numberOf: toInchPounds, decimals: 0, sign: 'lb-in' },
  { numberOf: toNewtonMetres, decimals: 1, sign: 'N·m' },
)
