import type { Basin } from '../../solvers/gravity/basin'

/** Length of a pit's edge at its rim, mm. */
export const rimAroundMm = (basin: Basin): number => {
  if (basin.shape === 'round') return Math.PI * basin.diameterMm
  return basin.shape === 'box'
    ? 2 * (basin.lengthMm + basin.widthMm)
    : 2 * (basin.topLengthMm + basin.topWidthMm)
}
