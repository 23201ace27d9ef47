import type { Evaluation } from '../../evaluate/evaluation'
import type { DrainRun } from '../../model/levels'
import type { Units } from '../../units/length'
import { inTrench } from '../../units/precision'
import { cautionsFor } from '../hazards'
import { heading, type Piece, tableOf, words } from '../piece'
import type { PlanOnPaper, Sheet, SheetOptions } from '../sheet'
import { sheetWords } from '../sheetWords'
import { drainFigures } from './drainFigures'
import { bedWords, CUT_WORDS, isDug, pegLineWords, toolWords, UP_WORDS } from './pegWords'
import { endWords } from './pegRows'
import { pegsOf } from './pegsOf'
import { pitDigs } from './pitDigs'

const FIGURES = ['Length and fall', 'Trench', 'Bells']

/** What the crew must know of the whole line, a sentence each. */
const lineWords = (plan: Evaluation, run: DrainRun, units: Units): readonly Piece[] => {
  const { bay } = plan
  const write = sheetWords(plan, units, inTrench)
  const facts = bay.builtOf.get(run.part)?.drain
  if (!facts) return []
  const figures = drainFigures(run, facts, bay.returns.drains.get(run.part), write)
    .filter(({ name }) => FIGURES.includes(name) && (name !== 'Trench' || isDug(run)))
    .map(({ name, value, note }) => `${name}: ${value}. ${note}`)
  const inTheDig = isDug(run) ? [pegLineWords(run, facts, plan, write), bedWords(run, write)] : []
  return [...figures, ...inTheDig].map((text) => words(text))
}

const drainPieces = (plan: Evaluation, run: DrainRun, units: Units): readonly Piece[] => {
  const write = sheetWords(plan, units, inTrench)
  const end = endWords(run, plan.bay)
  return [
    words(isDug(run) ? CUT_WORDS : UP_WORDS, 'big'),
    heading(`${write.name(run.part)}: pegs count from ${end} up`),
    tableOf(pegsOf(plan, run, write), true),
    ...lineWords(plan, run, units),
  ]
}

const pitPieces = (plan: Evaluation, units: Units): readonly Piece[] => {
  const table = pitDigs(plan, sheetWords(plan, units, inTrench))
  return table.rows.length === 0 ? [] : [heading(table.title), tableOf(table, true)]
}

const piecesOf = ({ now }: PlanOnPaper, { units }: SheetOptions): readonly Piece[] => {
  const runs = [...now.bay.levels.drains.values()].filter(({ pegs }) => pegs.length > 0)
  const pits = pitPieces(now, units)
  const cautions = cautionsFor('pegs', now, units)
  if (runs.length === 0 && pits.length === 0) return []
  return [
    ...runs.flatMap((run, i) => [
      ...(i > 0 ? [{ as: 'page' } as const] : []),
      ...drainPieces(now, run, units),
      ...(i === 0 ? cautions : []),
    ]),
    ...pits,
    ...(runs.length === 0 ? cautions : []),
    words(toolWords(units)),
  ]
}

/** Where each trench is dug and how deep under each peg: for two people with a tape and a level. */
export const pegTable: Sheet = {
  id: 'pegs',
  code: 'PT',
  title: 'Peg table',
  reader: 'Setter-out',
  size: 'small',
  pieces: piecesOf,
}
