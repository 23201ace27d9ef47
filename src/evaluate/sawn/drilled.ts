import type { HoleAt } from '../../layout/bench'
import { inches, onTick, toTicks } from '../../units/length'

/** A hole may stand so far from its height. Common practice, no source. */
const HOLE_TICKS = toTicks(inches(1 / 32))

/**
 * What became of the holes of a cut piece, if it is drilled already: its members have none; they stand where they stood; they moved;
 * or nobody noted where they were.
 */
export type Drilled = 'no-holes' | 'same' | 'moved' | 'unknown'

const isNear = (a: HoleAt, b: HoleAt, shiftTicks: number): boolean =>
  Math.abs(toTicks(a.centreMm) - shiftTicks - toTicks(b.centreMm)) <= HOLE_TICKS

/** The holes of members that both lists have. */
const ofMarksIn = (holes: readonly HoleAt[], others: readonly HoleAt[]): readonly HoleAt[] =>
  holes.filter(({ mark }) => others.some((other) => other.mark === mark))

/** Every hole, so much lower, is one that a member of the same mark has. */
const areAmong = (holes: readonly HoleAt[], now: readonly HoleAt[], shiftTicks: number): boolean =>
  holes.length > 0 &&
  holes.every((hole) => now.some((to) => to.mark === hole.mark && isNear(hole, to, shiftTicks)))

/**
 * Where members of one mark have their holes at several heights, pieces that were noted with fewer of them count as moved: some of
 * them belong where nobody has drilled yet.
 */
export const drilledAs = (noted: readonly HoleAt[] | undefined, now: readonly HoleAt[]): Drilled => {
  if (now.length === 0) return 'no-holes'
  if (!noted || noted.length === 0) return 'unknown'
  const [before, after] = [ofMarksIn(noted, now), ofMarksIn(now, noted)]
  return areAmong(before, after, 0) && areAmong(after, before, 0) ? 'same' : 'moved'
}

/**
 * How much has to come off the foot of a drilled piece so that its holes stand right, mm; undefined where they stand right as they
 * are, or no such cut of at most `offMm` brings them there.
 */
export const offFoot = (
  noted: readonly HoleAt[] | undefined,
  now: readonly HoleAt[],
  offMm: number,
): number | undefined => {
  const shifts = (noted ?? []).flatMap((hole) =>
    now.filter(({ mark }) => mark === hole.mark).map(({ centreMm }) => onTick(hole.centreMm - centreMm)),
  )
  return shifts.find(
    (shiftMm) =>
      toTicks(shiftMm) > HOLE_TICKS &&
      toTicks(shiftMm) <= toTicks(offMm) &&
      areAmong(ofMarksIn(noted ?? [], now), now, toTicks(shiftMm)),
  )
}
