import { HAZEN_WILLIAMS_EXPONENT, hazenWilliamsLoss, PLASTIC_C } from './hazenWilliams'

/**
 * Share of its full-flow loss that a lateral loses when equal outlets draw the flow off along it (Christiansen,
 * Irrigation by Sprinkling, California Agr. Exp. Sta. Bulletin 670, 1942). It is the exact sum that his formula 1/(m+1)
 * + 1/(2N) + sqrt(m-1)/(6N^2) comes close to, so it holds for one outlet too.
 *
 * `firstShare` is how far the first outlet stands from the inlet, in spacings: 1 is Christiansen's case, 0.5 that of
 * Jensen and Fratini (Agr. Eng. 38, 1957; from memory). 0 for no outlets.
 */
export const multiOutletFactor = (outlets: number, exponent: number, firstShare = 1): number => {
  if (outlets < 1) return 0
  let loss = firstShare * outlets ** exponent
  for (let beyond = 1; beyond < outlets; beyond += 1) loss += beyond ** exponent
  return loss / (outlets ** exponent * (outlets - 1 + firstShare))
}

/**
 * The cross-check that stands beside the program's own number: loss along a lateral by Hazen-Williams with
 * Christiansen's factor, m. `flowM3S` is what enters, `lengthM` reaches to the last outlet.
 */
export const lateralLossByTable = (
  flowM3S: number,
  lengthM: number,
  boreM: number,
  outlets: number,
  smoothnessC = PLASTIC_C,
): number =>
  hazenWilliamsLoss(flowM3S, lengthM, boreM, smoothnessC) *
  multiOutletFactor(outlets, HAZEN_WILLIAMS_EXPONENT)
