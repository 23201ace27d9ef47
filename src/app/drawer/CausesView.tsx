import { governs, type Governs } from '../../evaluate/water/governs'
import type { Cause } from '../../evaluate/water/whatIf'
import { useWords } from '../../sidebar/words'
import { usePlannerState } from '../../store/react'
import type { Writer } from '../../units/writer'
import { NoRow, RowChoice } from './RowChoice'
import { inOne } from './steps'
import { useAnswer } from './useAnswer'
import { useShownRow } from './useShownRow'

/** What each cause is, and what would take it away. */
const causeWords: Readonly<Record<Cause, { readonly name: string; readonly mend: string }>> = {
  main: {
    name: 'Main and zone pipes',
    mend: 'A wider main, the pump in its middle, or trim valves set by the valve card.',
  },
  level: {
    name: 'Level of the tube ends',
    mend: 'Rails level, and every tube end at one height on its tower.',
  },
  lateral: {
    name: 'Friction along the laterals',
    mend: 'Split the feed, a wider lateral, or tubes cut by station.',
  },
  header: { name: 'Riser pipe, header and valves', mend: 'A wider header, or trim valves opened further.' },
  temperature: {
    name: 'Water that is not at 20 °C',
    mend: 'Balance the bay at the temperature that it works at.',
  },
  bore: { name: 'Tubes of unlike bore', mend: 'One bore in the whole bay.' },
  length: {
    name: 'Tubes of unlike length',
    mend: 'All tubes cut at one stop, but where they are graded on purpose.',
  },
}

interface RulingsProps {
  readonly title: string
  readonly found: Governs
  readonly words: Pick<Writer, 'share'>
}

function Bar({ share }: { readonly share: number }) {
  return (
    <span className="water-bar" aria-hidden="true">
      <span style={{ width: `${Math.max(0, Math.min(1, share)) * 100}%` }} />
    </span>
  )
}

function Rulings({ title, found, words: { share } }: RulingsProps) {
  const named = found.rulings.filter((ruling) => Math.abs(ruling.share) >= 0.005)
  return (
    <section>
      <h3>{title}</h3>
      <p>
        Spread as drawn: {share(found.spread)}; coefficient of variation {share(found.variation)}.
      </p>
      {named.length === 0 ? (
        <p>Nothing makes its towers differ by more than a cup and a watch would show.</p>
      ) : (
        <ol className="water-causes">
          {named.map(({ cause, share: part, spreadWithout }) => (
            <li key={cause}>
              <b>{causeWords[cause].name}</b>
              <Bar share={part} />
              <span>
                {part < 0
                  ? `hides ${share(-part)} of it: without it the spread would be ${share(spreadWithout)}`
                  : `${share(part)}: without it the spread would be ${share(spreadWithout)}`}
              </span>
              <i>{causeWords[cause].mend}</i>
            </li>
          ))}
        </ol>
      )}
    </section>
  )
}

/** What makes the bay and one row uneven, the greatest first. */
export default function CausesView() {
  const evaluation = usePlannerState((state) => state.evaluation)
  const words = useWords(evaluation.layout.parts)
  const shown = useShownRow()
  const { answer, isCurrent } = useAnswer('bay', [evaluation.bay], () => inOne(() => governs(evaluation.bay)))
  if (shown === undefined) return <NoRow />
  const row = answer?.rows.get(shown)
  return (
    <div className={isCurrent ? 'water-view' : 'water-view water-stale'} aria-busy={!isCurrent}>
      <RowChoice shown={shown} />
      {answer ? (
        <div className="water-two">
          <Rulings title="In the whole bay" found={answer.bay} words={words} />
          {row ? (
            <Rulings title={`In ${words.name(shown)}`} found={row} words={words} />
          ) : (
            <p className="water-none">{words.name(shown)} gets no water.</p>
          )}
        </div>
      ) : (
        <p className="water-none">
          {isCurrent ? 'No water runs in this bay yet.' : 'Switching each cause off in turn …'}
        </p>
      )}
      <p className="water-note">
        Each cause is switched off alone and the bay solved again; its share is by how much the variation of
        the towers falls. Shares do not add up to 100 %: one cause may hide or feed another.
      </p>
    </div>
  )
}
