import { createPortal } from 'react-dom'
import type { Counter } from '../../../layout/counter'
import type { ShopList } from '../../../model/shop'
import type { Units } from '../../../units/length'
import { aislesOf } from '../../../sheets/shop/shopText'
import {
  amountWords,
  buyWords,
  leadWords,
  priceWords,
  supplierWords,
  thingWords,
  totalRows,
} from '../../../sheets/shop/shopWords'

interface PaperProps {
  readonly list: ShopList
  readonly title: string
  readonly day: string
  readonly banner: readonly string[]
  readonly counter: Pick<Counter, 'currency' | 'tax'>
  readonly units: Units
}

/** The list for paper: on screen it is nowhere, and a printer gets nothing else while the shop list is open. */
export function ShopPaper({ list, title, day, banner, counter, units }: PaperProps) {
  return createPortal(
    <div className="shop-paper">
      <h1>Shop list, {title}</h1>
      <p>
        {day}. {banner.join(' ')}
      </p>
      {list.suppliers.map((supplier) => (
        <section key={supplier.supplier}>
          <h2>{[supplierWords(supplier), leadWords(supplier.leadDays)].filter(Boolean).join(', ')}</h2>
          <table>
            <tbody>
              {aislesOf(supplier.lines).flatMap(({ aisle, lines }) =>
                lines.map((line, index) => (
                  <tr key={line.key}>
                    <td>☐</td>
                    <td>{buyWords(line, units)}</td>
                    <td>{thingWords(line)}</td>
                    <td>{index === 0 ? aisle : ''}</td>
                    <td>needs {amountWords(line.needed, line.unit, units)}</td>
                    <td>
                      {priceWords(line.boughtCents, counter.currency)}
                      {line.price.isPlaceholder && ' placeholder'}
                    </td>
                  </tr>
                )),
              )}
            </tbody>
          </table>
        </section>
      ))}
      <table>
        <tbody>
          {totalRows(list.totals, counter.tax, counter.currency).map(([name, sum]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{sum}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>,
    document.body,
  )
}
