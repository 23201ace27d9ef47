import type { StateWord } from '../../model/finding'
import { CIVIDIS } from '../../drawing/cividis'
import type { Evaluation } from '../../evaluate/evaluation'
import type { TowerAt } from '../../model/water'
import type { Paint } from '../../store/planner'
import { usePlanner, usePlannerState } from '../../store/react'
import { centredOn } from '../../store/view'
import { type Writer, writerFor } from '../../units/writer'
import { stateRank } from '../stateInk'
import { shimCounts } from '../shims/shimNotes'
import { StateShape } from '../StateShape'
import { strengthCounts } from '../strength/strengthWords'
import { dryTowers, legendFacts, stateCounts, type LegendFacts } from './legendFacts'
import { extremeWords } from './under'

const GRADIENT = `linear-gradient(to right, ${CIVIDIS.join(', ')})`

const percent = (share: number): string => `${share * 100}%`

function ScaleBar({ facts: { ticks, marked } }: { readonly facts: LegendFacts }) {
  return (
    <div className="water-scale">
      {marked.share !== undefined && (
        <span className="water-scale-mark" style={{ left: percent(marked.share) }} aria-hidden="true">
          ▼
        </span>
      )}
      <div className="water-scale-bar" style={{ background: GRADIENT }} />
      <div className="water-scale-ticks">
        {ticks.map((words, index) => (
          <span key={index}>{words}</span>
        ))}
      </div>
    </div>
  )
}

interface ExtremesProps {
  readonly evaluation: Evaluation
  readonly writer: Writer
}

/** The least and the most fed tower by name; a press shows it on the plan. */
function Extremes({ evaluation, writer }: ExtremesProps) {
  const planner = usePlanner()
  const figures = evaluation.bay.water.bay
  if (!figures) return null
  const show = ({ part, at }: TowerAt) => {
    const { view, size } = planner.store.getState()
    planner.select([part])
    planner.set({ view: centredOn(view, at, size, view.pxPerMm) })
  }
  return (
    <div className="water-extremes">
      {(['least', 'most'] as const).map((which) => (
        <button key={which} title="Show it on the plan" onClick={() => show(figures[which])}>
          <span aria-hidden="true">{which === 'least' ? '▼' : '▲'}</span>
          {extremeWords(which, evaluation, figures, writer)}
        </button>
      ))}
    </div>
  )
}

/** A swatch like a tower without water: hollow, struck out. */
function DryWords({ count }: { readonly count: number }) {
  if (count <= 0) return null
  return (
    <p>
      <svg className="water-dry" viewBox="0 0 14 14" width="14" height="14" aria-hidden="true">
        <circle cx="7" cy="7" r="5.5" />
        <path d="M3.5 10.5 10.5 3.5" />
      </svg>{' '}
      {count.toLocaleString()} {count > 1 ? 'towers' : 'tower'} without water
    </p>
  )
}

/** A state by its shape, with what is said of it. */
function StateLine({ state, words }: { readonly state: StateWord; readonly words: string }) {
  return (
    <p>
      <svg
        className={`water-state water-state-${stateRank(state)}`}
        viewBox="-7 -7 14 14"
        width="13"
        height="13"
      >
        <StateShape state={state} x={0} y={0} />
      </svg>
      {state} {words}
    </p>
  )
}

/** The word of each shape that stands on a row, with how many rows have it. */
function States({ evaluation }: { readonly evaluation: Evaluation }) {
  return (
    <div className="water-states">
      {stateCounts(evaluation).map(({ state, rows }) => (
        <StateLine key={state} state={state} words={String(rows)} />
      ))}
    </div>
  )
}

/** The feet that have too much under them, by their state. */
function ShimStates({ evaluation }: { readonly evaluation: Evaluation }) {
  return (
    <div className="water-states">
      {shimCounts(evaluation).map(({ state, feet }) => (
        <StateLine
          key={state}
          state={state}
          words={`${feet.toLocaleString()} ${feet > 1 ? 'feet' : 'foot'}`}
        />
      ))}
    </div>
  )
}

/** Rows by what they carry, then by how they stand. */
function StrengthStates({ evaluation }: { readonly evaluation: Evaluation }) {
  const { carry, stand } = strengthCounts(evaluation)
  return (
    <div className="water-states">
      {[...carry, ...stand].map(({ state, rows }) => (
        <StateLine key={state} state={state} words={`${rows} ${rows > 1 ? 'rows' : 'row'}`} />
      ))}
    </div>
  )
}

const NO_WATER = 'No water runs in this bay yet, so there is nothing to paint.'
const NO_RACK = 'No rack stands in this bay yet, so there is nothing to paint.'

interface LegendProps {
  readonly as: Exclude<Paint, 'plain'>
}

/** What the colours of the plan mean, under the plan, as long as it is painted. */
export function PaintLegend({ as }: LegendProps) {
  const [evaluation, units] = usePlannerState((state) => [state.evaluation, state.units])
  const facts = legendFacts(as, evaluation, units)
  const { fault } = evaluation.bay.water
  return (
    <section className="water-legend" aria-label="Legend of the plan">
      {facts ? (
        <div>
          <p>
            <b>{facts.title}</b> ▼ {facts.marked.words}
          </p>
          <ScaleBar facts={facts} />
        </div>
      ) : (
        <p>{as === 'shims' || as === 'strength' ? NO_RACK : (fault ?? NO_WATER)}</p>
      )}
      {as === 'strength' && <StrengthStates evaluation={evaluation} />}
      {as === 'shims' && <ShimStates evaluation={evaluation} />}
      {as === 'flow' && (
        <>
          <div>
            <States evaluation={evaluation} />
            <DryWords count={dryTowers(evaluation, units)} />
          </div>
          <Extremes evaluation={evaluation} writer={writerFor(units)} />
        </>
      )}
    </section>
  )
}
