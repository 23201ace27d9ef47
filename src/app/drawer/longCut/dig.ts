import type { CutDrain, LongCut } from '../../../evaluate/longCut/section'
import { dropOver } from '../../../units/slope'
import { groundAt } from '../../../evaluate/longCut/groundAt'

/** How deep is dug at a place of a trench: from the floor to under the bed. */
export interface Dig {
  readonly part: string
  readonly sMm: number
  readonly floorMm: number
  readonly bottomMm: number
}

/** The middle of the longest stretch of a drain that no tube drops into: there is room for a dimension. */
const freePlace = ({ outlets }: LongCut, { part, fromMm, toMm }: CutDrain): number => {
  const marks = [fromMm, ...outlets.filter(({ drain }) => drain === part).map(({ sMm }) => sMm), toMm]
  let [from, to] = [fromMm, fromMm]
  marks.forEach((mark, index) => {
    const before = marks[index - 1] ?? mark
    if (mark - before > to - from) [from, to] = [before, mark]
  })
  return (from + to) / 2
}

/** One depth of each trench on the section, where it is free to be written; none of a line that lies over the floor. */
export const digsOf = (cut: LongCut): readonly Dig[] =>
  cut.drains.flatMap((drain) => {
    const sMm = freePlace(cut, drain)
    const invertMm = drain.highInvertMm - dropOver(sMm - drain.fromMm, drain.slopeMmPerM)
    const dig = {
      part: drain.part,
      sMm,
      floorMm: groundAt(cut, sMm),
      bottomMm: invertMm - drain.wallMm - drain.bedMm,
    }
    return dig.bottomMm < dig.floorMm ? [dig] : []
  })
