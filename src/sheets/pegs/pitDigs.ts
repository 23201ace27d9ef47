import type { Words } from '../../checks/context'
import type { Evaluation } from '../../evaluate/evaluation'
import { boxOf } from '../../geometry/box'
import type { Body, Built } from '../../model/built'
import { type Column, counted, type Row, said, type Table } from '../../model/table'
import { fromWalls } from '../baseline'

const COLUMNS: readonly Column[] = [
  { key: 'pit', title: 'Pit', unit: 'text' },
  { key: 'digMm', title: 'DIG from the floor, inside', unit: 'mm', isMain: true },
  { key: 'acrossMm', title: 'West to east', unit: 'mm' },
  { key: 'alongMm', title: 'South to north', unit: 'mm' },
  { key: 'westMm', title: 'West side from west wall', unit: 'mm' },
  { key: 'southMm', title: 'South side from south wall', unit: 'mm' },
  { key: 'rimMm', title: 'Rim', unit: 'mm' },
  { key: 'bottomMm', title: 'Bottom', unit: 'mm' },
]

const isDug = ({ role, fromMm }: Body): boolean => role === 'pit' && fromMm < 0

const rowOf = ({ part, pit }: Built, body: Body, { bay }: Evaluation, write: Words): Row[] => {
  if (!pit) return []
  const { x0, y0, x1, y1 } = boxOf(body.outline)
  const { westMm, southMm } = fromWalls(bay.house, { x: x0, y: y0 })
  const length = (mm: number) => counted(mm, write.length(mm))
  return [
    {
      key: part,
      cells: [
        said(write.name(part)),
        counted(-body.fromMm, write.onTape(-body.fromMm)),
        length(x1 - x0),
        length(y1 - y0),
        length(westMm),
        length(southMm),
        counted(pit.rimMm, write.level(pit.rimMm)),
        counted(pit.bottomMm, write.level(pit.bottomMm)),
      ],
    },
  ]
}

/** Every pit that is dug, inside of its lining. Lengths and levels in mm. */
export const pitDigs = (plan: Evaluation, write: Words): Table => ({
  id: 'pit-digs',
  title: 'Pits, inside of the lining: dig by its thickness more',
  columns: COLUMNS,
  rows: plan.bay.built.flatMap((built) =>
    built.bodies.filter(isDug).flatMap((body) => rowOf(built, body, plan, write)),
  ),
})
