import { papers } from '../../drawing/paper'
import type { Units } from '../../units/length'
import { atDrill } from '../../units/precision'
import type { Writer } from '../../units/writer'
import { forReader } from '../hazard'
import { cautionsFor } from '../hazards'
import { sizesOn } from '../letterSizes'
import { heading, type Piece, type StepsPiece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { bottomOf, type DrilledKind, drilledKinds } from './drilledKinds'
import { hasOffHoles, holeTable, memberTable } from './drillTables'
import { cutAlreadyWords, kindMark, twoHeightsWords } from './drillWords'
import { tileFigure } from './stripFigure'
import { stripOf, type Tile, tilesToPrint } from './stripTiles'

const FOOT =
  'Every height is from the foot: the square-cut end, painted. Never from the top: so a board that is a little long or short changes nothing.'

const FACE = 'Drill through the wide face, in the middle of it and square to it.'
const OFF_FACE =
  'Drill through the wide face and square to it, off its middle by the table; where two holes lie side by side they run into one. Turned round, a left riser is a right one.'

const stepsFor = (units: Units, face: string): StepsPiece => ({
  as: 'steps',
  steps: [
    { key: 'caliper', text: 'Measure one stick of each conduit with a caliper before the first hole.' },
    {
      key: 'stick',
      text: 'Make a drill stick of each mark: a straight board with a square foot, marked from the table or by the strip.',
    },
    {
      key: 'stop',
      text: 'Set a foot stop and a fence at the drill by the drill stick. Every piece goes foot against the stop: no tape.',
    },
    {
      key: 'face',
      text: `${face} A hole stands within ${forReader(units, '1/32"', '1 mm')} of its height.`,
    },
    {
      key: 'check',
      text: 'Hold the first piece and every tenth against the drill stick, hole bottom on its tick.',
    },
  ],
})

/** The widest tile that a paper takes, mm. */
const tileWidth = ({ paper, orientation }: SheetOptions): number => {
  const { shortMm, longMm } = papers[paper]
  const { marginMm, insetMm } = sizesOn(paper)
  return (orientation === 'landscape' ? longMm : shortMm) - 2 * (marginMm + insetMm)
}

/** How to get from one printed tile to the next where those between are bare wood. */
const skipWords = (mark: string, tiles: readonly Tile[], { onTape }: Writer): readonly string[] =>
  tiles.slice(1).flatMap((tile, index) => {
    const before = tiles[index]
    return before && tile.number > before.number + 1
      ? [
          `Strip of ${mark}: between tiles ${before.number} and ${tile.number} skip ${onTape(tile.fromMm - before.toMm)} of bare wood; by the tape, tile ${tile.number} begins ${onTape(tile.fromMm)} from the foot.`,
        ]
      : []
  })

/** What is said of a strip, and its tiles. */
interface StripOnPaper {
  readonly skips: readonly string[]
  readonly figures: readonly Piece[]
}

const stripOnPaper = (kind: DrilledKind, options: SheetOptions, write: Writer): StripOnPaper => {
  const { units } = options
  const holes = kind.holes.map((hole) => ({ fromMm: bottomOf(hole), toMm: bottomOf(hole) + hole.diameterMm }))
  const largestMm = Math.max(0, ...kind.holes.map(({ diameterMm }) => diameterMm))
  const strip = stripOf(kind.lengthMm, { widthMm: tileWidth(options), largestMm, units })
  const tiles = tilesToPrint(strip, holes)
  const printed = new Set(tiles.map(({ number }) => number))
  return {
    skips: skipWords(kindMark(kind), tiles, write),
    figures: tiles.map((tile) => tileFigure({ kind, strip, tile, printed, units, write })),
  }
}

const STRIPS =
  'Print at 100 %, not fitted to the page, and measure the bar at the foot of every page before you use it. Cut out along the edges. The foot of the strip goes flush with the foot of the piece; where there are letters, like lies on like.'

const stripPieces = (
  kinds: readonly DrilledKind[],
  options: SheetOptions,
  write: Writer,
): readonly Piece[] => {
  const strips = kinds.map((kind) => stripOnPaper(kind, options, write))
  return [
    heading('Strips at full size, on the next pages'),
    words(STRIPS),
    ...strips.flatMap(({ skips }) => skips.map((text) => words(text))),
    { as: 'page' },
    ...strips.flatMap(({ figures }) => figures),
  ]
}

const piecesOf = (plan: PlanOnPaper, options: SheetOptions): readonly Piece[] => {
  const { units } = options
  const kinds = drilledKinds(plan.now)
  if (kinds.length === 0) return []
  const write = sheetWords(plan.now, units, atDrill)
  return [
    words(FOOT, 'big'),
    heading('Holes'),
    tableOf(holeTable(kinds, write), true),
    ...[...twoHeightsWords(plan.now, write), ...cutAlreadyWords(plan.now, units)].map((text) => words(text)),
    ...cautionsFor('drill-stick', plan.now, units),
    stepsFor(units, hasOffHoles(kinds) ? OFF_FACE : FACE),
    heading('Pieces'),
    tableOf(memberTable(kinds, write)),
    ...stripPieces(kinds, options, write),
  ]
}

/** Where the holes of each kind of member are, from its foot, in a table and as strips at full size. */
export const drillStick: Sheet = {
  id: 'drill-stick',
  code: 'DS',
  title: 'Drill stick',
  reader: 'Drill hand',
  size: 'small',
  pieces: piecesOf,
}
