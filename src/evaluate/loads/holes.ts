import { DURATION } from '../../catalogue/timberFactors'
import { forceOf, lengthOf, ratioOf, shareOf, stressOf, term } from '../../checks/found'
import type { Screen } from '../../model/strength'
import { bearingAlongMpa, DOWEL_CLEAR, DOWEL_MOST_MM, dowelN, endFactor } from '../../solvers/timber/dowel'
import { inches } from '../../units/length'
import { type Frame, type FrameStick, sticksOf } from './frame'
import type { Riser } from './risersBuilt'
import { riserScreen, type Wood } from './risersScreen'

/** Wet service of dowels: what water leaves of them. Source: NDS Table 11.3.3, from memory. */
const WET_DOWEL = 0.7

/**
 * A bored hole in a stud takes at most this of its width, this where the stud is doubled, and leaves so much wood at its sides.
 * Source: IRC R602.6.
 */
const BORED_SHARE = 0.4
const BORED_DOUBLED = 0.6
const BORED_LEAVES_MM = inches(5 / 8)

const covers = ({ from, to }: FrameStick, { u }: Riser['at'], alongMm: number): boolean =>
  Math.min(from.u, to.u) < u + alongMm / 2 && Math.max(from.u, to.u) > u - alongMm / 2

/** Diameter of what lies in a riser's hole, mm: the biggest conduit that passes through it; the hole's own where none is drawn. */
export const conduitIn = (frame: Frame, riser: Riser): number => {
  const ods = sticksOf(frame, 'RL', 'RL-b', 'SV')
    .filter((laid) => Math.sign(laid.from.v) === Math.sign(riser.at.v))
    .filter((laid) => covers(laid, riser.at, riser.alongMm))
    .map(({ stick }) => stick.heightMm)
  return ods.length > 0 ? Math.max(...ods) : riser.hole.diameterMm
}

/** The wood that is left beside the hole bears what the rail hands down. */
export const netScreen = (riser: Riser, { values }: Wood): Screen => {
  const netMm = riser.acrossMm - riser.boredMm
  const stressMpa = riser.carriesN / (netMm * riser.alongMm)
  const allowedMpa = values.alongMpa * DURATION.permanent
  return riserScreen('hole-net', riser, {
    used: netMm > 0 ? stressMpa / allowedMpa : Infinity,
    measured: stressOf(stressMpa),
    limit: stressOf(allowedMpa),
    terms: [
      term('The rail hands down at most', forceOf(riser.carriesN)),
      term('Hole', lengthOf(riser.boredMm)),
      term('Board left beside it', lengthOf(netMm)),
      term('Share of the board left', shareOf(netMm / riser.acrossMm)),
      term('Stress in it', stressOf(stressMpa)),
      term('Fc*, what the wood bears along the grain', stressOf(allowedMpa)),
    ],
  })
}

/** What a hole asks from its middle to the edge, mm: at the very least in a doubled stud, and in a plain one under a dowel. */
const edgeAsks = ({ diameterMm }: Riser['hole'], conduitMm: number) => {
  const sideMm = BORED_LEAVES_MM + diameterMm / 2
  return {
    leastMm: Math.max(sideMm, diameterMm / BORED_DOUBLED / 2),
    needMm: Math.max(sideMm, diameterMm / BORED_SHARE / 2, DOWEL_CLEAR.edge * conduitMm),
  }
}

/**
 * Holes stand in the middle of the face that they are drilled through, but where rails lap. A hole too wide for a plain stud is for
 * a doubled one or for a proof load to try; what no stud may have is refused, and so is one through the narrow face, beside
 * which nothing is left to hold.
 */
export const edgeScreen = (riser: Riser, conduitMm: number): Screen => {
  const { acrossMm, alongMm, hole } = riser
  const edgeMm = acrossMm / 2 - Math.abs(hole.asideMm ?? 0)
  const { leastMm, needMm } = edgeAsks(hole, conduitMm)
  const isRefused = acrossMm < alongMm || leastMm > edgeMm
  const screen = riserScreen('hole-edge', riser, {
    used: isRefused ? Infinity : needMm / edgeMm,
    measured: lengthOf(edgeMm),
    limit: lengthOf(needMm),
    terms: [
      term('Face that it goes through', lengthOf(acrossMm)),
      term('Hole', lengthOf(hole.diameterMm)),
      term('Middle of the hole to the edge', lengthOf(edgeMm)),
      term('1.5 x the conduit', lengthOf(DOWEL_CLEAR.edge * conduitMm)),
      term('Wood left each side', lengthOf(edgeMm - hole.diameterMm / 2)),
      term('Bored share of the face', shareOf(hole.diameterMm / acrossMm)),
    ],
  })
  return isRefused ? screen : tryable(screen)
}

/** What is over a limit that a proof load can try is not refused. */
const tryable = (screen: Screen): Screen =>
  screen.state === 'Too long' ? { ...screen, state: 'Proof-load' } : screen

const endMmOf = ({ lengthMm, hole }: Riser): number => lengthMm - hole.centreMm

/** From the hole to the riser's top, away from which the rail presses. */
export const endScreen = (riser: Riser, conduitMm: number): Screen => {
  const endMm = endMmOf(riser)
  const leastMm = DOWEL_CLEAR.endLeast * conduitMm
  const screen = riserScreen('hole-end', riser, {
    used: endMm > 0 ? leastMm / endMm : Infinity,
    measured: lengthOf(endMm),
    limit: lengthOf(leastMm),
    terms: [
      term('Conduit', lengthOf(conduitMm)),
      term('2 x the conduit, the least', lengthOf(leastMm)),
      term('4 x the conduit, for all of its value', lengthOf(DOWEL_CLEAR.endFull * conduitMm)),
      term('Middle of the hole to the top', lengthOf(endMm)),
      term('Share of its value', shareOf(endFactor(endMm, conduitMm))),
    ],
  })
  // The rules are of dowels of 1 in and less: for a bigger conduit they only hint.
  return conduitMm > DOWEL_MOST_MM && endMm > conduitMm ? tryable(screen) : screen
}

/** Conduit presses on the bottom of its hole; indicative only, for the rules are of solid dowels of 1 in and less. */
export const bearingScreen = (riser: Riser, conduitMm: number, { timber, isWet }: Wood): Screen => {
  const strengthMpa = bearingAlongMpa(timber.gravity)
  const fullN = dowelN(conduitMm, riser.alongMm, strengthMpa)
  const wet = isWet ? WET_DOWEL : 1
  const end = endFactor(endMmOf(riser), conduitMm)
  const bearsN = fullN * wet * end * DURATION.permanent
  return riserScreen('hole-bearing', riser, {
    used: bearsN > 0 ? riser.carriesN / bearsN : Infinity,
    measured: forceOf(riser.carriesN),
    limit: forceOf(bearsN),
    terms: [
      term('Conduit', lengthOf(conduitMm)),
      term('Board that it lies on', lengthOf(riser.alongMm)),
      term('Fe, what the wood bears under a dowel', stressOf(strengthMpa)),
      term('Dowel, D x l x Fe / 4', forceOf(fullN)),
      term('Wet service', ratioOf(wet)),
      term('End distance leaves', ratioOf(end)),
      term('Permanent load', ratioOf(DURATION.permanent)),
      term('Bears', forceOf(bearsN)),
    ],
  })
}
