import { onPaper } from '../../drawing/page'
import type { Mark } from '../../model/drawing'
import { lettered, LETTERS, panel } from '../ink'
import type { Drawn, FigurePiece } from '../piece'

/** A tower in the grid of its row: where it hangs, and what a cup should catch under it; null where no water is solved. */
export interface GridTower {
  readonly station: number
  readonly line: number
  readonly expectedMl: number | null
  readonly isSampled: boolean
}

export interface RowGrid {
  readonly name: string
  /** Lines from the row's left, looking from its start to its end. */
  readonly lines: number
  /** In plan order; only those that are printed. */
  readonly stations: readonly number[]
  readonly towers: readonly GridTower[]
}

/** A box that a number is written in by hand, over the one that is expected. */
const BOX = { leastMm: 6.6, mostMm: 9.6, tallMm: 9.6 }
const LEFT_MM = 13
const HEAD_MM = 4.6
const BAND_GAP_MM = 3
const INSET_MM = 0.5

/** Stations beside each other at most on a width of paper. */
const stationsAcross = (widthMm: number): number => Math.max(1, Math.floor((widthMm - LEFT_MM) / BOX.leastMm))

const bandMm = (lines: number): number => HEAD_MM + lines * BOX.tallMm

/** A row on a width of paper: its bands, as even as they can be, and how wide their boxes are. */
interface Laid {
  readonly bands: readonly (readonly number[])[]
  readonly boxMm: number
}

const laidOn = ({ stations }: RowGrid, widthMm: number): Laid => {
  const count = Math.max(1, Math.ceil(stations.length / stationsAcross(widthMm)))
  const across = Math.ceil(stations.length / count)
  const bands = Array.from({ length: count }, (_, band) => stations.slice(band * across, (band + 1) * across))
  return { bands, boxMm: Math.min(BOX.mostMm, (widthMm - LEFT_MM) / Math.max(1, across)) }
}

/** How tall a row's grid is on a width of paper, mm. */
export const gridMm = (grid: RowGrid, widthMm: number): number => {
  const bands = laidOn(grid, widthMm).bands.length
  return bands * bandMm(grid.lines) + Math.max(0, bands - 1) * BAND_GAP_MM
}

const boxMarks = (
  { expectedMl, isSampled }: GridTower,
  boxMm: number,
  left: number,
  top: number,
): readonly Mark[] => {
  const box = { x0: left, y0: top - BOX.tallMm, x1: left + boxMm, y1: top }
  const inner = {
    x0: box.x0 + INSET_MM,
    y0: box.y0 + INSET_MM,
    x1: box.x1 - INSET_MM,
    y1: box.y1 - INSET_MM,
  }
  const middle = (box.x0 + box.x1) / 2
  const small = { x: middle, y: box.y0 + INSET_MM + LETTERS.least / 2 + 0.4 }
  return [
    panel(box, 'dimension', 'none'),
    ...(isSampled ? [panel(box, 'outline', 'none'), panel(inner, 'outline', 'none')] : []),
    ...(expectedMl === null
      ? []
      : [lettered(String(Math.round(expectedMl)), small, LETTERS.least, { anchor: 'middle' })]),
  ]
}

const headMarks = (band: readonly number[], boxMm: number, top: number): readonly Mark[] =>
  band.map((station, i) =>
    lettered(String(station), { x: LEFT_MM + (i + 0.5) * boxMm, y: top - HEAD_MM / 2 }, LETTERS.small, {
      anchor: 'middle',
    }),
  )

const lineMarks = (lines: number, top: number): readonly Mark[] =>
  Array.from({ length: lines }, (_, i) =>
    lettered(`Line ${i + 1}`, { x: 0, y: top - HEAD_MM - (i + 0.5) * BOX.tallMm }, LETTERS.small),
  )

/** One band of a grid: its stations over its lines of boxes; none where a tower is taken out. */
const bandMarks = (
  grid: RowGrid,
  band: readonly number[],
  at: ReadonlyMap<string, GridTower>,
  boxMm: number,
  top: number,
): readonly Mark[] => [
  ...headMarks(band, boxMm, top),
  ...lineMarks(grid.lines, top),
  ...band.flatMap((station, i) =>
    Array.from({ length: grid.lines }, (_, line) => at.get(`${station} ${line + 1}`)).flatMap(
      (tower, line) =>
        tower ? boxMarks(tower, boxMm, LEFT_MM + i * boxMm, top - HEAD_MM - line * BOX.tallMm) : [],
    ),
  ),
]

const drawnGrid = (grid: RowGrid, widthMm: number): Drawn => {
  const heightMm = gridMm(grid, widthMm)
  const at = new Map(grid.towers.map((tower) => [`${tower.station} ${tower.line}`, tower]))
  const { bands, boxMm } = laidOn(grid, widthMm)
  const marks = bands.flatMap((band, i) =>
    bandMarks(grid, band, at, boxMm, heightMm - i * (bandMm(grid.lines) + BAND_GAP_MM)),
  )
  return { heightMm, items: [{ placement: onPaper, marks }], scaleWords: 'not to scale' }
}

/** A page holds no more than this of one row, mm: a longer row goes on in the next figure. */
const MOST_TALL_MM = 125

/** A row in pieces that each fit a page, station after station. */
const partsOf = (grid: RowGrid, widthMm: number): readonly RowGrid[] => {
  const across = stationsAcross(widthMm)
  const bands = Math.max(1, Math.floor((MOST_TALL_MM + BAND_GAP_MM) / (bandMm(grid.lines) + BAND_GAP_MM)))
  const each = bands * across
  return Array.from({ length: Math.ceil(grid.stations.length / each) }, (_, part) => ({
    ...grid,
    stations: grid.stations.slice(part * each, (part + 1) * each),
  }))
}

/** The grid of one row as it hangs, a box a tower. */
export const gridFigures = (grid: RowGrid, caption: string, leastWidthMm: number): readonly FigurePiece[] =>
  partsOf(grid, leastWidthMm).map((part) => ({
    as: 'figure',
    caption: `${grid.name}: ${caption}`,
    draw: ({ widthMm }) => drawnGrid(part, widthMm),
  }))
