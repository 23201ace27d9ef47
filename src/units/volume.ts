/** United States gallon of 231 cubic inches, exact: NIST Special Publication 811 (2008), appendix B.8. */
const LITRES_PER_US_GALLON = 3.785411784

const LITRES_PER_M3 = 1000

/** US gallons to litres. */
export const gallons = (value: number): number => value * LITRES_PER_US_GALLON

/** Litres to US gallons. */
export const toGallons = (volumeL: number): number => volumeL / LITRES_PER_US_GALLON

/** Cubic metres to litres. */
export const cubicMetres = (value: number): number => value * LITRES_PER_M3

/** Litres to cubic metres. */
export const toCubicMetres = (volumeL: number): number => volumeL / LITRES_PER_M3

/** Cubic yard of 0.9144 m cubed, exact: NIST Special Publication 811 (2008), appendix B.8. */
const LITRES_PER_CUBIC_YARD = 764.554857984

/** Litres to cubic yards: earth that is dug. */
export const toCubicYards = (volumeL: number): number => volumeL / LITRES_PER_CUBIC_YARD
