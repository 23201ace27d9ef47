import { polyOf } from '../catalogue/pipe'
import { placeAlong } from '../geometry/path'
import type { Place } from '../geometry/point'
import type { Built } from '../model/built'
import { type Join, siteLevel } from '../model/levels'
import type { Bay } from './context'

/** A high place of a main between two lower ones. */
export interface Hump {
  readonly at: Place
  /** Over the lower of the two ways that air could go, mm. */
  readonly riseMm: number
  readonly mayMm: number
}

/** Levels nearer than this are one level, mm. */
const CLOSE_MM = 0.01

/** How far each point lies over the higher of the lowest places on its two sides: what air would have to go down. */
const risesOf = (path: readonly Place[]): number[] =>
  path.map(({ z }, index) => {
    const before = Math.min(z, ...path.slice(0, index).map((place) => place.z))
    const after = Math.min(z, ...path.slice(index + 1).map((place) => place.z))
    return z - Math.max(before, after)
  })

const ventsBox = ({ kind }: Join): boolean => kind === 'box-to-main'

/** A row taken off at the top, whose laterals lie higher still, lets the air out by its sight tubes. */
const ventsRow = (join: Join, topMm: number, { builtOf, levels }: Bay): boolean => {
  if (join.kind !== 'zone-to-main') return false
  const row = builtOf.get(join.from)
  const lateral = row?.feed?.laterals.find(({ ends }) => ends.some(({ hasSightTube }) => hasSightTube))
  const joint = row?.feed?.joints[lateral?.fedAt[0] ?? -1]
  return row !== undefined && joint !== undefined && siteLevel(levels, row, joint) > topMm
}

const isVented = (part: string, path: readonly Place[], topMm: number, mayMm: number, bay: Bay): boolean =>
  bay.joins.some(
    (join) =>
      join.to === part &&
      (ventsBox(join) || ventsRow(join, topMm, bay)) &&
      placeAlong(path, join.alongMm).z >= topMm - mayMm,
  )

/** The hump of a main in which most air stands, where it rises by more than its bore and nothing vents it. */
export const humpOf = ({ part, tubes }: Built, bay: Bay): Hump | undefined => {
  const main = tubes.find(({ role }) => role === 'main')
  if (!main) return undefined
  const mayMm = polyOf(main.stock).idMm
  const rises = risesOf(main.path)
  const riseMm = Math.max(...rises)
  if (riseMm <= mayMm + CLOSE_MM) return undefined
  const at = main.path[rises.findIndex((rise) => rise >= riseMm - CLOSE_MM)]
  return at && !isVented(part, main.path, at.z, mayMm, bay) ? { at, riseMm, mayMm } : undefined
}
