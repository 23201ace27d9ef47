import { Fragment } from 'react'
import type { ShopLine, SupplierList } from '../../../model/shop'
import type { Units } from '../../../units/length'
import { HeadRow } from '../chart/HeadRow'
import { aislesOf } from '../../../sheets/shop/shopText'
import {
  amountWords,
  buyWords,
  leadWords,
  lineNotes,
  priceWords,
  supplierSum,
  supplierWords,
  thingWords,
} from '../../../sheets/shop/shopWords'
import type { useTicks } from './useTicks'

interface Reading {
  readonly currency: string
  readonly units: Units
  readonly day: string
}

interface LineProps extends Reading {
  readonly line: ShopLine
  readonly ticks: ReturnType<typeof useTicks>
}

function Line({ line, ticks, currency, units, day }: LineProps) {
  const left = ticks.leftOf(line)
  const isBought = left === 0
  const notes = [
    ...(!isBought && left < line.bought ? [`${amountWords(left, line.unit, units)} more to buy`] : []),
    ...lineNotes(line, currency, units, day),
  ]
  return (
    <tr className={isBought ? 'shop-bought' : undefined}>
      <td>
        <label className="shop-tick">
          <input
            type="checkbox"
            checked={isBought}
            onChange={({ target }) => ticks.tick(line, target.checked)}
          />
          <span className="only-heard">Bought: {thingWords(line)}</span>
        </label>
      </td>
      <th scope="row">{thingWords(line)}</th>
      <td>{amountWords(line.needed, line.unit, units)}</td>
      <td>{line.spare > 0 ? amountWords(line.spare, line.unit, units) : ''}</td>
      <td>
        <b>{buyWords(line, units)}</b>
      </td>
      <td>{priceWords(line.packCents, currency)}</td>
      <td>{priceWords(line.boughtCents, currency)}</td>
      <td>{notes.join('. ')}</td>
    </tr>
  )
}

const SHOP_COLUMNS = ['Bought', 'Thing', 'Needed', 'Spare', 'Buy', 'One costs', 'Costs', 'To know'] as const

interface SupplierProps extends Reading {
  readonly list: SupplierList
  readonly ticks: ReturnType<typeof useTicks>
}

/** All that is bought in one place, aisle by aisle. */
export function SupplierTable({ list, ticks, ...reading }: SupplierProps) {
  const name = supplierWords(list)
  const lead = leadWords(list.leadDays)
  return (
    <section className="shop-supplier">
      <h3>
        {name}
        {lead && <i>, {lead}</i>}
        <b>{supplierSum(list, reading.currency)}</b>
      </h3>
      <div className="chart-table shop-table" role="region" aria-label={name} tabIndex={0}>
        <table>
          <HeadRow columns={SHOP_COLUMNS} />
          <tbody>
            {aislesOf(list.lines).map(({ aisle, lines }) => (
              <Fragment key={aisle}>
                {aisle !== '' && (
                  <tr className="shop-aisle">
                    <th scope="rowgroup" colSpan={SHOP_COLUMNS.length}>
                      {aisle}
                    </th>
                  </tr>
                )}
                {lines.map((line) => (
                  <Line key={line.key} line={line} ticks={ticks} {...reading} />
                ))}
              </Fragment>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}
