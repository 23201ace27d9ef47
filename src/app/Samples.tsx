import { type Sample, samples } from '../layout/samples'
import { Dialog } from './Dialog'

interface SamplesProps {
  readonly onTake: (sample: Sample) => void
  readonly onClose: () => void
}

/** The bays that come with the program. */
export function Samples({ onTake, onClose }: SamplesProps) {
  return (
    <Dialog title="Sample bays" onClose={onClose}>
      <ul>
        {samples.map((sample) => (
          <li key={sample.id}>
            <button className="sheet-choice" onClick={() => onTake(sample)}>
              <strong>{sample.title}</strong>
              <span>{sample.line}</span>
            </button>
          </li>
        ))}
      </ul>
      <footer>
        <button onClick={onClose}>Cancel</button>
      </footer>
    </Dialog>
  )
}
