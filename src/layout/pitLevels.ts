import type { PartId } from '../model/ids'
import { PIT_RUNGS, type PitFacts, type PitLevel, type PitRung } from '../model/pitFacts'
import type { PitAsks } from '../model/workingLevels'
import { pitFactsOf } from '../parts/sump/pitFacts'
import { raisedPit, sizedPit } from '../parts/sump/pitFor'
import type { Sump } from '../parts/sump/schema'
import { LONGEST_MM, onTick } from '../units/length'
import { replacePart } from './edits'
import type { Layout } from './schema'

/** How far a level of a pit can go before it meets its neighbours, mm from the benchmark's zero. */
export interface LevelRange {
  readonly lowestMm: number
  readonly highestMm: number
  /** What it meets there; undefined for the rim upward and the bottom downward. */
  readonly below: PitLevel | undefined
  readonly above: PitLevel | undefined
}

/** A pit with its levels changed: how far they went, and which level stopped them short of where they were wanted. */
export interface PitMoved {
  readonly pit: Sump
  readonly byMm: number
  readonly stoppedBy: PitLevel | undefined
}

/** An intake left to the program goes with the bottom: it stops nothing that moves the bottom, and its neighbour does. */
const isBound = (pit: Sump, level: PitLevel, rung: PitRung): boolean =>
  !(pit.intakeMm === null && level === 'bottomMm' && rung.level === 'intakeMm')

/** How high a level goes under the rung over it; a bottom keeps its intake's height under the pump-off level. */
const underRung = (
  pit: Sump,
  facts: PitFacts,
  level: PitLevel,
  { level: above, nextUnderMm }: PitRung,
): number => {
  const carriedMm = level === 'bottomMm' && pit.intakeMm === null ? facts.intakeMm - facts.bottomMm : 0
  return facts[above] - nextUnderMm - carriedMm
}

/** Where a level of a pit can go while the order of levels is kept. Empty (lowest over highest) where its neighbours leave no room. */
export const rangeOf = (pit: Sump, level: PitLevel): LevelRange => {
  const facts = pitFactsOf(pit)
  const index = PIT_RUNGS.findIndex((rung) => rung.level === level)
  const above = PIT_RUNGS.slice(0, index).findLast((rung) => isBound(pit, level, rung))
  const below = PIT_RUNGS[index + 1]
  return {
    lowestMm: below ? facts[below.level] + (PIT_RUNGS[index]?.nextUnderMm ?? 0) : -LONGEST_MM,
    highestMm: above ? underRung(pit, facts, level, above) : LONGEST_MM,
    below: below?.level,
    above: above?.level,
  }
}

/** The pit with one level at a height, or as near to it as its neighbours allow; as it was where they leave no room at all. */
export const setPitLevel = (pit: Sump, level: PitLevel, toMm: number): PitMoved => {
  const { lowestMm, highestMm, below, above } = rangeOf(pit, level)
  const isTooHigh = toMm > highestMm
  const stoppedBy = isTooHigh ? above : toMm < lowestMm ? below : undefined
  if (lowestMm > highestMm) return { pit, byMm: 0, stoppedBy: isTooHigh ? above : below }
  const atMm = onTick(Math.min(Math.max(toMm, lowestMm), highestMm))
  const byMm = atMm - pitFactsOf(pit)[level]
  return { pit: byMm === 0 ? pit : { ...pit, [level]: atMm }, byMm, stoppedBy }
}

/** The pit with all its levels but the rim moved together: up no further than its overflow under the rim, down as far as asked. */
export const raisePitLevels = (pit: Sump, byMm: number): PitMoved => {
  const roomMm = Math.max(0, pit.rimMm - pit.overflowMm)
  const isStopped = byMm > roomMm
  const goneMm = onTick(Math.min(byMm, roomMm))
  return {
    pit: goneMm === 0 ? pit : raisedPit(pit, goneMm),
    byMm: goneMm,
    stoppedBy: isStopped ? 'rimMm' : undefined,
  }
}

const withPit = (layout: Layout, id: PartId, change: (pit: Sump) => Sump): Layout => {
  const pit = layout.parts.find((part) => part.id === id)
  return pit?.kind === 'sump' ? replacePart(layout, change(pit)) : layout
}

/** One level of a pit set, as `setPitLevel` has it; the same layout for what is no pit. */
export const levelPit = (layout: Layout, id: PartId, level: PitLevel, toMm: number): Layout =>
  withPit(layout, id, (pit) => setPitLevel(pit, level, toMm).pit)

/** All levels of a pit but its rim moved together, as `raisePitLevels` has it; the same layout for what is no pit. */
export const raisePit = (layout: Layout, id: PartId, byMm: number): Layout =>
  withPit(layout, id, (pit) => raisePitLevels(pit, byMm).pit)

/** A pit with its levels from the inlet down, as its water asks; the same layout where no depth of it would hold that. */
export const sizePit = (layout: Layout, id: PartId, asks: PitAsks): Layout =>
  withPit(layout, id, (pit) => ({ ...pit, ...sizedPit(pit, asks) }))
