/**
 * The inside of a pipe or gutter that water runs in with a free surface. All mm; depths are over the invert. Over the lip
 * an open section goes on as wide as it is there, so that water which would run over still has a depth; a full pipe is full.
 * A trapezoid is nowhere wider than at its lip.
 */
export type Section =
  | { readonly shape: 'circle'; readonly diameterMm: number }
  | {
      readonly shape: 'trapezoid'
      readonly bottomMm: number
      readonly topMm: number
      readonly heightMm: number
    }
  | { readonly shape: 'half-round'; readonly diameterMm: number }

/** From invert to crown or lip, mm. */
export const heightMm = (section: Section): number => {
  if (section.shape === 'trapezoid') return section.heightMm
  return section.shape === 'circle' ? section.diameterMm : section.diameterMm / 2
}

/** Half the angle, radians, that the wetted arc of a circle spans at its middle. */
const halfAngle = (diameterMm: number, depthMm: number): number =>
  Math.acos(Math.min(Math.max(1 - (2 * depthMm) / diameterMm, -1), 1))

/** Area of a circle's segment, (theta - sin theta) D^2 / 8 with theta twice the half angle. */
const segmentMm2 = (diameterMm: number, depthMm: number): number => {
  const half = halfAngle(diameterMm, depthMm)
  return (diameterMm ** 2 / 4) * (half - Math.sin(half) * Math.cos(half))
}

const overLipMm = (section: Section, depthMm: number): number => Math.max(0, depthMm - heightMm(section))

/** How much wider a trapezoid grows a mm of depth. */
const growth = ({ topMm, bottomMm, heightMm: high }: Section & { shape: 'trapezoid' }): number =>
  (topMm - bottomMm) / high

/** Length of a wall that leans so much, a mm of height; `Math.hypot` takes far longer. */
const slant = (lean: number): number => Math.sqrt(1 + lean * lean)

/** Width of the water's surface, mm; 0 in a pipe that runs full. */
export const topWidthMm = (section: Section, depthMm: number): number => {
  if (depthMm <= 0) return section.shape === 'trapezoid' ? section.bottomMm : 0
  if (section.shape === 'trapezoid')
    return section.bottomMm + growth(section) * Math.min(depthMm, section.heightMm)
  const inMm = Math.min(depthMm, heightMm(section))
  return 2 * Math.sqrt(inMm * (section.diameterMm - inMm))
}

/** Area that water stands in across the flow, mm2; 0 at and under the invert. */
export const areaMm2 = (section: Section, depthMm: number): number => {
  if (depthMm <= 0) return 0
  const inMm = Math.min(depthMm, heightMm(section))
  const overMm = overLipMm(section, depthMm)
  if (section.shape === 'trapezoid')
    return (section.bottomMm + (growth(section) * inMm) / 2) * inMm + section.topMm * overMm
  const segment = segmentMm2(section.diameterMm, inMm)
  return section.shape === 'circle' ? segment : segment + section.diameterMm * overMm
}

/** Length of wall and bottom that water touches across the flow, mm. */
export const wettedMm = (section: Section, depthMm: number): number => {
  if (depthMm <= 0) return 0
  const inMm = Math.min(depthMm, heightMm(section))
  const overMm = overLipMm(section, depthMm)
  if (section.shape === 'trapezoid')
    return section.bottomMm + 2 * inMm * slant(growth(section) / 2) + 2 * overMm
  const arc = section.diameterMm * halfAngle(section.diameterMm, inMm)
  return section.shape === 'circle' ? arc : arc + 2 * overMm
}

/** Area over wetted length, mm; 0 where nothing is wet. */
export const hydraulicRadiusMm = (section: Section, depthMm: number): number =>
  depthMm <= 0 ? 0 : areaMm2(section, depthMm) / wettedMm(section, depthMm)

/** Of a circle's segment under its own surface: (3 sin a - sin^3 a - 3 a cos a) D^3 / 24 with a the half angle. */
const segmentMomentMm3 = (diameterMm: number, depthMm: number): number => {
  const half = halfAngle(diameterMm, depthMm)
  const sine = Math.sin(half)
  return (diameterMm ** 3 / 24) * (3 * sine - sine ** 3 - 3 * half * Math.cos(half))
}

/** First moment of the wetted area about the water's surface, mm3: how hard still water pushes along, over its weight. */
export const momentMm3 = (section: Section, depthMm: number): number => {
  if (depthMm <= 0) return 0
  const inMm = Math.min(depthMm, heightMm(section))
  const overMm = overLipMm(section, depthMm)
  const insideMm3 =
    section.shape === 'trapezoid'
      ? (section.bottomMm / 2 + (growth(section) * inMm) / 6) * inMm * inMm
      : segmentMomentMm3(section.diameterMm, inMm)
  if (overMm === 0) return insideMm3
  return insideMm3 + areaMm2(section, inMm) * overMm + (topWidthMm(section, inMm) * overMm ** 2) / 2
}
