/** Standard acceleration of free fall, m/s2 (3rd General Conference on Weights and Measures, 1901). */
export const GRAVITY = 9.80665

/** Water between these is liquid and neither frozen nor cooked; the two correlations below hold well beyond, degrees C. */
export const COLDEST_C = 0
export const HOTTEST_C = 60

export interface Water {
  readonly densityKgM3: number
  readonly kinematicM2S: number
}

/** Kell, J. Chem. Eng. Data 20 (1975) 97, equation 16: air-free water at one atmosphere, 0 to 150 degrees C. */
const densityAt = (c: number): number =>
  (999.83952 +
    c * (16.945176 + c * (-7.9870401e-3 + c * (-46.170461e-6 + c * (105.56302e-9 - c * 280.54253e-12))))) /
  (1 + 16.87985e-3 * c)

/** Viscosity of water at 20 degrees C, Pa s, the one point that the correlation hangs on. */
const VISCOSITY_20C = 1.002e-3

/** Kestin, Sokolov and Wakeham, J. Phys. Chem. Ref. Data 7 (1978) 941: -8 to 150 degrees C, Pa s. */
const viscosityAt = (c: number): number => {
  const below20 = 20 - c
  const exponent = (below20 / (c + 96)) * (1.2364 - 1.37e-3 * below20 + 5.7e-6 * below20 * below20)
  return VISCOSITY_20C * 10 ** exponent
}

/**
 * Density (kg/m3) and kinematic viscosity (m2/s) of fresh water at a temperature in degrees C.
 *
 * Throws a RangeError outside `COLDEST_C` to `HOTTEST_C`: a clamped value would look right and be wrong by a third.
 * Whoever takes a temperature from a person checks it first.
 */
export const waterAt = (temperatureC: number): Water => {
  if (!(temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C))
    throw new RangeError(`Water at ${temperatureC} °C is outside ${COLDEST_C} to ${HOTTEST_C} °C`)
  const densityKgM3 = densityAt(temperatureC)
  return { densityKgM3, kinematicM2S: viscosityAt(temperatureC) / densityKgM3 }
}
