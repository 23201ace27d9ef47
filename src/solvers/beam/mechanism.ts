import { clamped, free, type Pieces } from './pieces'

/**
 * The first place of a stretch between hinges that could swing without bending, or undefined where the beam stands. A stretch may
 * turn, and its left end may move where what is left of it lets it: each support within takes one of these freedoms, a clamp both.
 * One freedom that is left moves the next hinge, unless a support stands under it; two can no longer be stopped.
 */
export const looseStretch = ({ atMm, hold, isHinge }: Pieces): number | undefined => {
  const last = atMm.length - 1
  let start = 0
  let freedom = 2
  for (let place = 0; place <= last; place += 1) {
    const isHeld = hold[place] !== free
    if (isHinge[place] === 0) {
      if (isHeld) freedom -= hold[place] === clamped ? 2 : 1
      continue
    }
    if (freedom > 1) return start
    freedom = 1 + (freedom === 1 && !isHeld ? 1 : 0)
    start = place
  }
  return freedom > 0 ? start : undefined
}
