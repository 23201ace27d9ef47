import { X } from 'lucide-react'
import { usePlanner, usePlannerState } from '../store/react'

/** One line for the person, until they put it away. */
export function Notice() {
  const planner = usePlanner()
  const notice = usePlannerState((state) => state.notice)
  return (
    <div aria-live={notice?.tone === 'trouble' ? 'assertive' : 'polite'}>
      {notice && (
        <div className={`notice notice-${notice.tone}`}>
          <span>{notice.text}</span>
          <button aria-label="Put away" onClick={() => planner.set({ notice: undefined })}>
            <X size={16} />
          </button>
        </div>
      )}
    </div>
  )
}
