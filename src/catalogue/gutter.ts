import { inches } from '../units/length'
import { COMMON_PRACTICE, finder } from './lookup'
import { thermalOf } from './thermal'

/** Roof gutter, used as a trough: inside dimensions, the width taken as straight from lip to invert. */
export interface Gutter {
  readonly key: 'gutter-5in' | 'gutter-4in'
  readonly title: string
  /** Lip to invert, mm. */
  readonly depthMm: number
  /** Inside width at the lip and at the invert, mm. */
  readonly topMm: number
  readonly bottomMm: number
  /** One section as it is sold, mm. */
  readonly sectionMm: number
  /** How much of its length it grows a degree Celsius. */
  readonly growthPerC: number
  readonly source: string
}

const VINYL_PER_C = thermalOf('pvc').growthPerC

export const gutters: readonly Gutter[] = [
  {
    key: 'gutter-5in',
    title: '5 in roof gutter',
    depthMm: inches(3.375),
    topMm: inches(5),
    bottomMm: inches(3.25),
    sectionMm: inches(120),
    growthPerC: VINYL_PER_C,
    source: COMMON_PRACTICE,
  },
  {
    key: 'gutter-4in',
    title: '4 in gutter',
    depthMm: inches(2.75),
    topMm: inches(4),
    bottomMm: inches(2.5),
    sectionMm: inches(120),
    growthPerC: VINYL_PER_C,
    source: COMMON_PRACTICE,
  },
]

/** The gutter of a key, such as `gutter-5in`. */
export const gutterOf: (key: string) => Gutter = finder('gutter', gutters, (gutter) => gutter.key)

/**
 * Inside width, mm, at a depth below the lip, mm. Above the lip it is the lip's width, below the invert the
 * invert's, so that a tip which hangs too high or too low still meets a width.
 */
export const widthAtDepth = (gutter: Gutter, belowLipMm: number): number => {
  const share = Math.min(Math.max(belowLipMm / gutter.depthMm, 0), 1)
  return gutter.topMm + share * (gutter.bottomMm - gutter.topMm)
}
