import { ChevronDown, ChevronRight } from 'lucide-react'
import { memo, useRef, useState } from 'react'
import { wasteWords } from '../../../layout/quoteColumns'
import { TypedField } from '../../../sidebar/TypedField'
import { amountText } from '../../../units/amount'
import type { BookLine, BookSection } from './bookLines'
import { PriceDetails } from './PriceDetails'
import { breakWords, daysOld, layerWord, leadWords, packWords, thingWords } from './priceWords'
import { usePriceEdit } from './usePriceEdit'

const COLUMNS = ['Thing', 'Sold as', 'Price', 'Supplier, aisle', 'Comes in', 'Spares', 'From', '']

interface LineProps {
  readonly line: BookLine
  readonly day: string
}

/** The layer that a price is from, and the day of its quote with its age where that is too much. */
function From({ line, day }: LineProps) {
  const { row, isStale } = line
  return (
    <>
      {layerWord(line)} <span className="prices-spec">{row.date}</span>
      {isStale && (
        <span className="prices-old">
          <span aria-hidden="true">△</span> {daysOld(row, day)} days old
        </span>
      )}
    </>
  )
}

/** A row is drawn again only when it is another: an edit of one leaves the rest of a long table alone. */
const isSameLine = (a: LineProps, b: LineProps): boolean =>
  a.day === b.day &&
  a.line.row === b.line.row &&
  a.line.layer === b.line.layer &&
  a.line.isStale === b.line.isStale

function PlainLine({ line, day }: LineProps) {
  const { row, layer } = line
  const [isOpen, setIsOpen] = useState(false)
  const opener = useRef<HTMLButtonElement>(null)
  const { price, drop } = usePriceEdit(row)
  const name = thingWords(row)
  const dropQuote = () => {
    // The button goes with the quote, and the focus must not.
    opener.current?.focus()
    drop('quotes')
  }
  return (
    <>
      <tr className={row.cents === undefined ? 'prices-none' : undefined}>
        <th scope="row">
          {row.name} <span className="prices-spec">{row.spec}</span>
        </th>
        <td>{packWords(row)}</td>
        <td className="prices-price">
          <TypedField
            label={`Price of ${name}`}
            isLabelHidden
            placeholder="—"
            shown={row.cents === undefined ? '' : amountText(row.cents)}
            onTyped={price}
          />
          <span className="prices-spec">{breakWords(row)}</span>
        </td>
        <td className="prices-wide">
          {row.supplier} <span className="prices-spec">{row.aisle}</span>
        </td>
        <td>{leadWords(row)}</td>
        <td>{wasteWords(row.waste)}</td>
        <td>
          <From line={line} day={day} />
        </td>
        <td className="prices-row-deeds">
          {layer === 'quote' && (
            <button aria-label={`Drop the quote for ${name}`} onClick={dropQuote}>
              Drop
            </button>
          )}
          <button
            ref={opener}
            aria-expanded={isOpen}
            aria-label={`How ${name} is sold`}
            onClick={() => setIsOpen(!isOpen)}
          >
            {isOpen ? 'Close' : 'More'}
          </button>
        </td>
      </tr>
      {isOpen && (
        <tr>
          <td colSpan={COLUMNS.length} className="prices-more">
            <PriceDetails line={line} />
          </td>
        </tr>
      )}
    </>
  )
}

const Line = memo(PlainLine, isSameLine)

interface SectionProps {
  readonly section: BookSection
  /** Long lists begin folded, so that they cost nothing until they are opened. */
  readonly startsOpen: boolean
  readonly day: string
}

function Section({ section: { group, lines }, startsOpen, day }: SectionProps) {
  const [isOpen, setIsOpen] = useState(startsOpen)
  const Mark = isOpen ? ChevronDown : ChevronRight
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={COLUMNS.length} className="prices-group">
          <button aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
            <Mark size={16} aria-hidden="true" /> {group.charAt(0).toUpperCase() + group.slice(1)},{' '}
            {lines.length}
          </button>
        </th>
      </tr>
      {isOpen && lines.map((line) => <Line key={line.row.key} line={line} day={day} />)}
    </tbody>
  )
}

interface TableProps {
  readonly sections: readonly BookSection[]
  readonly startsOpen: boolean
  readonly currency: string
  readonly day: string
}

/** Rows of the price book in groups that fold. */
export function PriceTable({ sections, startsOpen, currency, day }: TableProps) {
  return (
    <div className="chart-table prices-table" role="region" aria-label="Price book">
      <table>
        <thead>
          <tr>
            {COLUMNS.map((column) => (
              <th key={column} scope="col">
                {column === 'Price'
                  ? `Price, ${currency}`
                  : column || <span className="only-heard">Deeds</span>}
              </th>
            ))}
          </tr>
        </thead>
        {sections.map((section) => (
          <Section
            key={`${section.group} ${startsOpen}`}
            section={section}
            startsOpen={startsOpen}
            day={day}
          />
        ))}
      </table>
    </div>
  )
}
