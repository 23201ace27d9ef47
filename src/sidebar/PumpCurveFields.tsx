import { Plus, X } from 'lucide-react'
import { useState } from 'react'
import { pumpCurveRowOf } from '../catalogue/pumpCurves'
import type { Layout } from '../layout/schema'
import { setField } from '../layout/setField'
import type { PumpPoint } from '../model/supplyFacts'
import { MOST_CURVE_POINTS, type Sump } from '../parts/sump/schema'
import { nameOf } from '../store/partNames'
import { usePlanner } from '../store/react'
import type { Units } from '../units/length'
import { writerFor } from '../units/writer'
import { commitEdited } from './commitEdited'
import { fieldWriter, type Typed } from './fieldText'
import { Fold } from './Fold'
import { curvePointAfter, curveSentence, readPumpFlow, readPumpHead } from './pumpCurveRows'
import { Said } from './Said'
import { TypedField } from './TypedField'

const FEWEST_POINTS = 3

interface PumpCurveProps {
  readonly pit: Sump
  readonly units: Units
}

/** The curve of one of the invented pumps, to be read and to begin from. */
function GivenCurve({ pit, units }: PumpCurveProps & { readonly pit: Sump & { readonly pump: Given } }) {
  const planner = usePlanner()
  const { title, curve, source } = pumpCurveRowOf(pit.pump)
  const { flowTotal, pumpHead } = writerFor(units)
  const typeOwn = (layout: Layout) => {
    const own = setField(layout, pit.id, 'curve', curve)
    return own.ok ? setField(own.layout, pit.id, 'pump', 'own') : own
  }
  return (
    <>
      <table className="readout-table">
        <thead>
          <tr>
            <th scope="col">Flow</th>
            <th scope="col">Head</th>
          </tr>
        </thead>
        <tbody>
          {curve.map(({ flowLph, headMm }) => (
            <tr key={flowLph}>
              <th scope="row">{flowTotal(flowLph)}</th>
              <td>{pumpHead(headMm)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="field-help">
        {title}. {source}.
      </p>
      <button
        className="length-table-add"
        onClick={() => commitEdited(planner, `Own pump curve of ${nameOf(pit)}`, typeOwn)}
      >
        Type my own, beginning with this one
      </button>
    </>
  )
}

type Given = Exclude<Sump['pump'], 'own'>

const withPoint = (points: readonly PumpPoint[], index: number, change: Partial<PumpPoint>): PumpPoint[] =>
  points.map((point, i) => (i === index ? { ...point, ...change } : point))

interface CurveRowProps {
  readonly points: readonly PumpPoint[]
  readonly index: number
  readonly units: Units
  readonly onPoints: (points: readonly PumpPoint[]) => string | undefined
}

function CurveRow({ points, index, units, onPoints }: CurveRowProps) {
  const { flowTotal, pumpHead } = fieldWriter(units)
  const point = points[index] ?? { flowLph: 0, headMm: 0 }
  const take = (key: keyof PumpPoint, read: (text: string, units: Units) => Typed) => (text: string) => {
    const typed = read(text, units)
    return typed.ok ? onPoints(withPoint(points, index, { [key]: Number(typed.value) })) : typed.sentence
  }
  return (
    <div role="group" aria-label={`Point ${index + 1}`}>
      <span className="length-table-number">{index + 1}</span>
      <TypedField
        label={`Point ${index + 1}, flow`}
        isLabelHidden
        shown={flowTotal(point.flowLph)}
        onTyped={take('flowLph', readPumpFlow)}
      />
      <TypedField
        label={`Point ${index + 1}, head`}
        isLabelHidden
        shown={pumpHead(point.headMm)}
        onTyped={take('headMm', readPumpHead)}
      />
      <button
        className="length-table-one"
        aria-label={`Put in a point after ${index + 1}`}
        title={`Put in a point after ${index + 1}`}
        disabled={points.length >= MOST_CURVE_POINTS}
        onClick={() => onPoints(points.toSpliced(index + 1, 0, curvePointAfter(points, index)))}
      >
        <Plus size={14} aria-hidden="true" />
      </button>
      <button
        className="length-table-one"
        aria-label={`Delete point ${index + 1}`}
        disabled={points.length <= FEWEST_POINTS}
        onClick={() => onPoints(points.filter((_, i) => i !== index))}
      >
        <X size={14} aria-hidden="true" />
      </button>
    </div>
  )
}

/** Points while they are typed one after another and are no curve yet; dropped once the pit's own has changed. */
interface Draft {
  readonly of: Sump['curve']
  readonly points: readonly PumpPoint[]
}

/** A curve typed from a label. Points that are no curve yet stay in the table with what is wrong; a curve is taken. */
function OwnCurve({ pit, units }: PumpCurveProps) {
  const planner = usePlanner()
  const [draft, setDraft] = useState<Draft>()
  const points = draft?.of === pit.curve ? draft.points : pit.curve
  const sentence = curveSentence(points, writerFor(units))
  const take = (after: readonly PumpPoint[]) => {
    setDraft({ of: pit.curve, points: after })
    if (curveSentence(after, writerFor(units)) !== undefined) return undefined
    return commitEdited(planner, `Pump curve of ${nameOf(pit)}`, (layout) =>
      setField(layout, pit.id, 'curve', after),
    )
  }
  return (
    <>
      <div className="length-table" style={{ gridTemplateColumns: 'auto 1fr 1fr auto auto' }}>
        <span />
        {['Flow', 'Head'].map((column) => (
          <span key={column} className="length-table-head" aria-hidden="true">
            {column}
          </span>
        ))}
        <span />
        <span />
        {points.map((_, index) => (
          // Points have no name but their place: a changed order is a changed table.
          <CurveRow key={index} points={points} index={index} units={units} onPoints={take} />
        ))}
      </div>
      {sentence && (
        <p role="alert" className="field-refused">
          <Said words={`Not taken yet. ${sentence}`} />
        </p>
      )}
      <p className="field-help">
        As the label prints it, for one pump: {units === 'metric' ? 'litres' : 'gallons'} a minute and{' '}
        {units === 'metric' ? 'metres' : 'feet'} need no sign.
      </p>
    </>
  )
}

const isGiven = (pit: Sump): pit is Sump & { readonly pump: Given } => pit.pump !== 'own'

/** The curve of a pit's pump: read for an invented one, typed for one's own. */
export function PumpCurveFields({ pit, units }: PumpCurveProps) {
  if (pit.pumps === 0) return null
  return (
    <Fold title={<h3>Pump curve</h3>}>
      {isGiven(pit) ? <GivenCurve pit={pit} units={units} /> : <OwnCurve pit={pit} units={units} />}
    </Fold>
  )
}
