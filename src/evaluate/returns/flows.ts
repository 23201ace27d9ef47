import type { Settings } from '../../layout/settings'
import type { Built } from '../../model/built'
import type { FeedFacts } from '../../model/feedFacts'
import { rememberEach } from '../../model/remember'
import type { RowWater, Water } from '../../model/water'

/** What comes out of each trough of a row, L/h. */
export interface LineFlows {
  /** Line 1 first. */
  readonly lines: Float64Array
  readonly totalLph: number
  /** True where no water was solved for the row, so that its flow is what is wanted of each tower. */
  readonly isWanted: boolean
}

/** How many towers drip into each trough of a row, line 1 first; all 0 for a lone trough. */
export const lineTowers = rememberEach<Built, null, Float64Array>(({ trough, mouths }) => {
  const towers = new Float64Array(trough?.lines ?? 0)
  for (const { role, line } of mouths)
    if (role === 'tower-head' && line <= towers.length) towers[line - 1] = (towers[line - 1] ?? 0) + 1
  return towers
})

const summed = (lines: Float64Array, isWanted: boolean): LineFlows => ({
  lines,
  totalLph: lines.reduce((sum, lph) => sum + lph, 0),
  isWanted,
})

/** The line of each tube of a row. */
const linesOfTubes = rememberEach<FeedFacts, null, Uint16Array>(({ tubes }) =>
  Uint16Array.from(tubes, ({ line }) => line),
)

const NO_TUBES = new Uint16Array(0)

const solvedFlows = rememberEach<RowWater, Built, LineFlows>(({ tubeLph }, { feed, trough }) => {
  const lines = new Float64Array(trough?.lines ?? 0)
  const lineOf = feed ? linesOfTubes(feed, null) : NO_TUBES
  for (let tube = 0; tube < lineOf.length; tube += 1) {
    const index = (lineOf[tube] ?? 0) - 1
    if (index < lines.length) lines[index] = (lines[index] ?? 0) + Math.max(0, tubeLph[tube] ?? 0)
  }
  return summed(lines, false)
})

const wantedFlows = rememberEach<Built, number, LineFlows>((built, targetLph) => {
  const towers = lineTowers(built, null)
  const lines = towers.map((count) => count * targetLph)
  return summed(
    lines,
    towers.some((count) => count > 0),
  )
})

/**
 * What the troughs of a row carry at their outlets: what its tubes give, or what is wanted of its towers where no water was
 * solved for it. Remembered while row and water are the same objects.
 */
export const lineFlows = (
  built: Built,
  { rows }: Pick<Water, 'rows'>,
  { targetLph }: Pick<Settings, 'targetLph'>,
): LineFlows => {
  const water = rows.get(built.part)
  return water ? solvedFlows(water, built) : wantedFlows(built, targetLph)
}
