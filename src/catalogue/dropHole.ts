import { inches } from '../units/length'

/**
 * The hole for a drop tube of 2 in (outside 2.375 in), which hangs loose in it and is lifted out to be cleaned: a
 * 2-1/2 in saw. Common practice, no source.
 */
const DROP_HOLE_MM = inches(2.5)

/** A line thinner than this is too narrow for that tube: the outlet's own tail hangs in a hole with this much slack. */
const THIN_MM = inches(3)
const SLACK_MM = inches(3 / 8)

/** A hole wider than this share of the pipe leaves no crown to hold its shape: a tee is set instead. Common practice, no source. */
const WIDEST_SHARE = 0.65

/** The hole in the crown of a drain for a trough outlet of a bore, mm; 0 where a tee is wanted instead. */
export const dropHole = (outletBoreMm: number, pipeOdMm: number): number => {
  if (pipeOdMm >= THIN_MM) return DROP_HOLE_MM
  const holeMm = outletBoreMm + SLACK_MM
  return holeMm <= pipeOdMm * WIDEST_SHARE ? holeMm : 0
}
