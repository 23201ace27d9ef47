import { useId, useState } from 'react'
import { strengthOf } from '../../../evaluate/5-loads'
import { frameOf } from '../../../evaluate/loads/frame'
import type { RowStrength } from '../../../model/strength'
import { Fold } from '../../../sidebar/Fold'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { massOfWeight } from '../../../units/force'
import { alongFloor } from '../chart/measures'
import { AssumedFields } from './AssumedFields'
import { MemberScreens, screenKey } from './bench/MemberScreens'
import { NoRack, RackChoice } from './RackChoice'
import './rackRow.css'
import './rail/rail.css'
import { barWords } from './rail/barWords'
import { RailDrawing } from './rail/RailDrawing'
import { ReactionTable, SpacingFold, SpanTable } from './rail/RailTables'
import { governing, governsWords, lifts, liftWords, namedSpans, type RestsOn } from './rail/railWords'
import { strengthRank } from './shownRack'
import { useShownRack } from './useShownRack'

interface RailChoiceProps {
  readonly strength: RowStrength
  readonly shown: number
  readonly onShow: (index: number) => void
}

const sideOf = (v: number): string => (v < 0 ? 'Left' : 'Right')

/** The rail lines of a row, each with how it is. */
function RailChoice({ strength, shown, onShow }: RailChoiceProps) {
  const id = useId()
  return (
    <div className="water-choice">
      <label htmlFor={id}>Rail</label>
      <select id={id} value={shown} onChange={(event) => onShow(Number(event.target.value))}>
        {strength.rails.map((line, index) => (
          <option key={line.v} value={index}>
            {[sideOf(line.v), governing(line)?.span.state].filter(Boolean).join(': ')}
          </option>
        ))}
      </select>
    </div>
  )
}

/** The rail that is worst of a row, shown until another is chosen. */
const worstRail = ({ rails }: RowStrength): number =>
  rails.reduce(
    (worst, line, index) =>
      (governing(line)?.span.used ?? 0) > (governing(rails[worst] ?? line)?.span.used ?? 0) ? index : worst,
    0,
  )

const ASSUMED = ['wetTowerKg', 'conduitYieldMpa', 'sagOver', 'proofTimes'] as const

function Weighed({ strength }: { readonly strength: RowStrength }) {
  const { layout } = usePlannerState((state) => state.evaluation)
  const words = useWords(layout.parts)
  const { loads } = strength
  return (
    <p className="water-note">
      {loads.towers} towers at {words.mass(massOfWeight(loads.towerN))}
      {loads.isWeighed ? ', weighed for this row' : ', assumed'}; frame, conduit and full laterals{' '}
      {words.mass(massOfWeight(loads.ownN))}; {words.mass(massOfWeight(loads.fullN))} with all hung.
    </p>
  )
}

function RowScreens({ strength }: { readonly strength: RowStrength }) {
  const words = useWords(usePlannerState((state) => state.evaluation.layout.parts))
  const [open, setOpen] = useState<string>()
  return (
    <div className="screen-list">
      <MemberScreens
        strength={strength}
        words={words}
        open={open}
        onOpen={(screen) => setOpen(screen && screenKey(screen))}
      />
    </div>
  )
}

interface WeighedRailProps {
  readonly strength: RowStrength
  readonly restsOn: RestsOn
}

function WeighedRail({ strength, restsOn }: WeighedRailProps) {
  const [evaluation, units] = usePlannerState((state) => [state.evaluation, state.units])
  const { layout } = evaluation
  const words = useWords(layout.parts)
  const [chosen, setChosen] = useState<number>()
  const index = chosen !== undefined && chosen < strength.rails.length ? chosen : worstRail(strength)
  const line = strength.rails[index]
  if (!line) return <p className="water-none">This row has no rails to weigh.</p>
  const named = namedSpans(line)
  const state = governing(line)?.span.state
  const governs = governsWords(line, layout.settings, words, restsOn)
  const shared = { line, settings: layout.settings, write: words }
  return (
    <>
      <div className="water-side rack-side">
        <RackChoice shown={strength.part} />
        <RailChoice strength={strength} shown={index} onShow={setChosen} />
        <p role="status" className="rail-says">
          {state && <StateMark word={state} rank={strengthRank(state)} />} <Said words={governs} />
        </p>
        <Weighed strength={strength} />
        <Fold title={<h3>What is assumed</h3>} isOpen>
          <AssumedFields keys={ASSUMED} />
        </Fold>
      </div>
      <div className="rack-told">
        <RailDrawing
          {...shared}
          named={named}
          measure={alongFloor(units)}
          says={`${sideOf(line.v)} rail. ${governs}`}
        />
        <SpanTable {...shared} named={named} />
        <section>
          <h3>What each {restsOn} carries off this rail</h3>
          <ReactionTable {...shared} restsOn={restsOn} />
          {line.reactions.some(lifts) && <p className="water-note">{liftWords[restsOn]}</p>}
        </section>
        {strength.bar && (
          <section>
            <h3>The worst hanger bar</h3>
            {barWords(strength.bar, layout.settings, words).map((says) => (
              <p key={says} className="water-note">
                <Said words={says} />
              </p>
            ))}
          </section>
        )}
        <SpacingFold {...shared} measured={evaluation.bay.site.measured} />
        <section>
          <h3>Every screen of this row</h3>
          <RowScreens strength={strength} />
        </section>
      </div>
    </>
  )
}

/** A rail as it carries what hangs on it: sag, moment, spans against their limits, what risers carry, what governs. */
export default function RailView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const shown = useShownRack()
  if (shown === undefined) return <NoRack />
  const strength = strengthOf(bay).get(shown)
  const built = bay.builtOf.get(shown)
  const isHung = built && frameOf(built)?.rack.carriedBy === 'house'
  return (
    <div className="rack-row">
      {strength ? (
        <WeighedRail key={shown} strength={strength} restsOn={isHung ? 'strap' : 'riser'} />
      ) : (
        <div className="water-side">
          <RackChoice shown={shown} />
        </div>
      )}
    </div>
  )
}
