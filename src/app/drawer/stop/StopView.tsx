import { useState } from 'react'
import type { Words } from '../../../checks/context'
import { chosenCut } from '../../../evaluate/longCut/choices'
import { longCut } from '../../../evaluate/longCut/cut'
import { setFields } from '../../../layout/setFields'
import { rankOf } from '../../../model/finding'
import type { PartId } from '../../../model/ids'
import type { StopMoment } from '../../../model/stopRun'
import { commitEdited } from '../../../sidebar/commitEdited'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlanner, usePlannerState } from '../../../store/react'
import { ChartTable } from '../chart/ChartTable'
import { LongCutDrawing, useTrenchWriter } from '../longCut/LongCutDrawing'
import { PartChoice } from '../PartChoice'
import { RowFigures } from '../RowFigures'
import { useAnswer } from '../useAnswer'
import { PitChoiceTable } from './PitChoiceTable'
import '../chart/chart.css'
import './stop.css'
import { type StopAndStart, type StopAnswer, stopSteps } from './stopAnswer'
import { StopPlayer, usePlaying } from './StopPlayer'
import { afterWords, endWords, restartFigures, siphonWords, sizedWords, sourceRows } from './stopWords'

/** The pit that is shown: a selected one, that of the section, else the first. */
const shownPit = (pits: readonly PartId[], selection: readonly PartId[], ofCut: PartId | undefined) =>
  [...selection, ofCut, pits[0]].find((part) => part !== undefined && pits.includes(part))

interface ValveChoiceProps {
  readonly isWith: boolean
  readonly isDrawnWith: boolean
  readonly onChoose: (isWith: boolean) => void
}

function ValveChoice({ isWith, isDrawnWith, onChoose }: ValveChoiceProps) {
  const words = (has: boolean) =>
    `${has ? 'With check valve' : 'Without'}${has === isDrawnWith ? ', as drawn' : ''}`
  return (
    <div className="stop-valves" role="group" aria-label="Check valve">
      {[true, false].map((has) => (
        <button key={String(has)} aria-pressed={has === isWith} onClick={() => onChoose(has)}>
          {words(has)}
        </button>
      ))}
    </div>
  )
}

/** The way home that is chosen, with its water as it stands at a moment. */
function Section({ moment }: { readonly moment: StopMoment | undefined }) {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const along = usePlannerState((state) => chosenCut(state.settled.bay, state.selection, undefined))
  const cut = along === undefined ? undefined : longCut(bay, along)
  return cut ? <LongCutDrawing cut={cut} moment={moment} /> : <div />
}

interface TellProps {
  readonly run: StopAndStart
  readonly answer: StopAnswer
  readonly pit: PartId
  readonly words: Words
}

function Tell({ run: { stop, start }, answer, pit, words }: TellProps) {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const { level } = useTrenchWriter()
  const ended = stop.pits.get(pit)
  const facts = bay.builtOf.get(pit)?.pit
  const known = bay.returns.pits.get(pit)
  const started = start?.pits.get(pit)
  if (!ended || !facts) return null
  return (
    <div className="stop-told">
      <p>
        <StateMark word={ended.state} rank={rankOf({ subject: 'pit', state: ended.state })} />{' '}
        <Said words={endWords(ended, facts, words, level)} />
      </p>
      {stop.pits.size > 1 && <h3>What comes home to all pits</h3>}
      <ChartTable title="What comes home" table={sourceRows(stop, words)} />
      <h3>With and without a check valve</h3>
      <PitChoiceTable answer={answer} words={words} level={level} />
      <ValveMend answer={answer} pit={pit} />
      {start && started && (
        <>
          <h3>Start again</h3>
          <RowFigures figures={restartFigures(started, start, facts, words, level)} />
        </>
      )}
      <h3>What siphons</h3>
      {answer.siphon && siphonWords(answer.siphon, words).map((line) => <p key={line}>{line}</p>)}
      {known && <p className="water-note">{sizedWords(known, ended, words)}</p>}
      <p className="water-note">
        Reckoned as stores that run into each other, to the litre: drains and gutters let go as water at its
        normal depth does, towers at first what they are fed and all but a twentieth in the time that is set,
        pipes as a tank through a hole, behind check valves through the tubes. Waves, and the seconds that
        water takes down a drain, are left out. Measure one tower and set what it lets go.
      </p>
    </div>
  )
}

/** Offered where a check valve would keep in the pit what now runs over, or leave more room in it. */
function ValveMend({ answer, pit }: { readonly answer: StopAnswer; readonly pit: PartId }) {
  const planner = usePlanner()
  const rank = ({ stop }: StopAndStart) =>
    rankOf({ subject: 'pit', state: stop.pits.get(pit)?.state ?? 'Holds' })
  if (answer.isDrawnWith || rank(answer.withValve) >= rank(answer.without)) return null
  const set = () =>
    commitEdited(planner, 'Check valves at all pumps', (layout) =>
      setFields(
        layout,
        layout.parts.flatMap(({ id, kind }) =>
          kind === 'sump' ? [{ part: id, values: { checkValve: true } }] : [],
        ),
      ),
    )
  return <button onClick={set}>Give every pump a check valve</button>
}

function Stop({ answer }: { readonly answer: StopAnswer }) {
  const [parts, selection] = usePlannerState((state) => [state.evaluation.layout.parts, state.selection])
  const words = useWords(parts)
  const [chosen, setChosen] = useState<boolean>()
  const isWith = chosen ?? answer.isDrawnWith
  const run = isWith ? answer.withValve : answer.without
  const { moments } = run.stop
  const playing = usePlaying(moments.length)
  const pits = [...run.stop.pits.keys()]
  const pit = shownPit(pits, selection, undefined)
  return (
    <>
      <div className="stop-head">
        <ValveChoice isWith={isWith} isDrawnWith={answer.isDrawnWith} onChoose={setChosen} />
        <StopPlayer
          playing={playing}
          moments={moments}
          clock={(seconds) => (seconds === 0 ? 'running' : afterWords(seconds, words))}
        />
        {pits.length > 1 && <PartChoice label="Pit" shown={pit} parts={pits} words={words.name} />}
      </div>
      <Section moment={moments[playing.index]} />
      {pit !== undefined && <Tell run={run} answer={answer} pit={pit} words={words} />}
    </>
  )
}

/** The pumps stop: what comes home, in what order, and where the water ends; then they start again. */
export default function StopView() {
  const bay = usePlannerState((state) => state.evaluation.bay)
  const { answer, isCurrent } = useAnswer('stop', [bay], () => stopSteps(bay))
  if (!answer)
    return (
      <p className="water-none">
        {isCurrent
          ? 'No water runs in this bay yet, so there is nothing to stop. Lay a main from a pit with a pump to the rows.'
          : 'The pumps are being stopped …'}
      </p>
    )
  return (
    <div className={isCurrent ? 'stop' : 'stop water-stale'} aria-busy={!isCurrent}>
      <Stop answer={answer} />
    </div>
  )
}
