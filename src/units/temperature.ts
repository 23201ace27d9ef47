/** Degrees Fahrenheit at the ice point, and in one degree Celsius; both exact by definition. */
const F_AT_0_C = 32
const F_PER_C = 1.8

/** Degrees Fahrenheit to degrees Celsius. */
export const fahrenheit = (value: number): number => (value - F_AT_0_C) / F_PER_C

/** Degrees Celsius to degrees Fahrenheit. */
export const toFahrenheit = (temperatureC: number): number => temperatureC * F_PER_C + F_AT_0_C
