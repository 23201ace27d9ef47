import { type FormEvent, useState } from 'react'
import { acceptFinding } from '../layout/bayEdits'
import type { Finding } from '../model/finding'
import { usePlanner } from '../store/react'
import { ruleOf } from '../checks/index'
import { commitEdited } from './commitEdited'

interface AcceptFormProps {
  readonly finding: Finding
  readonly onDone: () => void
}

/** Takes the reason for which the builder lives with a finding, and who says so. */
export function AcceptForm({ finding, onDone }: AcceptFormProps) {
  const planner = usePlanner()
  // Whoever accepted the last warning most likely accepts this one.
  const lastBy = planner.store.getState().layout.settings.accepted.at(-1)?.by ?? ''
  const [reason, setReason] = useState('')
  const [by, setBy] = useState(lastBy)
  const [refusal, setRefusal] = useState<string>()
  const accept = (event: FormEvent) => {
    event.preventDefault()
    const refused = commitEdited(planner, `Accept: ${ruleOf(finding.rule).title}`, (layout) =>
      acceptFinding(layout, finding.key, reason, by),
    )
    setRefusal(refused)
    if (refused === undefined) onDone()
  }
  return (
    <form className="accept" onSubmit={accept}>
      <label>
        Reason, which prints on the sheet
        <textarea
          required
          autoFocus
          rows={2}
          maxLength={300}
          value={reason}
          onChange={(e) => setReason(e.target.value)}
        />
      </label>
      <label>
        Accepted by
        <input required maxLength={60} value={by} onChange={(e) => setBy(e.target.value)} />
      </label>
      {refusal && (
        <p role="alert" className="refused">
          {refusal}
        </p>
      )}
      <div className="warning-does">
        <button type="submit">Accept</button>
        <button type="button" onClick={onDone}>
          Leave it
        </button>
      </div>
    </form>
  )
}
