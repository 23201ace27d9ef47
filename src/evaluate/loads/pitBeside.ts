import type { Bay } from '../../checks/context'
import { solidsOf } from '../../checks/solids'
import { boxOf, grown, overlaps } from '../../geometry/box'
import { gapBetween } from '../../geometry/polygon'
import type { Body } from '../../model/built'
import type { PartId } from '../../model/ids'
import { type Frame, frameOf, spotAt } from './frame'

/** A pit that is dug nearer to a foot of a row than it is deep, so that its wall bears the foot; the foot that is worst off. */
export interface PitBeside {
  readonly pit: PartId
  readonly gapMm: number
  readonly deepMm: number
  /** The middle of the foot: mm along the row from its start, and to the right of its centreline. */
  readonly footU: number
  readonly footV: number
}

const middleOf = ({ axes }: Frame, { outline }: Body) => {
  const { x0, x1, y0, y1 } = boxOf(outline)
  return spotAt(axes, { x: (x0 + x1) / 2, y: (y0 + y1) / 2, z: 0 })
}

/** Plates, or where there are none the timber that lies on the ground. */
const feetOf = ({ built }: Frame) => solidsOf(built, ['foot'])?.all ?? solidsOf(built, ['frame'])?.all ?? []

/**
 * Pits of the bay that a row's feet stand within the 1:1 line of, each with its worst foot; depths are from the floor at the pit.
 * Common practice, no source: what the soil really does a competent person judges.
 */
export const pitsBeside = ({ built, builtOf }: Pick<Bay, 'built' | 'builtOf'>, row: PartId): PitBeside[] => {
  const own = builtOf.get(row)
  const frame = own && frameOf(own)
  if (!frame || frame.rack.carriedBy === 'house') return []
  const feet = feetOf(frame)
  const dug = built
    .flatMap((each) => solidsOf(each, ['pit'])?.all ?? [])
    .filter(({ body }) => body.fromMm < 0)
  return dug.flatMap(({ body: pit, box }) => {
    const deepMm = -pit.fromMm
    const zone = grown(box, deepMm)
    const [worst] = feet
      .filter((foot) => overlaps(foot.box, zone))
      .map(({ body }) => ({ body, gapMm: gapBetween(body.outline, pit.outline).gapMm }))
      .filter(({ gapMm }) => gapMm < deepMm)
      .toSorted((a, b) => a.gapMm - b.gapMm)
    if (!worst) return []
    const { u, v } = middleOf(frame, worst.body)
    return [{ pit: pit.part, gapMm: Math.max(0, worst.gapMm), deepMm, footU: u, footV: v }]
  })
}
