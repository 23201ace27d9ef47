import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import type { DrainFacts } from '../../model/drainFacts'
import type { DrainRun } from '../../model/levels'
import { inches, type Units } from '../../units/length'
import { BASELINE, fromWalls } from '../baseline'

export const CUT_WORDS =
  'CUT: straight down from the peg’s top to the bottom of the trench, sand bed included. Nothing is left to subtract.'

export const UP_WORDS =
  'This line lies over the floor: nothing is dug. UP: from the peg’s top up to the underside of the pipe.'

/** False for a line that lies over the floor all the way. */
export const isDug = ({ pegs }: DrainRun): boolean => pegs.some(({ digMm }) => digMm > 0)

/** Pegs stand this far clear of the dig, so that none is lost with the first bucket. Common practice, no source. */
const CLEAR_OF_DIG_MM = inches(24)

/** From the line of a drain across to the line of its pegs, mm. */
export const pegOffsetMm = ({ trenchMm }: DrainFacts): number => trenchMm / 2 + CLEAR_OF_DIG_MM

/** A peg and the next one on a line that runs along a wall differ by no more across it, mm. */
const STRAIGHT_MM = 1

/** How far a line lies from the wall that it runs along; undefined for one that runs aslant or bends. */
const asideOf = ({ pegs }: DrainRun, { bay }: Evaluation): { wall: string; mm: number } | undefined => {
  const places = pegs.map(({ at }) => fromWalls(bay.house, at))
  const [first] = places
  if (!first) return undefined
  if (places.every(({ southMm }) => Math.abs(southMm - first.southMm) < STRAIGHT_MM))
    return { wall: 'south', mm: first.southMm }
  if (places.every(({ westMm }) => Math.abs(westMm - first.westMm) < STRAIGHT_MM))
    return { wall: 'west', mm: first.westMm }
  return undefined
}

/** Where the line lies across and where its pegs are knocked in. */
export const pegLineWords = (run: DrainRun, facts: DrainFacts, plan: Evaluation, write: Words): string => {
  const aside = asideOf(run, plan)
  const line = aside
    ? `The middle of the line lies ${write.length(aside.mm)} from the inside of the ${aside.wall} wall.`
    : `Places of the middle of the line are read from ${BASELINE}.`
  return (
    `${line} Pegs stand ${write.onTape(pegOffsetMm(facts))} across from it, all on one side: ` +
    `${write.onTape(CLEAR_OF_DIG_MM)} clear of the dig.`
  )
}

/** What lies under the pipe and how each stick of it is checked: over a rod of `length`, so much of a block. */
export const bedWords = ({ bedMm, slopeMmPerM }: DrainRun, { onTape, fall }: Words): string =>
  `${bedMm > 0 ? `Bed: ${onTape(bedMm)} of sand, raked to the fall of ${fall(slopeMmPerM)}. ` : ''}` +
  'Bells uphill, each in a hole of its own in the bed. Dry fit all, fill with water and look at every joint before backfill; take a photo with the tape in it.'

/** Knocked in to read a peg top to a sixteenth. Common practice, no source. */
export const toolWords = (units: Units): string =>
  `Tools: pegs and mallet, line, tape, laser or water level with rod, spade, ${units === 'metric' ? '1200 mm' : '4 ft'} level, marker, hole saw for the holes above.`
