const CENTS = 100

/** Money from whole cents, in the currency sign of the job's country: `$12.50`. */
export const dollars = (cents: number): string => `$${(cents / CENTS).toFixed(2)}`
