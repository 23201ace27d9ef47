import type { CutDrain, CutLevel, CutOutlet, CutPit, LongCut } from '../../../evaluate/longCut/section'
import { groundAt } from '../../../evaluate/longCut/groundAt'
import { dropOver } from '../../../units/slope'
import type { CutScale } from './cutScale'

/** Paths of the section in the words of SVG. */

const at = ({ xOf, yOf }: CutScale, { sMm, levelMm }: CutLevel): string =>
  `${xOf(sMm).toFixed(1)} ${yOf(levelMm).toFixed(1)}`

export const lineThrough = (scale: CutScale, levels: readonly CutLevel[]): string =>
  levels.length === 0 ? '' : `M${levels.map((level) => at(scale, level)).join('L')}`

export const shapeThrough = (scale: CutScale, levels: readonly CutLevel[]): string =>
  levels.length === 0 ? '' : `${lineThrough(scale, levels)}Z`

/** The floor between two places of the section, both included. */
const groundBetween = (cut: LongCut, fromMm: number, toMm: number): CutLevel[] => [
  { sMm: fromMm, levelMm: groundAt(cut, fromMm) },
  ...cut.ground.filter(({ sMm }) => sMm > fromMm && sMm < toMm),
  { sMm: toMm, levelMm: groundAt(cut, toMm) },
]

/** Earth from the floor down to the foot of the drawing. */
export const earthShape = (cut: LongCut, scale: CutScale): string =>
  shapeThrough(scale, [
    ...cut.ground,
    { sMm: cut.endMm, levelMm: scale.levelAt(scale.bottom + 8) },
    { sMm: 0, levelMm: scale.levelAt(scale.bottom + 8) },
  ])

/** A drain's level over its invert at both ends of its stretch, mm. */
const sloped = (
  { fromMm, toMm, highInvertMm, lowInvertMm }: CutDrain,
  overMm: number,
): readonly [CutLevel, CutLevel] => [
  { sMm: fromMm, levelMm: highInvertMm + overMm },
  { sMm: toMm, levelMm: lowInvertMm + overMm },
]

const band = (drain: CutDrain, upperMm: number, lowerMm: number): CutLevel[] => [
  ...sloped(drain, upperMm),
  ...sloped(drain, lowerMm).toReversed(),
]

export const trenchShape = (cut: LongCut, drain: CutDrain, scale: CutScale): string =>
  shapeThrough(scale, [
    ...groundBetween(cut, drain.fromMm, drain.toMm),
    ...sloped(drain, -drain.wallMm - drain.bedMm).toReversed(),
  ])

export const bedShape = (drain: CutDrain, scale: CutScale): string =>
  shapeThrough(scale, band(drain, -drain.wallMm, -drain.wallMm - drain.bedMm))

export const pipeShape = (drain: CutDrain, scale: CutScale): string =>
  shapeThrough(scale, band(drain, drain.odMm - drain.wallMm, -drain.wallMm))

export const crownLine = (drain: CutDrain, scale: CutScale): string =>
  lineThrough(scale, sloped(drain, drain.odMm - drain.wallMm))

export const invertLine = (drain: CutDrain, scale: CutScale): string => lineThrough(scale, sloped(drain, 0))

/** Cut area of slight water in a pipe grows with its depth to the power 3/2; from that the depth of a share of the water. */
const DEPTH_OF_SHARE = 2 / 3

/** The water of each reach; `share` of what stands in the line as it runs. */
export const drainWater = (drain: CutDrain, share: number, scale: CutScale): string => {
  const invert = (sMm: number) => drain.highInvertMm - dropOver(sMm - drain.fromMm, drain.slopeMmPerM)
  return drain.reaches
    .map(({ fromMm, toMm, depthMm }) => {
      const overMm = depthMm * share ** DEPTH_OF_SHARE
      return shapeThrough(scale, [
        { sMm: fromMm, levelMm: invert(fromMm) + overMm },
        { sMm: toMm, levelMm: invert(toMm) + overMm },
        { sMm: toMm, levelMm: invert(toMm) },
        { sMm: fromMm, levelMm: invert(fromMm) },
      ])
    })
    .join('')
}

/** A gutter cut across, filled with water to so much over its invert; to its lip by itself. */
export const gutterShape = ({ sMm, invertMm, gutter }: CutOutlet, toMm: number, scale: CutScale): string => {
  const share = Math.min(1, toMm / gutter.depthMm)
  const half = (gutter.bottomMm + share * (gutter.topMm - gutter.bottomMm)) / 2
  const bottom = gutter.bottomMm / 2
  return lineThrough(scale, [
    { sMm: sMm - half, levelMm: invertMm + toMm },
    { sMm: sMm - bottom, levelMm: invertMm },
    { sMm: sMm + bottom, levelMm: invertMm },
    { sMm: sMm + half, levelMm: invertMm + toMm },
  ])
}

/** Half of a pit's width at a level, as its sides lean. */
const wallsAt = ({ fromMm, toMm, bottomFromMm, bottomToMm, facts }: CutPit, levelMm: number) => {
  const share = Math.min(
    1,
    Math.max(0, (levelMm - facts.bottomMm) / Math.max(1, facts.rimMm - facts.bottomMm)),
  )
  return {
    near: bottomFromMm + share * (fromMm - bottomFromMm),
    far: bottomToMm + share * (toMm - bottomToMm),
  }
}

/** The inside of a pit from its bottom up to a level. */
export const pitShape = (pit: CutPit, toMm: number, scale: CutScale): string => {
  const top = wallsAt(pit, toMm)
  return lineThrough(scale, [
    { sMm: top.near, levelMm: toMm },
    { sMm: pit.bottomFromMm, levelMm: pit.facts.bottomMm },
    { sMm: pit.bottomToMm, levelMm: pit.facts.bottomMm },
    { sMm: top.far, levelMm: toMm },
  ])
}

/** A level line from wall to wall. */
export const pitLevelLine = (pit: CutPit, levelMm: number, scale: CutScale): string => {
  const { near, far } = wallsAt(pit, levelMm)
  return lineThrough(scale, [
    { sMm: near, levelMm },
    { sMm: far, levelMm },
  ])
}
