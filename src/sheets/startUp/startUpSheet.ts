import { balance } from '../../evaluate/water/balance'
import { atSaw } from '../../units/precision'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { fillMarks, stopMarks, type StoppedPit } from './fillMarks'
import { farthestFirst, flushTable } from './flushTables'
import { flowTest, setWater } from './flowTest'
import { beforeWater, firstFill, leaks, purge, stopTest } from './testSteps'

const JUDGE = [
  'Mean = sum of all catches over their count. s = root of (sum of (catch − mean)² over (count − 1)). Us = 100 × (1 − s over mean).',
  'Us 90 and over excellent, 80 to 90 good, 70 to 80 fair, under 70 poor. Samples and scale: University of Florida IFAS Extension, AE193 and AE094.',
  'Pass: each zone’s mean within 5 % of the others, each tower within 10 % of its zone’s mean, none under 75 % of what is wanted. What fails: air first, then the trim valve, then the tube.',
]

const signed: Piece = {
  as: 'blanks',
  labels: ['Water temperature', 'Mean, s, Us', 'Pass or fail, why', 'Tested by, date', 'Seen by owner'],
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const { bay } = now
  const pits = bay.built.flatMap((built): readonly StoppedPit[] => {
    const homeL = bay.returns.pits.get(built.part)?.transit.totalL ?? 0
    return built.pit === undefined ? [] : [{ built, pit: built.pit, homeL }]
  })
  const isFed = bay.built.some(({ feed }) => feed !== undefined)
  if (pits.length === 0 && !isFed) return []
  const write = sheetWords(now, units, atSaw)
  const card = balance(bay, 'target')
  const order = farthestFirst(card)
  return [
    ...cautionsFor('start-up', now, units),
    heading('1  Before water'),
    beforeWater,
    heading('2  First fill'),
    firstFill,
    ...pits.map(({ built, pit }) => tableOf(fillMarks(built, pit, write), true)),
    heading('3  Purge and flush'),
    purge,
    ...(order.length === 0 ? [] : [tableOf(flushTable(bay, order, write), true)]),
    heading('4  Leaks'),
    leaks(units),
    heading('5  Stop the pump'),
    stopTest,
    ...(pits.length === 0 ? [] : [tableOf(stopMarks(pits, write))]),
    ...(isFed ? [heading('6  Flow of the towers'), ...flowTest(now, setWater(now, card), write)] : []),
    heading('7  Judge and sign'),
    ...JUDGE.map((text) => words(text)),
    signed,
  ]
}

/** How the bay is filled, tested and signed for: by the pair that starts it up. */
export const startUpSheet: Sheet = {
  id: 'start-up',
  code: 'SU',
  title: 'Start-up sheet',
  reader: 'Commissioning pair',
  size: 'small',
  pieces: piecesOf,
}
