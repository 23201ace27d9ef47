import { Copy, FlipHorizontal2, FlipVertical2, Lock, LockOpen, RotateCcw, Trash2 } from 'lucide-react'
import type { Part } from '../layout/schema'
import { copyNow } from '../store/copying'
import { deleteNow, lockNow, mirrorNow, turnNow } from '../store/partDeeds'
import { usePlanner } from '../store/react'
import { Fold } from './Fold'
import { RepeatForm } from './RepeatForm'

const ICON = { size: 15, 'aria-hidden': true } as const

/** The tab over the panel that something stands in: where the focus goes before the panel changes. */
const tabOver = (element: Element): HTMLElement | null => {
  const id = element.closest('[role="tabpanel"]')?.getAttribute('aria-labelledby')
  return id ? document.getElementById(id) : null
}

/** What can be done with one part, or with several at once. */
export function PartActions({ parts }: { readonly parts: readonly Part[] }) {
  const planner = usePlanner()
  const ids = parts.map(({ id }) => id)
  const areLocked = parts.every(({ locked }) => locked)
  const act = (deed: () => string) => () => planner.say(deed())
  return (
    <div className="part-actions">
      <div className="part-actions-row" role="group" aria-label="Actions">
        <button onClick={act(() => lockNow(planner, ids, !areLocked))}>
          {areLocked ? <LockOpen {...ICON} /> : <Lock {...ICON} />} {areLocked ? 'Unlock' : 'Lock'}
        </button>
        <button disabled={areLocked} onClick={act(() => turnNow(planner, ids))}>
          <RotateCcw {...ICON} /> Turn a quarter
        </button>
        <button disabled={areLocked} onClick={act(() => mirrorNow(planner, ids, 'x'))}>
          <FlipVertical2 {...ICON} /> Mirror east-west
        </button>
        <button disabled={areLocked} onClick={act(() => mirrorNow(planner, ids, 'y'))}>
          <FlipHorizontal2 {...ICON} /> Mirror north-south
        </button>
        <button onClick={act(() => copyNow(planner, ids))}>
          <Copy {...ICON} /> Copy
        </button>
        <button
          disabled={areLocked}
          onClick={(event) => {
            tabOver(event.currentTarget)?.focus()
            planner.say(deleteNow(planner, ids))
          }}
        >
          <Trash2 {...ICON} /> Delete
        </button>
      </div>
      <Fold title="Repeat at a spacing">
        <RepeatForm ids={ids} />
      </Fold>
    </div>
  )
}
