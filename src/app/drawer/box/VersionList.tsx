import { useState } from 'react'
import { isSamePlan, planOf } from '../../../layout/issues'
import type { Layout } from '../../../layout/schema'
import {
  dropVersion,
  freeVersionName,
  keepVersion,
  openPlan,
  renameVersion,
  type Version,
} from '../../../layout/versions'
import { commitEdited } from '../../../sidebar/commitEdited'
import { usePlanner, usePlannerState } from '../../../store/react'
import { today } from '../prices/today'
import { dayWords } from '../../paperNames'

/** Whether the bay as it is stands among what is kept, so that nothing goes when another takes its place. */
const isKept = (layout: Layout): boolean => {
  const { issued, versions } = layout.papers
  const plans = [...(issued ? [issued] : []), ...versions.map(({ plan }) => plan)]
  return plans.some((plan) => isSamePlan(plan, planOf(layout)))
}

interface OpenProps {
  readonly version: Version
  readonly onDone: () => void
}

/** Offers to keep the bay as it is before a version takes its place. */
function OpenInstead({ version: { name, plan }, onDone }: OpenProps) {
  const planner = usePlanner()
  const layout = usePlannerState((state) => state.layout)
  const free = freeVersionName(layout)
  const open = (keepFirst: boolean) => {
    const fault = commitEdited(planner, `Open ${name}`, (before) => {
      const kept = keepFirst ? keepVersion(before, free, today()) : { ok: true as const, layout: before }
      return kept.ok ? { ok: true, layout: openPlan(kept.layout, plan) } : kept
    })
    if (fault !== undefined) planner.set({ notice: { tone: 'trouble', text: fault } })
    onDone()
  }
  return (
    <div className="box-open" role="group" aria-label={`Open ${name}`}>
      <p className="water-note">
        {isKept(layout)
          ? 'The bay as it is stands among the versions or the last issue.'
          : 'The bay as it is stands nowhere else; undo brings it back all the same.'}{' '}
        What is cut stays noted as cut.
      </p>
      {!isKept(layout) && <button onClick={() => open(true)}>Keep as “{free}” and open</button>}
      <button onClick={() => open(false)}>{isKept(layout) ? `Open ${name}` : 'Open without keeping'}</button>
      <button onClick={onDone}>Leave it</button>
    </div>
  )
}

interface RenameProps {
  readonly name: string
  readonly onDone: () => void
}

function Rename({ name, onDone }: RenameProps) {
  const planner = usePlanner()
  const [typed, setTyped] = useState(name)
  const [fault, setFault] = useState<string>()
  return (
    <form
      className="box-open"
      onSubmit={(event) => {
        event.preventDefault()
        const refused = commitEdited(planner, `Rename ${name}`, (layout) =>
          renameVersion(layout, name, typed),
        )
        setFault(refused)
        if (refused === undefined) onDone()
      }}
    >
      <label>
        New name
        <input autoFocus value={typed} maxLength={80} onChange={(event) => setTyped(event.target.value)} />
      </label>
      <button type="submit">Rename</button>
      <button type="button" onClick={onDone}>
        Leave it
      </button>
      <p role="status" className="water-note">
        {fault}
      </p>
    </form>
  )
}

type Doing = { readonly what: 'open' | 'rename'; readonly name: string }

/** Every version that is kept: its name, its day, and what can be done with it. */
export function VersionList() {
  const planner = usePlanner()
  const versions = usePlannerState((state) => state.layout.papers.versions)
  const [doing, setDoing] = useState<Doing>()
  if (versions.length === 0)
    return (
      <p className="water-none">
        No version of this bay is kept yet. Keep one before you try another way: the two then stand side by
        side.
      </p>
    )
  const onDone = () => setDoing(undefined)
  return (
    <ul className="box-versions" aria-label="Versions">
      {versions.map((version) => {
        const { name, date } = version
        const isDoing = (what: Doing['what']) => doing?.name === name && doing.what === what
        return (
          <li key={name}>
            <b>{name}</b>
            <small>{dayWords(date)}</small>
            <span className="box-deeds">
              <button aria-expanded={isDoing('open')} onClick={() => setDoing({ what: 'open', name })}>
                Open
              </button>
              <button aria-expanded={isDoing('rename')} onClick={() => setDoing({ what: 'rename', name })}>
                Rename
              </button>
              <button onClick={() => planner.commit(`Drop ${name}`, (layout) => dropVersion(layout, name))}>
                Drop
              </button>
            </span>
            {isDoing('open') && <OpenInstead version={version} onDone={onDone} />}
            {isDoing('rename') && <Rename name={name} onDone={onDone} />}
          </li>
        )
      })}
    </ul>
  )
}
