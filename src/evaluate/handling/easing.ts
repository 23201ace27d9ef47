import { STEP_MM } from '../../catalogue/stature'
import { assumed } from './assumed'
import type { LineLift, RowHandling } from './handling'
import { type Lifted, liftedOf } from './lifted'

/** What could be done otherwise at one lift. */
export interface Easing {
  readonly key: 'other-side' | 'step' | 'grip' | 'straight' | 'near'
  readonly lifted: Lifted
}

const liftedWith = (from: LineLift, change: Partial<LineLift['lift']>): Lifted =>
  liftedOf({ ...from.lift, ...change }, from.loadKg)

/** The same line from the side that is shut. */
const otherSide = ({ lines }: RowHandling, from: LineLift): Easing[] =>
  lines
    .filter(({ line, isOpen }) => line === from.line && !isOpen)
    .map((lifted) => ({ key: 'other-side', lifted }))

/**
 * What would ease the lift, the most first; only what does. On a step the hands are lower over the feet, and the way up from a cart
 * stays as it is.
 */
export const easingsOf = (row: RowHandling, from: LineLift): readonly Easing[] => {
  const { handsMm, reachMm, twistDeg } = from.lift
  const all: readonly Easing[] = [
    ...otherSide(row, from),
    { key: 'step', lifted: liftedWith(from, { handsMm: Math.max(0, handsMm - STEP_MM) }) },
    { key: 'grip', lifted: liftedWith(from, { grip: 'good' }) },
    ...(twistDeg > 0 ? [{ key: 'straight', lifted: liftedWith(from, { twistDeg: 0 }) } as const] : []),
    ...(reachMm > assumed.nearestMm
      ? [{ key: 'near', lifted: liftedWith(from, { reachMm: assumed.nearestMm }) } as const]
      : []),
  ]
  return all
    .filter(({ lifted }) => lifted.index < from.index)
    .toSorted((a, b) => a.lifted.index - b.lifted.index)
}
