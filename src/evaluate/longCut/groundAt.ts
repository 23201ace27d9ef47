import type { LongCut } from './section'

/** The floor's level at a place of the section, straight between its samples. */
export const groundAt = ({ ground }: LongCut, sMm: number): number => {
  const after = ground.findIndex((one) => one.sMm >= sMm)
  const [a, b] = [ground[Math.max(0, after - 1)], ground[after === -1 ? ground.length - 1 : after]]
  if (!a || !b) return 0
  const span = b.sMm - a.sMm
  return span > 0 ? a.levelMm + (b.levelMm - a.levelMm) * Math.min(1, (sMm - a.sMm) / span) : b.levelMm
}
