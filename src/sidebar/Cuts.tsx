import { ClipboardCopy } from 'lucide-react'
import { useDeferredValue } from 'react'
import type { CountLine } from '../model/countLine'
import type { CutList } from '../model/cutList'
import type { Planner } from '../store/planner'
import { usePlanner, usePlannerState } from '../store/react'
import type { Units } from '../units/length'
import { CutSection } from './CutSection'
import './cuts.css'
import { cutText } from './cutWords'
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

function CountedThings({ counts }: { readonly counts: readonly CountLine[] }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Thing</th>
          <th scope="col" className="cuts-number">
            Count
          </th>
        </tr>
      </thead>
      <tbody>
        {counts.map(({ item, title, count }) => (
          <tr key={item}>
            <th scope="row">{title}</th>
            <td className="cuts-number">{count}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** What the saw cuts and the yard sells, material by material, as the bay stands now. */
export function Cuts() {
  const planner = usePlanner()
  const units = usePlannerState((state) => state.units)
  const cuts = useDeferredValue(usePlannerState((state) => state.evaluation.cuts))
  const counts = useDeferredValue(usePlannerState((state) => state.evaluation.counts))
  if (cuts.length === 0) return <p className="cuts">Nothing to cut yet: take a rack from the parts shelf.</p>
  return (
    <div className="cuts">
      <button className="cuts-copy" onClick={() => void copyAll(planner, cuts, units)}>
        <ClipboardCopy size={15} aria-hidden="true" /> Copy all as text
      </button>
      {cuts.map((list) => (
        <CutSection key={list.stock} list={list} units={units} />
      ))}
      <Fold title={<h2>What the marks mean</h2>}>
        <MemberMarks cuts={cuts} />
      </Fold>
      {counts.length > 0 && (
        <Fold title={<h2>Counted things</h2>}>
          <CountedThings counts={counts} />
        </Fold>
      )}
    </div>
  )
}
