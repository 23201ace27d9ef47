import { takeOffSections, type TakeOffLine } from '../../evaluate/takeOff/sections'
import { writeCount } from '../../units/writeCount'
import { clean } from '../../model/table'
import { type Field, quiet, sectionOf, textField, type Section } from '../fields'
import type { Told } from '../told'

interface Line {
  readonly group: string
  readonly line: TakeOffLine
}

const fieldsOf = ({ units }: Told): readonly Field<Line>[] => [
  textField('group', 'Group', ({ group }) => group),
  textField('title', 'What', ({ line }) => line.words),
  {
    key: 'count',
    title: 'Count',
    unit: 'count',
    cell: ({ line: { count, unit } }) => ({ value: clean(count), text: writeCount(count, unit, units) }),
  },
  quiet(textField('unit', 'Unit', ({ line }) => line.unit)),
  quiet(textField('use', 'Use', ({ line }) => (line.isWork ? 'work' : 'material'))),
  quiet(textField('item', 'Item', ({ line }) => line.item)),
  quiet(textField('rule', 'Counted', ({ line }) => line.rule)),
]

/** Everything that is built, counted: `ft` and `ft2` are feet and square feet whatever the reader measures in. */
export const takeOffSection = (told: Told): Section =>
  sectionOf({
    id: 'takeOff',
    title: 'Take-off',
    fields: fieldsOf(told),
    items: takeOffSections(told.plan).flatMap(({ title, lines }) =>
      lines.map((line) => ({ group: title, line })),
    ),
    keyOf: ({ line }) => line.item,
  })
