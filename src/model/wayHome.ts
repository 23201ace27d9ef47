import type { PartId } from './ids'
import type { Join } from './levels'

/** One drain line that water passes on its way to a pit, from where it comes in to the low end. */
export interface WayStretch {
  readonly drain: PartId
  /** From the high end of the line, mm, where the water comes in. */
  readonly fromMm: number
}

/** The way of water from a place in a drain: line after line, then the pit, if it comes to one. */
export interface WayHome {
  readonly stretches: readonly WayStretch[]
  readonly pit: PartId | undefined
}

const isEndOf =
  (drain: PartId) =>
  ({ kind, from, to }: Join): boolean =>
    from === drain && to !== undefined && (kind === 'drain-to-pit' || kind === 'drain-to-drain')

/** The way home of water that comes into a drain so far from its high end, mm. Lines that only lead to each other end it. */
export const wayHome = (joins: readonly Join[], drain: PartId, fromMm: number): WayHome => {
  const stretches: WayStretch[] = [{ drain, fromMm }]
  let end = joins.find(isEndOf(drain))
  while (end?.kind === 'drain-to-drain' && end.to !== undefined) {
    const next = end.to
    if (stretches.some((stretch) => stretch.drain === next)) return { stretches, pit: undefined }
    stretches.push({ drain: next, fromMm: end.alongMm })
    end = joins.find(isEndOf(next))
  }
  return { stretches, pit: end?.to }
}
