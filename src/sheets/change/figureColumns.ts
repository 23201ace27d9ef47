import { stockOf } from '../../catalogue/stock'
import { planSums } from '../../evaluate/compare/sums'
import { isLumber } from '../../evaluate/cutting/benchStock'
import type { Judged } from '../../evaluate/evaluation'
import { rankOf } from '../../model/finding'
import { said, type Table } from '../../model/table'
import { thousands } from '../../units/thousands'
import type { Told } from './told'

const boardsOf = ({ cuts }: Judged): number =>
  cuts
    .filter(({ stock }) => isLumber(stockOf(stock)))
    .reduce((sum, { bought, sawn }) => [...bought, ...sawn].reduce((all, { count }) => all + count, sum), 0)

/** Warnings of a rank that nobody has accepted. */
const openOf = ({ findings, layout }: Judged, rank: number): number => {
  const accepted = new Set(layout.settings.accepted.map(({ key }) => key))
  return findings.filter((one) => rankOf(one) === rank && !accepted.has(one.key)).length
}

const wateredRows = ({ bay: { built } }: Judged) => built.filter(({ feed }) => feed !== undefined)

/** The row whose least tower has least, or one that is dry. */
const worstFlow = (plan: Judged, { write }: Told): string => {
  const { rows } = plan.bay.water
  const dry = wateredRows(plan).filter(({ part }) => !rows.has(part))
  if (dry.length > 0) return `${dry.length} ${dry.length === 1 ? 'row' : 'rows'} dry`
  const [worst] = [...rows.values()].sort((a, b) => a.figures.least.flowLph - b.figures.least.flowLph)
  return worst ? `${write.flow(worst.figures.least.flowLph)}, ${worst.state}` : 'no water'
}

/** Of the pit with least room for what comes home. */
const pitRoom = ({ bay: { returns } }: Judged, { write }: Told): string => {
  const pits = [...returns.pits.values()]
  const [tightest] = pits.sort((a, b) => a.roomL - a.designL - (b.roomL - b.designL))
  if (!tightest) return 'no pit'
  return `${write.volume(tightest.roomL)} for ${write.volume(tightest.designL)}, ${tightest.state}`
}

type Figure = readonly [key: string, title: string, said: (plan: Judged) => string]

const figuresFor = (told: Told): readonly Figure[] => [
  ['towers', 'Towers', ({ towers }) => thousands(towers)],
  ['sites', 'Plant sites', ({ sites }) => thousands(sites)],
  ['boards', 'Boards', (plan) => thousands(boardsOf(plan))],
  ['bought', 'Material, to buy', (plan) => told.money(planSums(plan).boughtCents)],
  ['hours', 'Hours of work', (plan) => planSums(plan).hours.toFixed(0)],
  ['flow', 'Least tower', (plan) => worstFlow(plan, told)],
  ['pit', 'Room in the pit', (plan) => pitRoom(plan, told)],
  ['toMend', 'Warnings to mend', (plan) => thousands(openOf(plan, 2))],
  ['toLookAt', 'Warnings to look at', (plan) => thousands(openOf(plan, 1))],
]

/** Two plans in a few figures side by side; figures that are alike stand there too. */
export const figureColumns = (told: Told, names: { readonly was: string; readonly now: string }): Table => ({
  id: 'figures',
  title: 'In figures',
  columns: [
    { key: 'figure', title: '', unit: 'text' },
    { key: 'was', title: names.was, unit: 'text' },
    { key: 'now', title: names.now, unit: 'text' },
  ],
  rows: figuresFor(told).map(([key, title, write]) => ({
    key,
    cells: [said(title), said(write(told.was)), said(write(told.now))],
  })),
})
