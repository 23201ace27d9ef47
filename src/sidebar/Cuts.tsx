import { ClipboardCopy, Ruler } from 'lucide-react'
import { useDeferredValue } from 'react'
import type { CutList } from '../model/cutList'
import type { Planner } from '../store/planner'
import { usePlanner, usePlannerState } from '../store/react'
import { useCutLists } from '../store/useCutLists'
import type { Units } from '../units/length'
import { CountedThings } from './CountedThings'
import { CutSection } from './CutSection'
import './cuts.css'
import { cutText } from '../sheets/cutWords'
import { Fold } from './Fold'
import { hasMark, memberName } from './memberNames'

const copyAll = async (planner: Planner, cuts: readonly CutList[], units: Units): Promise<void> => {
  try {
    await navigator.clipboard.writeText(cutText(cuts, units))
    planner.set({ notice: { tone: 'said', text: 'The cut lists are copied as text.' } })
  } catch {
    planner.set({
      notice: {
        tone: 'trouble',
        text: 'This browser would not let the page copy. Select the list and copy it by hand.',
      },
    })
  }
}

/** Every mark of these lists with its member, for those who can't point at one. */
function MemberMarks({ cuts }: { readonly cuts: readonly CutList[] }) {
  const marks = new Set(cuts.flatMap(({ lines }) => lines.flatMap((line) => line.marks)))
  return (
    <dl className="cuts-legend">
      {[...marks]
        .filter(hasMark)
        .sort()
        .map((mark) => (
          <div key={mark}>
            <dt>{mark}</dt>
            <dd>{memberName(mark)}</dd>
          </div>
        ))}
    </dl>
  )
}

/** Some boards are counted at a price that nobody has quoted. */
const isInvented = ({ stocks }: CutList): boolean =>
  stocks.some(({ isLeftover, isPlaceholder, cents }) => !isLeftover && isPlaceholder && cents !== undefined)

/** Some length has no price, so that its plans are weighed by length. */
const isUnpriced = ({ stocks }: CutList): boolean => stocks.some(({ cents }) => cents === undefined)

/** What is to be known of all the prices below, said once. */
function PriceNotes({ cuts }: { readonly cuts: readonly CutList[] }) {
  return (
    <>
      {cuts.some(isInvented) && (
        <p className="cuts-note">Prices are invented placeholders until the price book has your own.</p>
      )}
      {cuts.some(isUnpriced) && (
        <p className="cuts-note">
          Where a length has no price, the plan that buys the least length is taken for the cheapest.
        </p>
      )}
    </>
  )
}

function CutActions({ cuts, units }: { readonly cuts: readonly CutList[]; readonly units: Units }) {
  const planner = usePlanner()
  return (
    <div className="cuts-actions">
      <button onClick={() => planner.set({ drawer: 'saw-list' })}>
        <Ruler size={15} aria-hidden="true" /> Open the saw bench
      </button>
      <button onClick={() => void copyAll(planner, cuts, units)}>
        <ClipboardCopy size={15} aria-hidden="true" /> Copy all as text
      </button>
    </div>
  )
}

/** What the saw cuts and the yard sells, material by material, as the bay stands now. */
export function Cuts() {
  const units = usePlannerState((state) => state.units)
  const currency = usePlannerState((state) => state.evaluation.layout.counter.currency)
  const cuts = useDeferredValue(useCutLists())
  const counts = useDeferredValue(usePlannerState((state) => state.evaluation.counts))
  if (cuts.length === 0) return <p className="cuts">Nothing to cut yet: take a rack from the parts shelf.</p>
  return (
    <div className="cuts">
      <CutActions cuts={cuts} units={units} />
      <PriceNotes cuts={cuts} />
      {cuts.map((list) => (
        <CutSection key={list.stock} list={list} units={units} currency={currency} />
      ))}
      <Fold title={<h2>What the marks mean</h2>}>
        <MemberMarks cuts={cuts} />
      </Fold>
      {counts.length > 0 && (
        <Fold title={<h2>Counted things</h2>}>
          <CountedThings counts={counts} units={units} />
        </Fold>
      )}
    </div>
  )
}
