import { useId, useState } from 'react'
import { strengthOf } from '../../../evaluate/5-loads'
import { type Frame, frameOf } from '../../../evaluate/loads/frame'
import type { PartId } from '../../../model/ids'
import type { RowStrength, Stance, Tip } from '../../../model/strength'
import { strengthBasis } from '../../../model/strengthBasis'
import { Fold } from '../../../sidebar/Fold'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import type { Writer } from '../../../units/writer'
import { ChartTable } from '../chart/ChartTable'
import { HeadRow } from '../chart/HeadRow'
import { PartChoice } from '../PartChoice'
import { AssumedFields } from './AssumedFields'
import { NoRack } from './RackChoice'
import './rackRow.css'
import { BasisWords } from './ScreenDetails'
import { loadWords } from './screenWords'
import './stance/stance.css'
import { StanceDrawing } from './stance/StanceDrawing'
import {
  heldWords,
  leastTip,
  ruleColumns,
  ruleRows,
  stanceRank,
  standsWords,
  tipCells,
  tipColumns,
  tipWords,
} from './stance/stanceWords'
import { rackRows } from './shownRack'
import { useShownRack } from './useShownRack'

/** Chooses a row of racks by how it stands, which selects it on the plan too. */
function StanceChoice({ shown }: { readonly shown: PartId }) {
  const { bay, layout } = usePlannerState((state) => state.evaluation)
  const { name } = useWords(layout.parts)
  const strength = strengthOf(bay)
  const words = (row: PartId) => [name(row), strength.get(row)?.stance.state].filter(Boolean).join(': ')
  return <PartChoice label="Row" shown={shown} parts={rackRows(bay)} words={words} />
}

interface TipChoiceProps {
  readonly stance: Stance
  readonly shown: Tip
  readonly onShow: (under: Tip['under']) => void
}

function TipChoice({ stance, shown, onShow }: TipChoiceProps) {
  const id = useId()
  return (
    <div className="water-choice">
      <label htmlFor={id}>Show</label>
      <select
        id={id}
        value={shown.under}
        onChange={({ target }) => {
          const tip = stance.tips.find(({ under }) => under === target.value)
          if (tip) onShow(tip.under)
        }}
      >
        {stance.tips.map(({ under, state }) => (
          <option key={under} value={under}>
            {loadWords[under]}: {state}
          </option>
        ))}
      </select>
    </div>
  )
}

interface TipTableProps {
  readonly stance: Stance
  readonly shown: Tip | undefined
  readonly pushN: number
  readonly write: Writer
}

/** How the row stands in every state of load. */
function TipTable({ stance, shown, pushN, write }: TipTableProps) {
  return (
    <div className="chart-table" role="region" aria-label="How it stands" tabIndex={0}>
      <table>
        <HeadRow columns={tipColumns} />
        <tbody>
          {stance.tips.map((tip) => {
            const [first, ...cells] = tipCells(tip, pushN, write)
            return (
              <tr key={tip.under} className={tip === shown ? 'stance-shown' : undefined}>
                <th scope="row">{first}</th>
                {cells.map((cell, column) => (
                  <td key={column}>{cell}</td>
                ))}
                <td>
                  <StateMark word={tip.state} rank={stanceRank(tip.state)} />
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

const ASSUMED = ['pushN', 'wetTowerKg'] as const

interface StandingProps {
  readonly strength: RowStrength
  readonly frame: Frame
}

function Standing({ strength, frame }: StandingProps) {
  const { layout } = usePlannerState((state) => state.evaluation)
  const words = useWords(layout.parts)
  const [chosen, setChosen] = useState<Tip['under']>()
  const { stance } = strength
  const { pushN } = layout.settings
  const tip = stance.tips.find(({ under }) => under === chosen) ?? leastTip(stance)
  const says = tip ? tipWords(tip, stance, pushN, words) : ''
  return (
    <>
      <div className="water-side rack-side">
        <StanceChoice shown={strength.part} />
        {tip && <TipChoice stance={stance} shown={tip} onShow={setChosen} />}
        <p role="status" className="rail-says">
          <StateMark word={stance.state} rank={stanceRank(stance.state)} /> <Said words={says} />{' '}
          <Said words={standsWords(stance, pushN, words)} />
        </p>
        <p className="water-note">{heldWords(frame.rack)}.</p>
        <Fold title={<h3>What is assumed</h3>} isOpen>
          <AssumedFields keys={ASSUMED} />
        </Fold>
      </div>
      <div className="rack-told">
        {tip && (
          <StanceDrawing frame={frame} stance={stance} tip={tip} pushN={pushN} write={words} says={says} />
        )}
        {tip && (
          <>
            <TipTable stance={stance} shown={tip} pushN={pushN} write={words} />
            <ChartTable
              title="Rules of the trade"
              table={{ columns: ruleColumns, rows: ruleRows(stance, words) }}
            />
          </>
        )}
        <Fold title={<h3>What it rests on</h3>}>
          <div className="arithmetic screen-details">
            <BasisWords basis={strengthBasis.stance} />
          </div>
        </Fold>
      </div>
    </>
  )
}

/** A row against a person who pushes or pulls at its rails: drawn to scale, in every state of load, with what holds it. */
export default function StanceView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const shown = useShownRack()
  if (shown === undefined) return <NoRack />
  const strength = strengthOf(bay).get(shown)
  const built = bay.builtOf.get(shown)
  const frame = built && frameOf(built)
  return (
    <div className="rack-row">
      {strength && frame && <Standing key={shown} strength={strength} frame={frame} />}
    </div>
  )
}
