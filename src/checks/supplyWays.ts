import { nearestFromAbove } from '../geometry/path'
import { distance, type Place, type Point } from '../geometry/point'
import type { Built } from '../model/built'
import type { PartId } from '../model/ids'
import type { Bay } from './context'

/** A main's pipe; undefined for other parts. */
export const mainPath = ({ tubes }: Built): readonly Place[] | undefined =>
  tubes.find(({ role }) => role === 'main')?.path

/** The main nearest to a place on the floor, leaving one out, and how far it is, mm. */
export const nearestMain = (
  at: Point,
  { built }: Bay,
  except?: PartId,
): { readonly part: PartId; readonly gapMm: number } | undefined =>
  built
    .flatMap((each) => {
      const path = mainPath(each)
      return path && each.part !== except
        ? [{ part: each.part, gapMm: nearestFromAbove(path, at).gapMm }]
        : []
    })
    .sort((a, b) => a.gapMm - b.gapMm)[0]

/** Where the nearest pump or, without one, the nearest head box gives its water. */
export const nearestSupply = (at: Point, { built }: Bay): Place | undefined => {
  const nearest = (role: 'pump' | 'head-box') =>
    built
      .flatMap(({ mouths }) => mouths.filter((mouth) => mouth.role === role).map((mouth) => mouth.at))
      .sort((a, b) => distance(a, at) - distance(b, at))[0]
  return nearest('pump') ?? nearest('head-box')
}

/** From a pump along the house to a place, then across to it; straight where the two lie in line. */
export const runTo = (pump: Point, to: Point): readonly Point[] => {
  const corner = { x: to.x, y: pump.y }
  return [{ x: pump.x, y: pump.y }, corner, { x: to.x, y: to.y }].filter(
    (at, index, all) => index === 0 || distance(at, all[index - 1] ?? at) > 1,
  )
}
