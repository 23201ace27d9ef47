import { cartsOf } from '../checks/carts'
import type { Evaluation } from '../evaluate/evaluation'
import { levelReading } from '../layout/levelReading'
import type { Part } from '../layout/schema'
import type { DrainRun } from '../model/levels'
import { usePlannerState } from '../store/react'
import type { Units } from '../units/length'
import { inTrench } from '../units/precision'
import { type Writer, writerFor } from '../units/writer'
import { Fold } from './Fold'
import { PartReturn } from './PartReturn'
import { PartWater } from './PartWater'
import { Readouts } from './Readouts'
import { drainPegs, drainReadouts, pitReadouts, rackReadouts, type Readout } from './readouts'
import { Said } from './Said'
import { ShimTables } from './ShimTables'
import { useWords } from './words'

function Pegs({ run, writer }: { readonly run: DrainRun; readonly writer: Writer }) {
  return (
    <Fold title={<h3>Pegs</h3>}>
      <table className="readout-table">
        <thead>
          <tr>
            <th scope="col">Peg</th>
            <th scope="col">From low end</th>
            <th scope="col">Hole</th>
            <th scope="col">Invert</th>
            <th scope="col">Floor</th>
            <th scope="col">Cut from top</th>
          </tr>
        </thead>
        <tbody>
          {drainPegs(run, writer).map((peg) => (
            <tr key={peg.number}>
              <th scope="row">{peg.number}</th>
              <td>{peg.fromPit}</td>
              <td>{peg.hole}</td>
              <td>{peg.invert}</td>
              <td>{peg.ground}</td>
              <td>{peg.cut}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  )
}

interface ZeroNoteProps {
  readonly bay: Evaluation['bay']
  readonly writer: Writer
}

/** Levels are kept from the bay's zero, which need not be the mark that the crew shoots from. */
function ZeroNote({ bay: { house, settings }, writer }: ZeroNoteProps) {
  const { levelMm, name } = house.benchmark
  if (settings.levelsFrom === 'benchmark')
    return (
      <p className="field-help">
        Levels as shot from {name}, which is called <Said words={writer.level(levelMm)} />.
      </p>
    )
  if (levelMm === 0) return null
  return (
    <p className="field-help">
      Levels from the bay’s zero; the benchmark lies at <Said words={writer.level(levelMm)} />.
    </p>
  )
}

const readoutsOf = (
  part: Part,
  { bay }: Evaluation,
  units: Units,
  trench: Writer,
  nameOf: (part: string) => string,
): readonly Readout[] => {
  const rack = bay.builtOf.get(part.id)?.rack
  const run = bay.levels.drains.get(part.id)
  if (rack) return rackReadouts(rack, cartsOf(bay).get(part.id), bay.settings.wheelchair, units)
  if (run) return drainReadouts(run, trench)
  return pitReadouts(part.id, bay.joins, bay.levels, nameOf, trench)
}

/** What the program worked out of a part, live while it is dragged. */
export function PartReadouts({ part }: { readonly part: Part }) {
  const [units, evaluation] = usePlannerState((state) => [state.units, state.evaluation])
  const { bay } = evaluation
  const words = useWords(evaluation.layout.parts)
  const trench = writerFor(units, inTrench, levelReading(bay.settings, bay.house.benchmark))
  const saw = writerFor(units)
  const run = bay.levels.drains.get(part.id)
  const rack = bay.builtOf.get(part.id)?.rack
  const readouts = readoutsOf(part, evaluation, units, trench, words.name)
  return (
    <>
      <PartWater part={part.id} />
      <PartReturn part={part.id} />
      {readouts.length > 0 && <Readouts lines={readouts} />}
      {readouts.length > 0 && !rack && <ZeroNote bay={bay} writer={trench} />}
      {part.kind === 'rack-row' && rack && (
        <ShimTables row={part} rack={rack} feet={bay.levels.feet.get(part.id) ?? []} writer={saw} />
      )}
      {run && <Pegs run={run} writer={trench} />}
    </>
  )
}
