import { memo, useId, useMemo } from 'react'
import { StateShape } from '../../../../canvas/StateShape'
import { useTheme } from '../../../../canvas/useTheme'
import { textWidth } from '../../../../drawing/lettering'
import { marksSvg } from '../../../../drawing/svg'
import type { Mark } from '../../../../model/drawing'
import type { RowSpot, StrengthState } from '../../../../model/strength'
import { ringHalf } from '../../../../sheets/assembly/rings'
import { LETTER_MM, PILL_MM, PX_PER_MM } from './glass'
import type { SagLine, Strip } from './sagLine'
import type { Drawing, MemberShape, Pill } from './shape'

/** The same marks as on paper, in the inks of the page. */
const Marks = memo(function Marks({
  marks,
  heightMm,
}: {
  readonly marks: readonly Mark[]
  readonly heightMm: number
}) {
  const theme = useTheme()
  const inside = useMemo(() => marksSvg(marks, theme, heightMm), [marks, theme, heightMm])
  // Written by our own writer, which escapes every word.
  return <g className="bench-marks" dangerouslySetInnerHTML={{ __html: inside }} />
})

const pathOf = ({ seen }: MemberShape, heightMm: number): string => {
  if (seen.as === 'disc') {
    const { at, radius } = seen
    const across = 2 * radius
    return `M${at.x - radius} ${heightMm - at.y}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 ${-across} 0`
  }
  return `M${seen.corners.map(({ x, y }) => `${x.toFixed(3)} ${(heightMm - y).toFixed(3)}`).join('L')}Z`
}

interface MembersProps {
  readonly members: readonly MemberShape[]
  readonly heightMm: number
  readonly states: ReadonlyMap<string, StrengthState>
  readonly lit: string | undefined
  readonly onMark: (mark: string) => void
}

const stateClass = (state: StrengthState | undefined): string =>
  state === 'Too long' ? ' bench-bad' : state === 'Proof-load' ? ' bench-watch' : ''

const Members = memo(function Members({ members, heightMm, states, lit, onMark }: MembersProps) {
  const { washes, pens } = useTheme()
  return members.map((member, index) => (
    <path
      // Several sticks of a row may stand at one place of the drawing.
      key={`${member.key} ${index}`}
      className={`bench-member${member.stuff === 'trough' ? ' bench-trough' : ''}${stateClass(states.get(member.mark))}${lit === member.mark ? ' bench-lit' : ''}`}
      fill={washes[member.stuff].colour}
      stroke={pens[member.stuff].colour}
      d={pathOf(member, heightMm)}
      onClick={() => onMark(member.mark)}
    />
  ))
})

function PillMark({
  pill,
  heightMm,
  state,
  isLit,
}: {
  readonly pill: Pill
  readonly heightMm: number
  readonly state: StrengthState | undefined
  readonly isLit: boolean
}) {
  const { at, point, text, mark } = pill
  const half = ringHalf(text, PILL_MM)
  const [x, y] = [at.x, heightMm - at.y]
  const hasWord = text !== mark
  const startX = x - textWidth(text, LETTER_MM) / 2
  const shapeX = startX + textWidth(`${mark} `, LETTER_MM) + LETTER_MM * 0.4
  return (
    <g className={`bench-pill${hasWord ? stateClass(state) : ''}${isLit ? ' bench-lit' : ''}`}>
      <path className="bench-leader" d={`M${x} ${y}L${point.x} ${heightMm - point.y}`} />
      <circle className="bench-dot" cx={point.x} cy={heightMm - point.y} r={0.45} />
      <rect x={x - half} y={y - PILL_MM} width={2 * half} height={2 * PILL_MM} rx={PILL_MM} />
      {hasWord && state ? (
        <>
          <text x={startX} y={y + 0.36 * LETTER_MM} fontSize={LETTER_MM}>
            {mark}
          </text>
          <g transform={`translate(${shapeX} ${y}) scale(${1 / PX_PER_MM})`}>
            <StateShape state={state} x={0} y={0} />
          </g>
          <text x={shapeX + LETTER_MM * 0.75} y={y + 0.36 * LETTER_MM} fontSize={LETTER_MM}>
            {state}
          </text>
        </>
      ) : (
        <text x={x} y={y + 0.36 * LETTER_MM} fontSize={LETTER_MM} textAnchor="middle">
          {text}
        </text>
      )}
    </g>
  )
}

function Sag({ sag, heightMm }: { readonly sag: SagLine; readonly heightMm: number }) {
  return sag.runs.map((run, index) => (
    <path
      key={index}
      className="bench-sag"
      d={`M${run.map(({ x, y }) => `${x.toFixed(3)} ${(heightMm - y).toFixed(3)}`).join('L')}`}
    />
  ))
}

function Strips({ strips, heightMm }: { readonly strips: readonly Strip[]; readonly heightMm: number }) {
  return strips.map(({ state, from, to }) => (
    <g key={from.x} className={`bench-strip${stateClass(state)}`}>
      <path d={`M${from.x} ${heightMm - from.y}L${to.x} ${heightMm - to.y}`} />
      <g transform={`translate(${(from.x + to.x) / 2} ${heightMm - from.y}) scale(${1 / PX_PER_MM})`}>
        <StateShape state={state} x={0} y={0} />
      </g>
    </g>
  ))
}

const isRail = (mark: string): boolean => mark.startsWith('RL')

interface BenchDrawingProps {
  readonly drawing: Drawing
  readonly title: string
  readonly states: ReadonlyMap<string, StrengthState>
  /** The mark that is lit up. */
  readonly lit: string | undefined
  /** Where a chosen screen is worst. */
  readonly spot: RowSpot | undefined
  readonly sag?: SagLine | undefined
  /** Spans of a rail that are shown instead of the whole rail's state. */
  readonly strips?: readonly Strip[]
  readonly onMark: (mark: string) => void
}

/** One drawing of the bench at its own size, in mm of glass. */
export function BenchDrawing({ drawing, title, states, lit, spot, sag, strips, onMark }: BenchDrawingProps) {
  const id = useId()
  const { widthMm, heightMm, behind, members, over, pills, placeOf } = drawing
  const at = spot && placeOf(spot)
  const memberStates = useMemo(
    () => (strips ? new Map([...states].filter(([mark]) => !isRail(mark))) : states),
    [states, strips],
  )
  return (
    <svg
      className="bench-svg"
      width={widthMm * PX_PER_MM}
      height={heightMm * PX_PER_MM}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="img"
      aria-labelledby={id}
    >
      <title id={id}>{title}</title>
      <Marks marks={behind} heightMm={heightMm} />
      <Members members={members} heightMm={heightMm} states={memberStates} lit={lit} onMark={onMark} />
      {strips && <Strips strips={strips} heightMm={heightMm} />}
      {sag && <Sag sag={sag} heightMm={heightMm} />}
      <Marks marks={over} heightMm={heightMm} />
      {pills.map((pill) => (
        <PillMark
          key={`${pill.mark} ${pill.at.x}`}
          pill={pill}
          heightMm={heightMm}
          state={states.get(pill.mark)}
          isLit={lit === pill.mark}
        />
      ))}
      {at && <circle className="bench-spot" cx={at.x} cy={heightMm - at.y} r={2.2} />}
    </svg>
  )
}
