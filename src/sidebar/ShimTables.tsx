import { Fragment } from 'react'
import type { Foot } from '../model/levels'
import type { RackFacts } from '../model/rackFacts'
import type { RackRow } from '../parts/rack-row/schema'
import type { Writer } from '../units/writer'
import { Fold } from './Fold'
import { rowSides } from './placeWords'
import { bearerRows, pairRows, type ShimWords } from '../sheets/shims'

interface ShimTablesProps {
  readonly row: RackRow
  readonly rack: RackFacts
  readonly feet: readonly Foot[]
  readonly writer: Writer
}

/** A stack as a sum, which breaks between pieces only. */
function Pieces({ pieces }: Pick<ShimWords, 'pieces'>) {
  if (pieces.length === 0) return 'none'
  return pieces.map((piece, index) => (
    <Fragment key={piece}>
      {index > 0 && ' + '}
      <span className="unbroken">{piece}</span>
    </Fragment>
  ))
}

function GutterShims({ row, rack, writer }: ShimTablesProps) {
  const { start, end } = rowSides(row.heading)
  return (
    <>
      <p className="field-help">
        Bearers count from the {row.fallsTo === 'end' ? start : end} end of the row, where its gutters are
        high. Each trough takes such a stack at each bearer.
      </p>
      <table className="readout-table">
        <thead>
          <tr>
            <th scope="col">Bearer</th>
            <th scope="col">Along</th>
            <th scope="col">Shim</th>
            <th scope="col">Pieces</th>
          </tr>
        </thead>
        <tbody>
          {bearerRows(rack, writer).map(({ bearer, fromHigh, height, pieces }) => (
            <tr key={bearer}>
              <th scope="row">{bearer}</th>
              <td className="unbroken">{fromHigh}</td>
              <td className="unbroken">{height}</td>
              <td>
                <Pieces pieces={pieces} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

function FootCell({ height, pieces }: ShimWords) {
  return (
    <td>
      {height}{' '}
      <span className="shims">
        <Pieces pieces={pieces} />
      </span>
    </td>
  )
}

function FootShims({ row, rack, feet, writer }: ShimTablesProps) {
  const { start, left, right } = rowSides(row.heading)
  return (
    <>
      <p className="field-help">Riser pairs count from the {start} end of the row.</p>
      <table className="readout-table">
        <thead>
          <tr>
            <th scope="col">Pair</th>
            <th scope="col">Left foot, {left}</th>
            <th scope="col">Right foot, {right}</th>
          </tr>
        </thead>
        <tbody>
          {pairRows(rack, feet, writer).map((pair) => (
            <tr key={pair.pair}>
              <th scope="row">{pair.pair}</th>
              <FootCell {...pair.left} />
              <FootCell {...pair.right} />
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

/** What the crew cuts so that a row stands level and its troughs fall. */
export function ShimTables(props: ShimTablesProps) {
  return (
    <>
      <Fold title={<h3>Gutter shims</h3>}>
        <GutterShims {...props} />
      </Fold>
      <Fold title={<h3>Foot shims</h3>}>
        <FootShims {...props} />
      </Fold>
    </>
  )
}
