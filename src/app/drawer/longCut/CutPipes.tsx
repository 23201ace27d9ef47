import type { CutDrain, CutPeg, LongCut } from '../../../evaluate/longCut/section'
import type { StopMoment } from '../../../model/stopRun'
import { crownLine, drainWater, invertLine, pipeShape } from './cutPaths'
import type { CutScale } from './cutScale'

interface PipesProps {
  readonly cut: LongCut
  readonly scale: CutScale
  readonly moment: StopMoment | undefined
}

/** A peg is knocked so far into the floor, px. */
const PEG_FOOT_PX = 7

const pegPath = ({ sMm, groundMm, pegTopMm }: CutPeg, { xOf, yOf }: CutScale): string =>
  `M${xOf(sMm)} ${yOf(groundMm) + PEG_FOOT_PX}V${Math.min(yOf(pegTopMm), yOf(groundMm) - 3)}`

interface PipeProps {
  readonly drain: CutDrain
  readonly scale: CutScale
  readonly share: number
}

function Pipe({ drain, scale, share }: PipeProps) {
  const { xOf, yOf, pxPerMm, times } = scale
  return (
    <g>
      <path className="cut-pipe" d={pipeShape(drain, scale)} />
      <path className="cut-water" d={drainWater(drain, share, scale)} />
      <path className="cut-line" d={crownLine(drain, scale)} />
      <path className="cut-line" d={invertLine(drain, scale)} />
      {drain.branches.map(({ part, sMm, invertMm, odMm }) => (
        <ellipse
          key={part}
          className="cut-branch"
          cx={xOf(sMm)}
          cy={yOf(invertMm + odMm / 2)}
          rx={Math.max(3, (odMm / 2) * pxPerMm)}
          ry={(odMm / 2) * pxPerMm * times}
        />
      ))}
      <path className="cut-peg" d={drain.pegs.map((peg) => pegPath(peg, scale)).join('')} />
    </g>
  )
}

/** Drain lines with their water, where others come in, and the pegs beside the trench. */
export function CutPipes({ cut, scale, moment }: PipesProps) {
  return cut.drains.map((drain) => (
    <Pipe
      key={drain.part}
      drain={drain}
      scale={scale}
      share={moment ? (moment.drainShare.get(drain.part) ?? 0) : 1}
    />
  ))
}
