import { Save, X } from 'lucide-react'
import { useCallback, useEffect, useState } from 'react'
import { Said } from '../sidebar/Said'
import type { Notice as Line } from '../store/planner'
import { usePlanner, usePlannerState } from '../store/react'

/** Long enough to look up from the floor and read two sentences, ms. */
const READ_MS = 8000

interface NoticeProps {
  /** Saves the open bay as a file. */
  readonly onSave: () => void
}

/** Puts away what was only said once it can have been read; what went wrong stays until the person has seen to it. */
const usePutAway = ({ tone }: Line, isHeld: boolean, putAway: () => void) =>
  useEffect(() => {
    if (tone !== 'said' || isHeld) return undefined
    const timer = setTimeout(putAway, READ_MS)
    return () => clearTimeout(timer)
  }, [tone, isHeld, putAway])

interface NoticeLineProps extends NoticeProps {
  readonly notice: Line
  readonly putAway: () => void
}

/** A notice stays for as long as the pointer or the focus is on it. */
function NoticeLine({ notice, putAway, onSave }: NoticeLineProps) {
  const [isPointed, setIsPointed] = useState(false)
  const [isFocused, setIsFocused] = useState(false)
  usePutAway(notice, isPointed || isFocused, putAway)
  return (
    <div
      className={`notice notice-${notice.tone}`}
      onPointerEnter={() => setIsPointed(true)}
      onPointerLeave={() => setIsPointed(false)}
      onFocus={() => setIsFocused(true)}
      onBlur={() => setIsFocused(false)}
    >
      <span>
        <Said words={notice.text} />
      </span>
      {notice.offers === 'file' && (
        <button onClick={onSave}>
          <Save size={18} /> Save as a file
        </button>
      )}
      <button aria-label="Put away" onClick={putAway}>
        <X size={16} />
      </button>
    </div>
  )
}

/** One line for the person. */
export function Notice({ onSave }: NoticeProps) {
  const { set } = usePlanner()
  const notice = usePlannerState((state) => state.notice)
  const putAway = useCallback(() => set({ notice: undefined }), [set])
  return (
    <div aria-live={notice?.tone === 'trouble' ? 'assertive' : 'polite'}>
      {notice && <NoticeLine key={notice.text} notice={notice} putAway={putAway} onSave={onSave} />}
    </div>
  )
}
