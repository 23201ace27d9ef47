import type { LiftWord } from '../evaluate/handling/lifted'
import type { StateWord } from '../model/finding'
import type { PaperState } from '../sheets/sheetState'
import './state.css'

const classes = ['state-good', 'state-watch', 'state-bad'] as const

/** The shape beside a state word: a ring is well, a triangle is to be looked at, a filled square must be mended. */
function Shape({ rank }: { readonly rank: number }) {
  if (rank === 0) return <circle cx="7" cy="7" r="5" fill="none" stroke="currentColor" strokeWidth="2.4" />
  if (rank === 1)
    return (
      <path d="M7 1.8 13 12.4H1z" fill="none" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
    )
  return <rect x="1.5" y="1.5" width="11" height="11" fill="currentColor" />
}

interface StateMarkProps {
  readonly word: StateWord | PaperState | LiftWord
  /** 0 good, 1 to be looked at, 2 to be mended. */
  readonly rank: number
  readonly count?: number
}

/** A state, always as word and shape; colour only helps. */
export function StateMark({ word, rank, count = 0 }: StateMarkProps) {
  return (
    <span className={`state ${classes[rank] ?? ''}`}>
      <svg viewBox="0 0 14 14" width="12" height="12" aria-hidden="true">
        <Shape rank={rank} />
      </svg>
      {count > 0 && <b>{count}</b>} {word}
    </span>
  )
}
