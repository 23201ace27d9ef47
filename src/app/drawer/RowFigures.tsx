import { Said } from '../../sidebar/Said'
import type { RowFigure } from './rowFigures'

/** Figures with their published classes, each with whose class it is. */
export function RowFigures({ figures }: { readonly figures: readonly RowFigure[] }) {
  return (
    <dl className="water-figures">
      {figures.map(({ name, value, grade, note }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            <Said words={value} />
            {grade && <i>, {grade}</i>}
          </dd>
          {note && <dd className="water-figures-note">{note}</dd>}
        </div>
      ))}
    </dl>
  )
}
