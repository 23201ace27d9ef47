import { stockOf } from '../../../catalogue/stock'
import { type Measure, setMeasure } from '../../../layout/stockEdits'
import { commitEdited } from '../../../sidebar/commitEdited'
import { readLength } from '../../../sidebar/fieldText'
import { Said } from '../../../sidebar/Said'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
import { writeStock } from '../../../units/writeStock'
import { HeadRow } from '../chart/HeadRow'
import { stockRows, type MeasureCell, type StockRow } from './stockRows'

/** Boards and conduit share their columns, so that the table fits a tablet. */
const MEASURES: readonly (readonly Measure[])[] = [['overMm'], ['thickMm', 'odMm'], ['wideMm', 'wallMm']]
const COLUMNS = [
  'Material',
  'Sold as',
  'Longer than its name',
  'Thickness, or outside of conduit',
  'Width, or wall of conduit',
]

function Cell({ row, cell }: { readonly row: StockRow; readonly cell: MeasureCell }) {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const { measure, label, shown, catalogue } = cell
  const set = (mm: number | null) =>
    commitEdited(planner, `${label} of ${row.title}`, (layout) => setMeasure(layout, row.stock, measure, mm))
  return (
    <TypedField
      label={`${label} of ${row.title}`}
      isLabelHidden
      shown={shown}
      placeholder={catalogue}
      help={shown === '' ? undefined : `${label}; catalogue ${catalogue}`}
      onTyped={(text) => {
        if (text.trim() === '') return set(null)
        const read = readLength(text, units)
        return read.ok ? set(Number(read.value)) : read.sentence
      }}
    />
  )
}

function Line({ row }: { readonly row: StockRow }) {
  const [units, lumberMm] = usePlannerState((state) => [
    state.units,
    state.evaluation.layout.settings.lumberMm,
  ])
  const lengths = row.isLumber ? lumberMm : stockOf(row.stock).lengthsMm
  return (
    <tr>
      <th scope="row">{row.title}</th>
      <td>
        <Said words={lengths.map((mm) => writeStock(mm, units)).join(', ')} />
      </td>
      {MEASURES.map((measures) => {
        const cell = row.cells.find(({ measure }) => measures.includes(measure))
        return <td key={measures[0]}>{cell && <Cell row={row} cell={cell} />}</td>
      })}
    </tr>
  )
}

/** Boards and sticks of this bay as the builder's tape and caliper find them, beside the catalogue. */
export function MeasuredTable() {
  const [units, cuts, measured] = usePlannerState((state) => [
    state.units,
    state.evaluation.cuts,
    state.evaluation.layout.bench.measured,
  ])
  const rows = stockRows(cuts, measured, units)
  if (rows.length === 0)
    return <p className="water-none">Nothing is cut in this bay yet: take a rack from the parts shelf.</p>
  return (
    <div className="chart-table stock-table" role="region" aria-label="Stock as it measures" tabIndex={0}>
      <table>
        <HeadRow columns={COLUMNS} />
        <tbody>
          {rows.map((row) => (
            <Line key={row.stock} row={row} />
          ))}
        </tbody>
      </table>
    </div>
  )
}
