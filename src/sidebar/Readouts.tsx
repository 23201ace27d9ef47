import type { Readout } from './readouts'
import { Said } from './Said'

/** Names with the values that the program worked out. */
export function Readouts({ lines }: { readonly lines: readonly Readout[] }) {
  return (
    <dl className="readouts">
      {lines.map(({ name, value, why }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            <Said words={value} />
          </dd>
          {why && <dd className="readouts-why">{why}</dd>}
        </div>
      ))}
    </dl>
  )
}
