import { useMemo, useState } from 'react'
import { strengthOf } from '../../../evaluate/5-loads'
import { type Frame, frameOf } from '../../../evaluate/loads/frame'
import type { Part } from '../../../layout/schema'
import { nameOf } from '../../../store/partNames'
import { usePlannerState } from '../../../store/react'
import './bench.css'
import { BenchSide } from './bench/BenchSide'
import { type BenchLook, BenchTools } from './bench/BenchTools'
import { Drawings } from './bench/Drawings'
import { statesOf } from './bench/given'
import { useBenchShown } from './bench/useBenchShown'
import { useBenchGiven } from './bench/useBenchGiven'
import { NoRack } from './RackChoice'
import { useShownRack } from './useShownRack'

interface BenchProps {
  readonly row: Part
  readonly frame: Frame
}

function Bench({ row, frame }: BenchProps) {
  const strength = usePlannerState(({ evaluation }) => strengthOf(evaluation.bay).get(row.id))
  const [look, setLook] = useState<BenchLook>({ isApart: false, zoom: 1, views: undefined })
  const shown = useBenchShown(frame, strength)
  const given = useBenchGiven(frame, strength, shown.stretch)
  const states = useMemo(() => statesOf(strength), [strength])
  return (
    <div className="bench">
      <BenchSide row={row} given={given} states={states} shown={shown} />
      <div className="bench-main">
        <BenchTools racks={frame.rack.racks} shown={shown} look={look} onLook={setLook} />
        <Drawings
          given={given}
          name={nameOf(row)}
          look={look}
          states={states}
          lit={shown.lit}
          spot={shown.screen?.at}
          onMark={shown.light}
        />
      </div>
    </div>
  )
}

/** A row of racks on the bench: along it and across it to scale, or its members apart, with what each of them uses of its strength. */
export default function BenchView() {
  const { bay, layout } = usePlannerState((state) => state.evaluation)
  const shown = useShownRack()
  const row = layout.parts.find(({ id }) => id === shown)
  const built = bay.built.find(({ part }) => part === shown)
  const frame = built && frameOf(built)
  return row && frame ? <Bench key={row.id} row={row} frame={frame} /> : <NoRack />
}
