import { useState } from 'react'
import { sentence } from '../../../checks/words'
import { findingsOf } from '../../../evaluate/8-checks'
import { chosenCut, cutChoices } from '../../../evaluate/longCut/choices'
import { longCut } from '../../../evaluate/longCut/cut'
import type { LongCut } from '../../../evaluate/longCut/section'
import { type Finding, rankOf } from '../../../model/finding'
import type { PartId } from '../../../model/ids'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { sortedByAcceptance } from '../../../sidebar/warningGroups'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import '../chart/chart.css'
import { ChartTable } from '../chart/ChartTable'
import { PartChoice } from '../PartChoice'
import { CutGrips } from './CutGrips'
import { cutTable } from './cutWords'
import { GripField } from './GripField'
import { gripsOf } from './grips'
import { LongCutDrawing, useTrenchWriter } from './LongCutDrawing'
import { brokenBy, markOf, worstOfWay } from './wayFindings'

/** The part that is cut along; while something is dragged it stays the same. */
const useChosen = (): PartId | undefined => {
  const [bay, selection] = usePlannerState((state) => [state.settled.bay, state.selection])
  const [held, setHeld] = useState<PartId>()
  const chosen = chosenCut(bay, selection, held)
  if (chosen !== held) setHeld(chosen)
  return chosen
}

/** What a change breaks first while it is shown, or else the worst of this way home. */
const useFound = (cut: LongCut): { readonly finding: Finding | undefined; readonly isNew: boolean } => {
  const [evaluation, settled, preview] = usePlannerState((state) => [
    state.evaluation,
    state.settled,
    state.preview,
  ])
  const found = findingsOf(evaluation.bay)
  const { open } = sortedByAcceptance(found, evaluation.layout.settings.accepted)
  const [first] = preview ? brokenBy(findingsOf(settled.bay), found) : []
  return first ? { finding: first, isNew: true } : { finding: worstOfWay(open, cut), isNew: false }
}

interface FoundProps {
  readonly finding: Finding | undefined
  readonly isNew: boolean
}

function FoundWords({ finding, isNew }: FoundProps) {
  const parts = usePlannerState((state) => state.evaluation.layout.parts)
  const isPreviewed = usePlannerState((state) => state.preview !== undefined)
  const words = useWords(parts)
  return (
    <p className="long-cut-found" role="status" aria-label="What breaks first">
      {finding ? (
        <>
          <b>{isNew ? 'Breaks first: ' : 'Worst on this way home: '}</b>
          <StateMark word={finding.state} rank={rankOf(finding)} /> <Said words={sentence(finding, words)} />
        </>
      ) : (
        <>
          <b>{isPreviewed ? 'Nothing breaks.' : 'All levels on this way home are in order.'}</b>
        </>
      )}
    </p>
  )
}

function Cut({ cut, along }: { readonly cut: LongCut; readonly along: PartId }) {
  const [evaluation, settled] = usePlannerState((state) => [state.evaluation, state.settled])
  const { name } = useWords(evaluation.layout.parts)
  const writer = useTrenchWriter()
  const [isTable, setIsTable] = useState(false)
  const [chosen, setChosen] = useState<string>()
  const found = useFound(cut)
  const settledCut = longCut(settled.bay, along)
  const grips = gripsOf(cut, evaluation, name)
  const still = settledCut ? gripsOf(settledCut, settled, name) : []
  const grip = grips.find(({ id }) => id === chosen) ?? grips[0]
  const mark = found.finding && markOf(found.finding, cut, evaluation.bay)
  return (
    <div className="long-cut">
      <div className="long-cut-side">
        <PartChoice label="Cut" shown={along} parts={cutChoices(settled.bay)} words={name} />
        <FoundWords {...found} />
        {grip && <GripField grips={grips} still={still} grip={grip} onChoose={setChosen} />}
        <button aria-pressed={isTable} onClick={() => setIsTable(!isTable)}>
          {isTable ? 'Show as drawing' : 'Show as table'}
        </button>
      </div>
      {isTable ? (
        <ChartTable title="Long cut" table={cutTable(cut, name, writer)} />
      ) : (
        <LongCutDrawing
          cut={cut}
          mark={mark}
          overlay={(scale) => (
            <CutGrips
              cut={cut}
              scale={scale}
              grips={grips}
              still={still}
              chosen={grip?.id}
              onChoose={setChosen}
            />
          )}
        />
      )}
    </div>
  )
}

/** The section along a drain or a row, down to the pit, with everything that can be taken up or down on it. */
export default function LongCutView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const along = useChosen()
  const cut = along === undefined ? undefined : longCut(bay, along)
  if (along === undefined || !cut)
    return (
      <p className="water-none">
        No drain line and no row stands in this bay yet, so there is nothing to cut. Drag a rack row, a drain
        line and a pit from the shelf to the floor.
      </p>
    )
  return <Cut cut={cut} along={along} />
}
