/** Degrees Fahrenheit at the ice point, and in one degree Celsius; both exact by definition. */
const F_AT_0_C = 32
const F_PER_C = 1.8

/** Degrees Fahrenheit to degrees Celsius. */
export const fahrenheit = (value: number): number => (value - F_AT_0_C) / F_PER_C

/** Degrees Celsius to degrees Fahrenheit. */
export const toFahrenheit = (temperatureC: number): number => temperatureC * F_PER_C + F_AT_0_C

/** Degrees Celsius in one degree Fahrenheit, turned round: what a number a degree Fahrenheit is a degree Celsius. */
export const PER_FAHRENHEIT = F_PER_C

/** So many degrees Fahrenheit warmer, in degrees Celsius. */
export const fahrenheitWarmer = (degrees: number): number => degrees / F_PER_C

/** So many degrees Celsius warmer, in degrees Fahrenheit. */
export const toFahrenheitWarmer = (degreesC: number): number => degreesC * F_PER_C
