import { useMemo, useState } from 'react'
import type { Part } from '../../../../layout/schema'
import type { StrengthState } from '../../../../model/strength'
import { useWords } from '../../../../sidebar/words'
import { usePlannerState } from '../../../../store/react'
import { RackChoice } from '../RackChoice'
import type { BenchGiven } from './given'
import { MemberList } from './MemberList'
import { RackFields } from './RackFields'
import { screenKey, MemberScreens } from './MemberScreens'
import { countedIn } from './stretch'
import type { BenchShown } from './useBenchShown'

const panels = { strength: 'Strength', members: 'Members', change: 'Change' } as const
type Panel = keyof typeof panels

interface BenchSideProps {
  readonly row: Part
  readonly given: BenchGiven
  readonly states: ReadonlyMap<string, StrengthState>
  readonly shown: BenchShown
}

function PanelBody({ panel, row, given, states, shown }: BenchSideProps & { readonly panel: Panel }) {
  const words = useWords(usePlannerState((state) => state.evaluation.layout.parts))
  const { frame, stretch, strength } = given
  const members = useMemo(() => countedIn(frame, stretch), [frame, stretch])
  if (panel === 'change') return <RackFields row={row} />
  if (panel === 'members')
    return <MemberList members={members} states={states} words={words} lit={shown.lit} onMark={shown.light} />
  return (
    <MemberScreens
      strength={strength}
      words={words}
      open={shown.screen && screenKey(shown.screen)}
      onOpen={shown.open}
    />
  )
}

/** Beside the drawings: which row, then what its members use of their strength, what it is made of, or what it is built by. */
export function BenchSide(props: BenchSideProps) {
  const [panel, setPanel] = useState<Panel>('strength')
  return (
    <div className="bench-side">
      <RackChoice shown={props.row.id} />
      <div className="bench-choice" role="group" aria-label="Beside the drawing">
        {Object.entries(panels).map(([key, title]) => (
          <button
            key={key}
            aria-pressed={key === panel}
            // A key of `panels`, whose entries these are.
            onClick={() => setPanel(key as Panel)}
          >
            {title}
          </button>
        ))}
      </div>
      <div className="bench-panel" role="region" aria-label={panels[panel]} tabIndex={0}>
        <PanelBody {...props} panel={panel} />
      </div>
    </div>
  )
}
