import { labour } from '../../evaluate/shop/labour'
import { rankOf } from '../../model/finding'
import { stoodFindings } from '../failing'
import { countField, type Field, numberField, sectionOf, textField, type Section } from '../fields'
import type { Told } from '../told'

const withRank = ({ plan }: Told, rank: number): number =>
  stoodFindings(plan).filter(({ finding, accepted }) => accepted === undefined && rankOf(finding) === rank)
    .length

const fieldsOf = ({ words }: Told): readonly Field<Told>[] => [
  textField('title', 'Bay', ({ plan }) => plan.layout.title),
  numberField(
    'issued',
    'Last issue',
    'count',
    String,
    ({ plan }) => plan.layout.papers.issues.at(-1)?.number,
  ),
  countField('towers', 'Towers', ({ plan }) => plan.towers),
  countField('sites', 'Plant sites', ({ plan }) => plan.sites),
  countField('rows', 'Rows', ({ plan }) => plan.bay.built.filter(({ rack }) => rack !== undefined).length),
  countField('drains', 'Drains', ({ plan }) => plan.bay.levels.drains.size),
  countField('pits', 'Pits', ({ plan }) => plan.bay.returns.pits.size),
  countField('mustFix', 'To mend', (told) => withRank(told, 2)),
  countField('toLookAt', 'To look at', (told) => withRank(told, 1)),
  countField(
    'accepted',
    'Accepted',
    ({ plan }) => stoodFindings(plan).filter(({ accepted }) => accepted).length,
  ),
  numberField('totalLph', 'Flow', 'L/h', words.flowTotal, ({ plan }) => plan.bay.water.totalLph),
  numberField('leastLph', 'Least tower', 'L/h', words.flow, ({ plan }) => plan.bay.water.bay?.least.flowLph),
  numberField(
    'hours',
    'Hours',
    'h',
    (h) => h.toFixed(0),
    ({ plan }) => labour(plan.bay, plan.layout.counter).hours,
  ),
  textField('currency', 'Currency', ({ plan }) => plan.layout.counter.currency),
]

/** The bay in one row. */
export const baySection = (told: Told): Section =>
  sectionOf({ id: 'bay', title: 'Bay', fields: fieldsOf(told), items: [told], keyOf: () => 'bay' })
