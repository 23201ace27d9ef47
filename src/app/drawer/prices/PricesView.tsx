import { useMemo, useState } from 'react'
import { setCounter } from '../../../layout/bayEdits'
import { commitEdited } from '../../../sidebar/commitEdited'
import { Fold } from '../../../sidebar/Fold'
import { TypedField } from '../../../sidebar/TypedField'
import { usePlanner, usePlannerState } from '../../../store/react'
import { useCutLists } from '../../../store/useCutLists'
import { parseShare } from '../../../units/parseWater'
import {
  type BookLine,
  bookLines,
  type Flaw,
  hasFlaw,
  neededKeys,
  sectionsOf,
  type Sought,
} from './bookLines'
import '../chart/chart.css'
import './prices.css'
import { bookSentence, flawTitles } from './priceWords'
import { PriceTable } from './PriceTable'
import { SheetIn } from './SheetIn'
import { SheetOut } from './SheetOut'
import { today } from './today'

const FLAWS: readonly Flaw[] = ['unpriced', 'placeholder', 'stale']

const PER_CENT = 100

/** The sign before every sum, and the tax. */
function Money() {
  const planner = usePlanner()
  const [currency, tax] = usePlannerState((state) => [
    state.evaluation.layout.counter.currency,
    state.evaluation.layout.counter.tax,
  ])
  const takeTax = (typed: string) => {
    const read = parseShare(typed)
    return read.ok
      ? commitEdited(planner, 'Sales tax', (layout) => setCounter(layout, { tax: read.value }))
      : read.sentence
  }
  return (
    <div className="prices-money">
      <TypedField
        label="Currency"
        shown={currency}
        onTyped={(typed) =>
          commitEdited(planner, 'Currency', (layout) => setCounter(layout, { currency: typed.trim() }))
        }
      />
      <TypedField label="Sales tax" shown={`${Number((tax * PER_CENT).toFixed(3))} %`} onTyped={takeTax} />
    </div>
  )
}

interface FinderProps {
  readonly sought: Sought
  readonly flaws: Readonly<Record<Flaw, number>>
  readonly onSought: (sought: Sought) => void
}

/** What of the book is looked at. */
function Finder({ sought, flaws, onSought }: FinderProps) {
  return (
    <div className="prices-finder">
      <label className="prices-find">
        Find{' '}
        <input
          type="search"
          value={sought.words}
          onChange={({ target }) => onSought({ ...sought, words: target.value })}
        />
      </label>
      <label className="water-toggle">
        <input
          type="checkbox"
          checked={sought.isBayOnly}
          onChange={({ target }) => onSought({ ...sought, isBayOnly: target.checked })}
        />{' '}
        Only what this bay needs
      </label>
      {FLAWS.map((flaw) => (
        <button
          key={flaw}
          aria-pressed={sought.flaw === flaw}
          onClick={() => onSought({ ...sought, flaw: sought.flaw === flaw ? undefined : flaw })}
        >
          {flawTitles[flaw]}: {flaws[flaw]}
        </button>
      ))}
    </div>
  )
}

const countFlaws = (lines: readonly BookLine[]): Readonly<Record<Flaw, number>> => {
  const count = (flaw: Flaw) => lines.filter((line) => hasFlaw(line, flaw)).length
  return { unpriced: count('unpriced'), placeholder: count('placeholder'), stale: count('stale') }
}

/** Of a book this long the groups are folded at first. */
const MOST_OPEN = 120

/** What everything costs here, who sells it and how, in the layers that lie over each other. */
export default function PricesView() {
  const cuts = useCutLists()
  const [counts, counter] = usePlannerState((state) => [
    state.evaluation.counts,
    state.evaluation.layout.counter,
  ])
  const [sought, setSought] = useState<Sought>({ isBayOnly: true, flaw: undefined, words: '' })
  const day = today()
  const lines = useMemo(() => bookLines(counter, neededKeys(cuts, counts), day), [counter, cuts, counts, day])
  const needed = lines.filter(({ isNeeded }) => isNeeded)
  const sections = sectionsOf(lines, sought)
  const shown = sections.reduce((sum, section) => sum + section.lines.length, 0)
  return (
    <div className="water-view prices-view">
      <div className="prices-head">
        <p role="status">{bookSentence(needed.length, countFlaws(needed))}</p>
        <Money />
      </div>
      <Finder sought={sought} flaws={countFlaws(sought.isBayOnly ? needed : lines)} onSought={setSought} />
      {shown === 0 ? (
        <p className="water-none">Nothing in the price book is so.</p>
      ) : (
        <PriceTable
          sections={sections}
          startsOpen={shown <= MOST_OPEN}
          currency={counter.currency}
          day={day}
        />
      )}
      <p className="water-note">
        A price typed here is a quote of this job with today’s date, and holds before the supplier’s book and
        the placeholders. Empty the field to say that it has no price; drop the quote to see what lies
        beneath.
      </p>
      <Fold title="Import and export sheets">
        <div className="prices-sheets">
          <SheetIn />
          <SheetOut />
        </div>
      </Fold>
    </div>
  )
}
