import { length3, type Place } from '../../geometry/point'
import type { FeedPipe } from '../../model/feedFacts'

/** Joints and pipes as they are laid one after another. */
export interface PipesLaid {
  readonly joints: Place[]
  readonly pipes: FeedPipe[]
}

export const addJoint = ({ joints }: PipesLaid, at: Place): number => joints.push(at) - 1

/** A joint that was laid; asking for another is a programmer's mistake. */
export const jointAt = ({ joints }: PipesLaid, joint: number): Place => {
  const at = joints[joint]
  if (!at) throw new RangeError(`The feed has ${joints.length} joints and none numbered ${joint}.`)
  return at
}

/** A straight pipe between two joints, as long as they lie apart. */
export const addPipe = (
  laid: PipesLaid,
  role: FeedPipe['role'],
  stock: string,
  [from, to]: readonly [number, number],
  lossK: number,
): void => {
  const lengthMm = length3(jointAt(laid, from), jointAt(laid, to))
  laid.pipes.push({ role, from, to, stock, lengthMm, lossK })
}
