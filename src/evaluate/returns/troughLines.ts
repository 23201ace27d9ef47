import { gutterOf } from '../../catalogue/gutter'
import { distance } from '../../geometry/point'
import type { Built } from '../../model/built'
import { gutterEnds } from '../../model/gutterEnds'
import { datumAt, type Levels } from '../../model/levels'
import { rememberEach } from '../../model/remember'
import type { TroughFacts } from '../../model/troughFacts'
import type { Channel } from '../../solvers/gravity/profile'
import { MM_PER_M } from '../../units/length'

/** One trough of a row, or a lone one, with the towers that drip into it. */
export interface TroughLine {
  /** 1-based. */
  readonly line: number
  /** Which of the row's towers, in the order of its `tower-head` mouths. */
  readonly towers: readonly number[]
  /** Where they drip, from the high end, ascending, mm. */
  readonly dripsMm: readonly number[]
}

interface Tower {
  readonly index: number
  readonly atMm: number
}

const lineOf = (line: number, towers: readonly Tower[]): TroughLine => {
  const fromHigh = towers.toSorted((a, b) => a.atMm - b.atMm)
  return { line, towers: fromHigh.map(({ index }) => index), dripsMm: fromHigh.map(({ atMm }) => atMm) }
}

/** The lines of a row's troughs, in order; a line without towers is one of them. */
export const troughLines = rememberEach<Built, TroughFacts, readonly TroughLine[]>(
  ({ mouths }, { lines, stationFromHighMm }) => {
    const towers = Array.from({ length: lines }, (): Tower[] => [])
    let index = 0
    for (const { role, line, station } of mouths) {
      if (role !== 'tower-head') continue
      towers[line - 1]?.push({ index, atMm: stationFromHighMm[station - 1] ?? 0 })
      index += 1
    }
    return towers.map((each, i) => lineOf(i + 1, each))
  },
)

/** Fall of a part's troughs on the site, mm per m: their own, and the floor's where a row's rails are on grade. */
export const fallOnSite = (built: Built, levels: Levels): number => {
  const { rack, trough, part } = built
  const ownMmPerM = trough?.fallMmPerM ?? 0
  if (!rack || !levels.grades.has(part)) return ownMmPerM
  const { high, low } = gutterEnds(built, rack)
  const dropMm = datumAt(levels, part, high) - datumAt(levels, part, low)
  return ownMmPerM + (dropMm / distance(high, low)) * MM_PER_M
}

/** A trough as what water runs in, at its fall on the site and a roughness. */
export const channelOf = (facts: TroughFacts, fallMmPerM: number, n: number): Channel => {
  const { bottomMm, topMm, depthMm } = gutterOf(facts.gutter)
  return {
    section: { shape: 'trapezoid', bottomMm, topMm, heightMm: depthMm },
    slopeMmPerM: fallMmPerM,
    runMm: facts.runMm,
    outletFromHighMm: facts.outletFromHighMm,
    boreMm: facts.outletBoreMm,
    n,
  }
}
