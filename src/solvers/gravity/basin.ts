/** The inside of a pit or tote. All mm; depths are over its bottom. */
export type Basin =
  | { readonly shape: 'box'; readonly lengthMm: number; readonly widthMm: number }
  | { readonly shape: 'round'; readonly diameterMm: number }
  /** Sides that lean out from bottom to rim, straight: a battered pit, a tote that stacks. */
  | {
      readonly shape: 'sloped'
      readonly bottomLengthMm: number
      readonly bottomWidthMm: number
      readonly topLengthMm: number
      readonly topWidthMm: number
      /** From bottom to rim. */
      readonly depthMm: number
    }

/** Litres in a cubic millimetre. */
const L_PER_MM3 = 1e-6

const boxL = (lengthMm: number, widthMm: number, depthMm: number): number =>
  lengthMm * widthMm * depthMm * L_PER_MM3

/** Water surface at a depth, mm2. Over the rim a basin goes on as wide as it is there. */
export const surfaceMm2 = (basin: Basin, depthMm: number): number => {
  if (basin.shape === 'box') return basin.lengthMm * basin.widthMm
  if (basin.shape === 'round') return (Math.PI * basin.diameterMm ** 2) / 4
  const share = Math.min(Math.max(depthMm / basin.depthMm, 0), 1)
  const { bottomLengthMm, bottomWidthMm, topLengthMm, topWidthMm } = basin
  return (
    (bottomLengthMm + share * (topLengthMm - bottomLengthMm)) *
    (bottomWidthMm + share * (topWidthMm - bottomWidthMm))
  )
}

/**
 * Litres under a depth; 0 at and under the bottom. Sloped sides by the prismoidal formula (end surfaces and four times the
 * middle one, by a sixth of the depth), which is exact for straight sides.
 */
export const volumeL = (basin: Basin, depthMm: number): number => {
  if (depthMm <= 0) return 0
  if (basin.shape !== 'sloped') return surfaceMm2(basin, depthMm) * depthMm * L_PER_MM3
  const inMm = Math.min(depthMm, basin.depthMm)
  const areas = surfaceMm2(basin, 0) + 4 * surfaceMm2(basin, inMm / 2) + surfaceMm2(basin, inMm)
  return (areas / 6) * inMm * L_PER_MM3 + boxL(basin.topLengthMm, basin.topWidthMm, depthMm - inMm)
}

/** Halvings that bring any depth of a pit to far below a tick. */
const HALVINGS = 60

/** The depth, mm, at which so many litres stand; the inverse of `volumeL`. */
export const depthMm = (basin: Basin, litres: number): number => {
  if (litres <= 0) return 0
  if (basin.shape !== 'sloped') return litres / (surfaceMm2(basin, 0) * L_PER_MM3)
  const leastMm2 = Math.min(surfaceMm2(basin, 0), surfaceMm2(basin, basin.depthMm))
  let [low, high] = [0, litres / (leastMm2 * L_PER_MM3)]
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2
    if (volumeL(basin, middle) < litres) low = middle
    else high = middle
  }
  return (low + high) / 2
}
