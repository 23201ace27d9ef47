import { Save, X } from 'lucide-react'
import { Said } from '../sidebar/Said'
import { usePlanner, usePlannerState } from '../store/react'

interface NoticeProps {
  /** Saves the open bay as a file. */
  readonly onSave: () => void
}

/** One line for the person, until they put it away. */
export function Notice({ onSave }: NoticeProps) {
  const planner = usePlanner()
  const notice = usePlannerState((state) => state.notice)
  return (
    <div aria-live={notice?.tone === 'trouble' ? 'assertive' : 'polite'}>
      {notice && (
        <div className={`notice notice-${notice.tone}`}>
          <span>
            <Said words={notice.text} />
          </span>
          {notice.offers === 'file' && (
            <button onClick={onSave}>
              <Save size={18} /> Save as a file
            </button>
          )}
          <button aria-label="Put away" onClick={() => planner.set({ notice: undefined })}>
            <X size={16} />
          </button>
        </div>
      )}
    </div>
  )
}
