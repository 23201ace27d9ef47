import { useEffect, useState } from 'react'
import { usePlanner, usePlannerState } from '../../../store/react'
import type { PlaceChange } from '../../../evaluate/compare/placeChanges'
import type { CutList } from '../../../model/cutList'
import { useAnswer } from '../useAnswer'
import { DifferenceTable } from './DifferenceTable'
import './papers.css'
import './versions.css'
import type { PaperSet } from '../../../sheets/paperSet'
import { usePaperPlan, useProven } from './usePaperPlan'
import { VersionKeep } from './VersionKeep'
import { VersionList } from './VersionList'
import { type Choice, choicesIn, NOW, sideSteps, type SideBySide } from './versionPlans'

interface PlanChoiceProps {
  readonly label: string
  readonly choices: readonly Choice[]
  readonly chosen: Choice
  readonly onChoose: (id: string) => void
}

function PlanChoice({ label, choices, chosen, onChoose }: PlanChoiceProps) {
  return (
    <label className="box-choice">
      {label}
      <select value={chosen.id} onChange={(event) => onChoose(event.target.value)}>
        {choices.map(({ id, title }) => (
          <option key={id} value={id}>
            {title}
          </option>
        ))}
      </select>
    </label>
  )
}

/** Keeps the floor plan's drawing of the difference as long as it is wanted and this view is open. */
const useDrawn = (places: readonly PlaceChange[] | undefined) => {
  const planner = usePlanner()
  useEffect(() => {
    planner.set({ differing: places })
    return () => planner.set({ differing: undefined })
  }, [planner, places])
}

function Differences({ side }: { readonly side: SideBySide }) {
  return (
    <div className="box-differences">
      <DifferenceTable table={side.figures} />
      {side.tables.map((table) => (
        <DifferenceTable key={table.id} table={table} />
      ))}
      {side.tables.length === 0 && <p className="water-none">The two are alike in all that is counted.</p>}
    </div>
  )
}

interface SideProps {
  readonly set: PaperSet
  readonly choices: readonly Choice[]
}

const NONE: readonly CutList[] = []

/** Two plans side by side: in figures, in all that differs, and drawn on the floor plan. */
function Sides({ set, choices }: SideProps) {
  const { now } = set.plan
  const [ids, setIds] = useState<readonly [string, string]>(['', NOW])
  const [isDrawn, setDrawn] = useState(false)
  const asIs: Choice = { id: NOW, title: 'The bay as it is', plan: undefined }
  const [a, b] = [
    choices.find(({ id }) => id === ids[0]) ?? choices[0] ?? asIs,
    choices.find(({ id }) => id === ids[1]) ?? asIs,
  ]
  const about = `${a.id} / ${b.id}`
  const proofs = usePlannerState((state) => state.proofs)
  const { answer: side, isCurrent } = useAnswer(about, [now, proofs, set.units, a.plan, b.plan], () =>
    sideSteps(a, b, { now, proofs, units: set.units }),
  )
  useProven(side?.cuts ?? NONE)
  useDrawn(isDrawn ? side?.places : undefined)
  const canDraw = a.plan === undefined || b.plan === undefined
  return (
    <div className="box-sheet" aria-busy={!isCurrent}>
      <div className="box-bar">
        <PlanChoice label="Hold" choices={choices} chosen={a} onChoose={(id) => setIds([id, b.id])} />
        <PlanChoice label="against" choices={choices} chosen={b} onChoose={(id) => setIds([a.id, id])} />
        <label className="box-choice">
          <input
            type="checkbox"
            checked={isDrawn && canDraw}
            disabled={!canDraw}
            onChange={(event) => setDrawn(event.target.checked)}
          />
          Draw it on the plan
        </label>
        {!canDraw && <span className="water-note">Drawn where one of the two is the bay as it is.</span>}
      </div>
      {side ? <Differences side={side} /> : <p className="water-none">Holding them against each other …</p>}
    </div>
  )
}

/** Named copies of the bay, and any two of them side by side. */
export default function VersionsView() {
  const set = usePaperPlan()
  const choices = choicesIn(set.plan.now.layout)
  return (
    <div className="box">
      <div className="box-issues">
        <VersionKeep />
        <VersionList />
      </div>
      {choices.length > 1 ? (
        <Sides set={set} choices={choices} />
      ) : (
        <p className="water-none">
          With a version kept, or a set of papers issued, what differs stands here: in towers, boards, money
          and water, piece by piece, and drawn on the plan.
        </p>
      )}
    </div>
  )
}
