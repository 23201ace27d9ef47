/** Plastic pipe, the value of the codes (from memory of many; the tables that the tests hold use it). */
export const PLASTIC_C = 150

/** Small polyethylene pipe: the value that gives back a maker's chart of 3/4 to 1-1/4 in, and Colebrook within 2 %. */
export const POLYETHYLENE_C = 140

/** How the loss grows with the flow in this law. */
export const HAZEN_WILLIAMS_EXPONENT = 1.852

/**
 * Head lost by Hazen and Williams, m, for a flow >= 0: 10.667 C^-1.852 d^-4.871 L Q^1.852 in SI (EPANET 2 Users Manual,
 * 2000, table of head loss formulas, from memory; 4.727 in feet, converted).
 *
 * Shown beside the program's own number and never used for it: it knows no temperature, and in narrow tubes and in the
 * far half of a lateral, where flow is smooth, it is 12 to 31 % too low.
 */
export const hazenWilliamsLoss = (
  flowM3S: number,
  lengthM: number,
  boreM: number,
  smoothnessC = PLASTIC_C,
): number => 10.667 * lengthM * boreM ** -4.871 * (flowM3S / smoothnessC) ** HAZEN_WILLIAMS_EXPONENT
