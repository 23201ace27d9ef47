import { type ReactNode, useId, useRef } from 'react'
import { stateRank } from '../../../canvas/stateInk'
import { StateShape } from '../../../canvas/StateShape'
import type { LongCut } from '../../../evaluate/longCut/section'
import { levelReading } from '../../../layout/levelReading'
import type { StateWord } from '../../../model/finding'
import type { StopMoment } from '../../../model/stopRun'
import { useWords } from '../../../sidebar/words'
import { usePlannerState } from '../../../store/react'
import { inTrench } from '../../../units/precision'
import { writerFor } from '../../../units/writer'
import { useSize } from '../chart/useSize'
import { CutEarth } from './CutEarth'
import { cutLabels, cutTaken, pitTaken } from './cutLabels'
import { CutPipes } from './CutPipes'
import { CutPitPart } from './CutPitPart'
import { CutScales } from './CutScales'
import { type CutScale, cutScale } from './cutScale'
import { CutTroughs } from './CutTroughs'
import { cutSentence } from './cutWords'
import { type Label, labelPlaces, labelRect } from './labelPlaces'
import './longCut.css'

/** A finding at its place on the section. */
export interface CutMark {
  readonly state: StateWord
  readonly sMm: number
  readonly levelMm: number
}

interface LongCutDrawingProps {
  readonly cut: LongCut
  /** The bay at a moment after its pumps stopped; as it runs where there is none. */
  readonly moment?: StopMoment | undefined
  readonly mark?: CutMark | undefined
  /** What lies over the drawing and can be taken hold of. */
  readonly overlay?: ((scale: CutScale) => ReactNode) | undefined
}

/** The writer of levels in the trench, as this bay reads them. */
export const useTrenchWriter = () => {
  const [units, settings, benchmark] = usePlannerState(({ units, evaluation: { layout } }) => [
    units,
    layout.settings,
    layout.house.benchmark,
  ])
  return writerFor(units, inTrench, levelReading(settings, benchmark))
}

const markLabel = ({ state, sMm, levelMm }: CutMark, { xOf, yOf }: CutScale): Label => ({
  key: 'mark',
  text: state,
  x: xOf(sMm) + 11,
  y: yOf(levelMm) + 4,
  anchor: 'start',
  gives: 'up',
})

/** Words of a kind look alike; those of the mark have the ink of its state. */
const wordClass = (key: string, mark: CutMark | undefined): string => {
  const kind = `cut-word cut-word-${key.split('-')[0]}`
  return key === 'mark' && mark && stateRank(mark.state) < 2 ? `${kind} cut-word-watch` : kind
}

function Labels({
  cut,
  scale,
  mark,
}: Pick<LongCutDrawingProps, 'cut' | 'mark'> & { readonly scale: CutScale }) {
  const { name } = useWords(usePlannerState((state) => state.evaluation.layout.parts))
  const writer = useTrenchWriter()
  const { left, right, bottom, xOf, yOf } = scale
  const within = { x0: left, x1: right, y0: 0, y1: bottom + 14 }
  const shape = mark ? [labelRect(xOf(mark.sMm) - 7, yOf(mark.levelMm) + 4, 'MM')] : []
  const taken = [...cutTaken(cut, scale), ...shape]
  const marked = labelPlaces(mark ? [markLabel(mark, scale)] : [], within, taken)
  const words = [
    ...marked,
    ...labelPlaces(cutLabels(cut, scale, { name, writer }), within, [
      ...taken,
      ...pitTaken(cut, scale),
      ...marked.map((label) => labelRect(label.left, label.baseline, label.text)),
    ]),
  ]
  return (
    <>
      {words.map(({ key, text, left: x, baseline }) => (
        <text key={key} className={wordClass(key, mark)} x={x} y={baseline}>
          {text}
        </text>
      ))}
      {mark && (
        <g className={stateRank(mark.state) === 2 ? 'cut-mark-bad' : 'cut-mark-watch'}>
          <StateShape state={mark.state} x={xOf(mark.sMm)} y={yOf(mark.levelMm)} />
        </g>
      )}
    </>
  )
}

/** The long cut, drawn to the size of the room that it gets. */
export function LongCutDrawing({ cut, moment, mark, overlay }: LongCutDrawingProps) {
  const box = useRef<HTMLDivElement>(null)
  const size = useSize(box)
  const id = useId()
  const units = usePlannerState((state) => state.units)
  const { name } = useWords(usePlannerState((state) => state.evaluation.layout.parts))
  const writer = useTrenchWriter()
  const scale = cutScale(cut, size)
  return (
    <div ref={box} className="long-cut-box">
      <svg width={size.width} height={size.height} role="img" aria-labelledby={id}>
        <title id={id}>{cutSentence(cut, scale.times, name, writer)}</title>
        <CutEarth cut={cut} scale={scale} />
        <CutPipes cut={cut} scale={scale} moment={moment} />
        {cut.pit && <CutPitPart pit={cut.pit} scale={scale} moment={moment} writer={writer} />}
        <CutTroughs cut={cut} scale={scale} moment={moment} />
        <CutScales cut={cut} scale={scale} units={units} writer={writer} />
        <text className="cut-times" x={4} y={14}>
          Heights × {scale.times}
        </text>
        <Labels cut={cut} scale={scale} mark={mark} />
      </svg>
      {overlay?.(scale)}
    </div>
  )
}
