import { shimStack } from '../../catalogue/shims'
import type { Judged } from '../../evaluate/evaluation'
import { sawBenchOf } from '../../evaluate/sawn/sawBench'
import type { CutOfStock } from '../../evaluate/sawn/whatsCut'
import type { CutList } from '../../model/cutList'
import { fromTicks, type Units } from '../../units/length'
import { writerFor } from '../../units/writer'
import { besideWords, boughtWords, standingWords } from '../cutWords'
import { cautionsFor } from '../hazards'
import { heading, lead, type Piece, tableOf, words } from '../piece'
import { misfitWords } from '../sawnWords'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { boardTable } from './boardTable'
import type { OffcutUses } from './offcuts'
import { sharedWords, workWords } from './sawWords'
import { sawOrder } from './sawOrder'
import { sharedStops } from './sharedStops'
import { stopTable } from './stopTable'

const usesOf = ({ bay: { levels } }: Judged): OffcutUses => ({
  pegs: [...levels.drains.values()].reduce((sum, drain) => sum + drain.pegs.length, 0),
  shimmedFeet: [...levels.feet.values()].flat().filter(({ shimMm }) => shimStack(shimMm).length > 0).length,
})

const sawWords = ({ problem: { saw } }: CutList, units: Units): readonly string[] => {
  const { onTape } = writerFor(units).exact()
  return [
    ...(saw.kerfTicks > 0 ? [`The saw takes ${onTape(fromTicks(saw.kerfTicks))} a cut.`] : []),
    ...(saw.trimTicks > 0 ? [`Square the first end: ${onTape(fromTicks(saw.trimTicks))} off.`] : []),
  ]
}

const materialPieces = (list: CutList, cut: CutOfStock, uses: OffcutUses, units: Units): readonly Piece[] => {
  const order = sawOrder(list)
  const bought = boughtWords(list, units)
  return [
    heading(list.title),
    ...(bought === '' ? [] : [lead(`Fetch ${bought}`, 'big')]),
    ...besideWords(list, units).map((text) => lead(text)),
    ...misfitWords(cut, units).map((text) => words(text)),
    lead([workWords(order, list.stock), ...sawWords(list, units), standingWords(list)].join(' '), 'note'),
    ...sharedStops(list.problem.pieces).map((shared) => words(sharedWords(shared, units), 'note')),
    tableOf(stopTable(list, cut, units)),
    ...(order.boards.length === 0 ? [] : [tableOf(boardTable(list, { cut, uses }, units), true)]),
  ]
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const bench = sawBenchOf(now)
  const uses = usesOf(now)
  const materials = now.cuts.flatMap((list) => {
    const cut = bench.cut.find(({ stock }) => stock === list.stock)
    return cut ? materialPieces(list, cut, uses, units) : []
  })
  return materials.length === 0 ? [] : [...cautionsFor('saw-list', now, units), ...materials]
}

/** Every piece that is cut, material by material: its stop, and the boards in the order of the saw. */
export const sawList: Sheet = {
  id: 'saw-list',
  code: 'SL',
  title: 'Saw list',
  reader: 'Saw hand',
  size: 'small',
  pieces: piecesOf,
}
