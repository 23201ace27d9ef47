import { clipped } from '../../drawing/lettering'
import type { Stack } from '../../evaluate/levelStack'
import { STAFF, WIDTH } from './places'

interface PoleHeadProps {
  readonly stack: Stack
  /** Where the levels are read from, in words. */
  readonly from: string
  /** Goes to another line of the row; undefined while the pole follows the pointer, which picks the line. */
  readonly onLine: ((line: number) => void) | undefined
}

/** The other lines of a row, one press away. */
function Lines({ stack: { line, lines }, onLine }: PoleHeadProps) {
  return (
    <div className="pole-lines">
      {onLine && (
        <button aria-label="Line before" disabled={line <= 1} onClick={() => onLine(line - 1)}>
          ◂
        </button>
      )}
      <span>{`line ${line} of ${lines}`}</span>
      {onLine && (
        <button aria-label="Line after" disabled={line >= lines} onClick={() => onLine(line + 1)}>
          ▸
        </button>
      )}
    </div>
  )
}

/** Whose levels they are, and from where they are read. */
export function PoleHead(props: PoleHeadProps) {
  const { stack, from } = props
  const name = stack.lines > 1 ? stack.whose.replace(/, line \d+$/, '') : stack.whose
  return (
    <div className="pole-head">
      <p className="pole-whose">{clipped(name, 13, WIDTH - STAFF.left - 6)}</p>
      {stack.lines > 1 && <Lines {...props} />}
      <p className="pole-from">{clipped(from, 12, WIDTH - STAFF.left - 6)}</p>
    </div>
  )
}
