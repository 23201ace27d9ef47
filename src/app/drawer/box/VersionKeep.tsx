import { Layers } from 'lucide-react'
import { type FormEvent, useId, useState } from 'react'
import { freeVersionName, keepVersion } from '../../../layout/versions'
import { commitEdited } from '../../../sidebar/commitEdited'
import { usePlanner, usePlannerState } from '../../../store/react'
import { today } from '../prices/today'

/** Keeps the bay as it is under a name. */
export function VersionKeep() {
  const planner = usePlanner()
  const free = usePlannerState((state) => freeVersionName(state.layout))
  const [typed, setTyped] = useState<string>()
  const [fault, setFault] = useState<string>()
  const saysFault = useId()
  const name = typed ?? free
  const keep = (event: FormEvent) => {
    event.preventDefault()
    const refused = commitEdited(planner, `Keep ${name.trim()}`, (layout) =>
      keepVersion(layout, name, today()),
    )
    setFault(refused)
    if (refused === undefined) setTyped(undefined)
  }
  return (
    <form className="box-words" onSubmit={keep}>
      <label>
        Name of the version
        <input
          value={name}
          maxLength={80}
          aria-describedby={saysFault}
          aria-invalid={fault !== undefined}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <button type="submit">
        <Layers size={18} /> Keep the bay as it is
      </button>
      <p id={saysFault} role="status" className="water-note">
        {fault}
      </p>
    </form>
  )
}
