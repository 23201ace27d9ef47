import type { Evaluation } from '../../evaluate/evaluation'
import type { ValveCard } from '../../evaluate/water/valveCard'
import { waterOf } from '../../evaluate/water/waterOf'
import type { Words } from '../../checks/context'
import type { Built } from '../../model/built'
import type { Water } from '../../model/water'
import { caughtMl } from '../../units/flow'
import type { Piece } from '../piece'
import { words } from '../piece'
import { gridFigures, gridMm, type RowGrid } from './flowGrid'
import { LEAST_SAMPLE, sampledOf } from './sampled'

/** How long a cup is held under a tube, s. */
export const CATCH_SECONDS = 30

/** The narrowest room that any office paper leaves for a figure, mm: what a row's bands are counted by. */
const LEAST_WIDTH_MM = 160

/** What a page has room for, mm, and how many pages of boxes anybody carries. Common practice, no source. */
const PAGE_MM = 215
const MOST_PAGES = 40
const CAPTION_MM = 12

/** The bay with every trim valve set by its card: what the cups should find. */
export const setWater = ({ bay }: Evaluation, card: ValveCard | undefined): Water =>
  card === undefined
    ? bay.water
    : waterOf(bay, { trimTurns: new Map(card.zones.map(({ part, trimTurns }) => [part, trimTurns])) })

/** A row's boxes, in the order of its stations. */
export const gridOf = ({ part, feed }: Built, water: Water, write: Words): RowGrid => {
  const tubes = feed?.tubes ?? []
  const sampled = sampledOf(tubes)
  const flows = water.rows.get(part)?.tubeLph
  const towers = tubes.map(({ station, line }, i) => ({
    station,
    line,
    expectedMl: flows === undefined ? null : caughtMl(flows[i] ?? 0, CATCH_SECONDS),
    isSampled: sampled.has(i),
  }))
  return {
    name: write.name(part),
    lines: towers.reduce((most, { line }) => Math.max(most, line), 0),
    stations: [...new Set(towers.map(({ station }) => station))].toSorted((a, b) => a - b),
    towers,
  }
}

/** The same with only the towers that must be caught. */
const onlySampled = (grid: RowGrid): RowGrid => {
  const towers = grid.towers.filter(({ isSampled }) => isSampled)
  const kept = new Set(towers.map(({ station }) => station))
  return { ...grid, towers, stations: grid.stations.filter((station) => kept.has(station)) }
}

const pagesFor = (grids: readonly RowGrid[]): number =>
  grids.reduce((sum, grid) => sum + gridMm(grid, LEAST_WIDTH_MM) + CAPTION_MM, 0) / PAGE_MM

const captionOf = (part: Built, water: Water): string => {
  const figures = water.rows.get(part.part)?.figures
  if (figures === undefined) return 'no water is solved for it, so that nothing is expected yet'
  const mean = Math.round(caughtMl(figures.meanLph, CATCH_SECONDS))
  return `mean ${mean} mL expected; write what was caught over it`
}

const HOW = [
  `Hold a cup under each tube end for ${CATCH_SECONDS} s and write the mL in its box. The small number is what this plan expects there.`,
  `First time all towers; later at least the ${LEAST_SAMPLE} with a heavy box in each row.`,
].join(' ')

const ONLY_SAMPLED = `Only the ${LEAST_SAMPLE} towers of each row that must be caught have a box here: a box for every tower of this bay would take more than ${MOST_PAGES} pages.`

/** The flow test: a grid for each row, shaped like it. */
export const flowTest = ({ bay }: Evaluation, water: Water, write: Words): readonly Piece[] => {
  const rows = bay.built.filter(({ feed }) => (feed?.tubes.length ?? 0) > 0)
  const grids = rows.map((row) => gridOf(row, water, write))
  const isTooLong = pagesFor(grids) > MOST_PAGES
  return [
    words(HOW),
    ...(isTooLong ? [words(ONLY_SAMPLED)] : []),
    ...rows.flatMap((row, i) => {
      const grid = grids[i]
      if (grid === undefined) return []
      return gridFigures(isTooLong ? onlySampled(grid) : grid, captionOf(row, water), LEAST_WIDTH_MM)
    }),
  ]
}
