import { useMemo } from 'react'
import { pitFigures, systemWater } from '../../../evaluate/returns/pitFigures'
import { paintMarks } from '../../../evaluate/returns/pitTable'
import { digCautions } from '../../../model/digCautions'
import { rankOf } from '../../../model/finding'
import type { PartId } from '../../../model/ids'
import type { PitFacts } from '../../../model/pitFacts'
import type { PitReturn } from '../../../model/returns'
import { hazardsOf } from '../../../sheets/hazards'
import { Said } from '../../../sidebar/Said'
import { StateMark } from '../../../sidebar/StateMark'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { inches, type Units } from '../../../units/length'
import { ChartTable } from '../chart/ChartTable'
import { useTrenchWriter } from '../longCut/LongCutDrawing'
import { PartChoice } from '../PartChoice'
import { RowFigures } from '../RowFigures'
import { HoldUpField } from './HoldUpField'
import './pit.css'
import { PitSection } from './PitSection'
import { paintRows, pitFigureRows, roomBars, roomSentence, transitRows } from './pitWords'
import { pitParts, shownPit } from './shownPit'
import { SizePit } from './SizePit'

/** How far apart the lines on a pit's wall are painted, mm. */
const PAINT_STEP: Readonly<Record<Units, number>> = { 'feet-inches': inches(2), metric: 50 }

function Room({ spent }: { readonly spent: PitReturn }) {
  const { volume } = useTrenchWriter()
  return (
    <ul className="pit-bars" aria-label="Room over the running level">
      {roomBars(spent).map(({ name, litres, share, isRoom }) => (
        <li key={name} className={isRoom ? 'pit-bar-room' : undefined}>
          <span>{name}</span> <b>{volume(litres)}</b>
          <span className="pit-bar" aria-hidden="true">
            <span style={{ width: `${share * 100}%` }} />
          </span>
        </li>
      ))}
    </ul>
  )
}

/** Hazards of whoever builds or enters a pit; those of its dig are told by its own depth. */
const AT_PIT: ReadonlySet<string> = new Set(['pit', 'electricity', 'overflow'])

/** What stands on the paper of whoever digs, lines, wires or enters the pit. */
function Cautions({ part, holdDown }: { readonly part: PartId; readonly holdDown: string | undefined }) {
  const units = usePlannerState((state) => state.units)
  const depthMm = usePlannerState((state) =>
    Math.max(
      0,
      ...(state.evaluation.bay.builtOf.get(part)?.bodies ?? [])
        .filter(({ role }) => role === 'pit')
        .map(({ fromMm }) => -fromMm),
    ),
  )
  const settled = usePlannerState((state) => state.settled)
  const atPit = useMemo(
    () => hazardsOf(settled, units).filter(({ key }) => AT_PIT.has(key)),
    [settled, units],
  )
  return (
    <section className="pit-cautions">
      <h3>Before anyone digs, wires or goes in</h3>
      {atPit.map(({ key, title, words }) => (
        <p key={key}>
          <b>{title}:</b> {words}
        </p>
      ))}
      {holdDown !== undefined && (
        <p>
          <b>Floating:</b> {holdDown}
        </p>
      )}
      {digCautions(depthMm, units).map((words) => (
        <p key={words}>{words}</p>
      ))}
    </section>
  )
}

interface ToldProps {
  readonly part: PartId
  readonly pit: PitFacts
  readonly spent: PitReturn
}

/** Everything about the pit that is not in its picture. */
function Told({ part, pit, spent }: ToldProps) {
  const [bay, units] = usePlannerState((state) => [state.evaluation.bay, state.units])
  const writer = useTrenchWriter()
  const system = systemWater(bay)
  const figures = pitFigures(bay, part, system)
  return (
    <div className="pit-told">
      <section>
        <h3>What comes home when the pump stops</h3>
        <ChartTable title="What comes home" table={transitRows(spent.transit, writer)} />
        <HoldUpField />
      </section>
      <section>
        <h3>How long it lasts</h3>
        {figures && <RowFigures figures={pitFigureRows(figures, system, writer)} />}
        {figures?.isUnderCodeSize && (
          <p className="water-note">
            Smaller than a plumbing code’s least sump, 18 in across and 30 in deep (457 x 762 mm). From
            memory.
          </p>
        )}
      </section>
      <section className="pit-paint">
        <h3>Paint on the wall</h3>
        <ChartTable title="Paint on the wall" table={paintRows(paintMarks(pit, PAINT_STEP[units]), writer)} />
      </section>
      <Cautions part={part} holdDown={figures?.holdDown} />
    </div>
  )
}

function Pit({ part, pit, spent }: ToldProps) {
  const evaluation = usePlannerState((state) => state.evaluation)
  const { layout, bay } = evaluation
  const { name } = useWords(layout.parts)
  const writer = useTrenchWriter()
  const body = bay.builtOf.get(part)?.bodies.find(({ role }) => role === 'pit')
  const floors = (body?.outline ?? []).map(({ x, y }) => bay.site.groundAt(x, y))
  const words = (id: PartId) => {
    const state = bay.returns.pits.get(id)?.state
    return state === undefined ? name(id) : `${name(id)}: ${state}`
  }
  return (
    <div className="pit-view">
      <div className="pit-side">
        <PartChoice label="Pit" shown={part} parts={pitParts(evaluation)} words={words} />
        <p role="status">
          <StateMark word={spent.state} rank={rankOf({ subject: 'pit', state: spent.state })} />{' '}
          <Said words={roomSentence(spent, writer)} />
        </p>
        <SizePit part={part} name={name(part)} />
        <Room spent={spent} />
      </div>
      <figure className="pit-figure">
        <PitSection part={part} pit={pit} spent={spent} floorMm={Math.max(...floors, -1e9)} />
        <figcaption className="water-note">
          Across its shorter side, to scale. Drag a level, step it with the arrow keys, or press Enter on it
          and type.
        </figcaption>
      </figure>
      <Told part={part} pit={pit} spent={spent} />
    </div>
  )
}

/** A pit with its levels and volumes, what comes home to it, and what is painted on its wall. */
export default function PitView() {
  const [evaluation, selection] = usePlannerState((state) => [state.evaluation, state.selection])
  const part = shownPit(evaluation, selection)
  const pit = part === undefined ? undefined : evaluation.bay.builtOf.get(part)?.pit
  const spent = part === undefined ? undefined : evaluation.bay.returns.pits.get(part)
  if (part === undefined || !pit || !spent)
    return (
      <p className="water-none">
        No pit is dug in this bay yet, so its water has nowhere to come home to. Drag a pit from the shelf to
        the low end of a drain.
      </p>
    )
  return <Pit part={part} pit={pit} spent={spent} />
}
