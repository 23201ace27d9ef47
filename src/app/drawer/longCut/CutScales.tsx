import { multiples, rulerStep, tickWords } from '../../../canvas/rulerSteps'
import type { LongCut } from '../../../evaluate/longCut/section'
import { useLevelReading } from '../../../store/useLevelReading'
import type { Units } from '../../../units/length'
import { unitsOfLevels } from '../../../units/writeLevel'
import type { Writer } from '../../../units/writer'
import type { CutScale } from './cutScale'

interface ScalesProps {
  readonly cut: LongCut
  readonly scale: CutScale
  readonly units: Units
  readonly writer: Writer
}

/** Words of the level scale are lines of text, and stand closer than those of a ruler that lies. */
const UPRIGHT_SHARE = 2.2

/** Levels at the left edge of the drawing, where they read round numbers. */
function LevelScale({ scale, units, writer }: Omit<ScalesProps, 'cut'>) {
  const { left, top, bottom, yOf, highMm, levelAt, pxPerMm, times } = scale
  const reading = useLevelReading()
  const { zeroMm } = reading
  const step = rulerStep(pxPerMm * times * UPRIGHT_SHARE, unitsOfLevels(units, reading))
  const read = multiples(levelAt(bottom + 8) + zeroMm, highMm + zeroMm, step.majorMm)
  const ticks = read.map((mm) => mm - zeroMm)
  const x = left - 6
  return (
    <g className="cut-scale">
      <path d={`M${x} ${top}V${bottom + 8}${ticks.map((mm) => `M${x - 5} ${yOf(mm)}h10`).join('')}`} />
      {ticks.map((mm) => (
        <text key={mm} x={x - 8} y={yOf(mm) + 4} textAnchor="end">
          {writer.level(mm)}
        </text>
      ))}
    </g>
  )
}

/** Lengths from the pit's wall back up the drain, along the foot of the drawing. */
function LengthScale({ cut, scale, units, writer }: ScalesProps) {
  const { xOf, bottom, pxPerMm } = scale
  const step = rulerStep(pxPerMm, units)
  const ticks = multiples(0, cut.wallMm, step.majorMm)
  const y = bottom + 20
  return (
    <g className="cut-scale">
      <path
        d={`M${xOf(0)} ${y}H${xOf(cut.wallMm)}${ticks.map((mm) => `M${xOf(cut.wallMm - mm)} ${y - 5}v10`).join('')}`}
      />
      {ticks.map((mm) => (
        <text key={mm} x={xOf(cut.wallMm - mm)} y={y + 18} textAnchor="middle">
          {tickWords(mm, step, units, writer)}
        </text>
      ))}
    </g>
  )
}

export function CutScales(props: ScalesProps) {
  return (
    <>
      <LevelScale {...props} />
      <LengthScale {...props} />
    </>
  )
}
