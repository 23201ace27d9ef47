import type { PriceRow } from '../../../model/priceRow'
import { type Column, columns } from '../../../layout/quoteColumns'
import { rowIn } from '../../../catalogue/priceBook/stockPrices'
import { SwitchField } from '../../../sidebar/SwitchField'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlannerState } from '../../../store/react'
import type { BookLine } from './bookLines'
import { thingWords } from './priceWords'
import { usePriceEdit } from './usePriceEdit'

/** A field of a row that is typed as the sheet has it. */
interface TypedColumn {
  readonly name: string
  readonly label: string
  readonly help?: string
  /** What an emptied field sets, where it may be empty. */
  readonly emptied?: Partial<PriceRow>
}

const TYPED: readonly TypedColumn[] = [
  { name: 'unit', label: 'Sold by the' },
  { name: 'pack', label: 'How many in one' },
  {
    name: 'price breaks',
    label: 'Price breaks',
    help: 'From how many on, and what each costs then: 20: 9.60 | 50: 8.80',
    emptied: { breaks: [] },
  },
  { name: 'supplier', label: 'Supplier', emptied: { supplier: '' } },
  { name: 'aisle', label: 'Aisle', emptied: { aisle: '' } },
  { name: 'lead days', label: 'Days until it comes' },
  { name: 'waste', label: 'Spares', help: 'cut, none, 5 % (of pieces to the nearest whole one) or 2 spares' },
  { name: 'note', label: 'Note', emptied: { note: '' } },
]

const SWITCHES = [
  { key: 'isWholePack', label: 'Whole packs only' },
  { key: 'isTaxed', label: 'Taxed' },
  { key: 'isReturnable', label: 'Taken back' },
] as const

const columnOf = (name: string): Column | undefined => columns.find((column) => column.name === name)

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`

function TypedDetail({ row, field }: { readonly row: PriceRow; readonly field: TypedColumn }) {
  const { change } = usePriceEdit(row)
  const column = columnOf(field.name)
  const take = (typed: string) => {
    if (typed.trim() === '') return field.emptied ? change(field.emptied) : 'It can’t be empty.'
    const said = column?.read?.(typed.trim(), undefined) ?? { change: {} }
    return 'fault' in said ? sentence(said.fault) : change(said.change)
  }
  return (
    <TypedField label={field.label} help={field.help} shown={column?.write(row, '.') ?? ''} onTyped={take} />
  )
}

/** What takes a row of one's own away, or says that a price still holds. */
function DetailDeeds({ line }: { readonly line: BookLine }) {
  const { row, isPlaceholder, isStale } = line
  const counter = usePlannerState((state) => state.evaluation.layout.counter)
  const { change, drop } = usePriceEdit(row)
  return (
    <div className="prices-deeds">
      {(isPlaceholder || isStale) && (
        <button onClick={() => change({ cents: row.cents })}>Asked today: the same price</button>
      )}
      {rowIn(counter.book, row.key) && (
        <button onClick={() => drop('book')}>Take it out of the supplier’s book</button>
      )}
    </div>
  )
}

/** All of a row that is not in its line of the table. What is changed here is a quote of this job. */
export function PriceDetails({ line }: { readonly line: BookLine }) {
  const { row } = line
  const { change } = usePriceEdit(row)
  return (
    <div className="prices-details" role="group" aria-label={`How ${thingWords(row)} is sold`}>
      {TYPED.map((field) => (
        <TypedDetail key={field.name} row={row} field={field} />
      ))}
      {SWITCHES.map(({ key, label }) => (
        <SwitchField key={key} label={label} isOn={row[key]} onSwitch={(isOn) => change({ [key]: isOn })} />
      ))}
      <DetailDeeds line={line} />
    </div>
  )
}
