import type { House } from '../../layout/house'
import type { Settings } from '../../layout/settings'
import { inches } from '../../units/length'
import { BASELINE, fromWalls } from '../baseline'
import type { StepsPiece } from '../piece'
import type { Pegging } from './rowTables'

/** Round a bay and back to the benchmark no more is let pass. Common practice, no source. */
const CLOSES_WITHIN_MM = inches(1 / 8)

/** Two diagonals of a row may differ by so much. Common practice, no source. */
const SQUARE_WITHIN_MM = inches(1 / 4)

/** A house is square to so much in 50 ft. Common practice, no source. */
const HOUSE_WITHIN_MM = inches(1 / 2)

export const baselineWords = (): string =>
  `All running dimensions are read from ${BASELINE}: hook the tape there once, pull it tight, and mark every reading ` +
  'without moving it. Stretch a string along either wall first; measure from the string, never from the wall itself.'

/** Whether levels on the papers are counted from the benchmark, in words. */
const countedWords = (
  { benchmark }: House,
  { levelsFrom }: Pick<Settings, 'levelsFrom'>,
  { write }: Pegging,
): string =>
  levelsFrom === 'benchmark'
    ? `Levels on the papers are counted so that it reads ${write.plainLevel(benchmark.valueMm)}.`
    : `Levels on the papers are counted from the bay’s zero: there it reads ${write.level(benchmark.levelMm)}.`

/** The benchmark: what it is, where it stands, what it reads. */
export const benchmarkWords = (settings: Pick<Settings, 'levelsFrom'>, pegging: Pegging): string => {
  const { house, write } = pegging
  const { name, at, valueMm } = house.benchmark
  const { westMm, southMm } = fromWalls(house, at)
  return (
    `Benchmark: ${name}, called ${write.plainLevel(valueMm)}. It stands ${write.length(westMm)} from the west wall and ` +
    `${write.length(southMm)} from the south wall. ${countedWords(house, settings, pegging)} ` +
    `Close every round of levels on it: over ${write.onTape(CLOSES_WITHIN_MM)} out, shoot again. There is no second one.`
  )
}

interface Given {
  readonly hasRows: boolean
  readonly hasDigs: boolean
}

/** The order of the work. */
export const orderOfWork = ({ hasRows, hasDigs }: Given, { write }: Pegging): StepsPiece => ({
  as: 'steps',
  steps: [
    {
      key: 'baseline',
      text: `Stretch the two strings and check the house: 3-4-5 in its corners, then its diagonals, within ${write.onTape(HOUSE_WITHIN_MM)}. Out by more: stop and ask before anything is marked.`,
    },
    { key: 'benchmark', text: 'Find the benchmark, mark it, and read it before and after each round.' },
    ...(hasRows
      ? [
          {
            key: 'corners',
            text: `Mark A, B, C and D of each row. Read both diagonals: they differ by no more than ${write.onTape(SQUARE_WITHIN_MM)}.`,
          },
          { key: 'feet', text: 'Snap the chalk lines under the feet and mark every pair along them.' },
        ]
      : []),
    ...(hasDigs
      ? [
          {
            key: 'digs',
            text: 'Mark drains and pits. The peg table says how deep; pegs stand clear of the dig.',
          },
        ]
      : []),
    { key: 'clear', text: 'Walk what must be kept clear, with a door open and the cart in hand.' },
  ],
})
