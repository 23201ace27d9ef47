import { type Sample, samples } from '../layout/samples'
import { ChoiceDialog } from './Dialog'

interface SamplesProps {
  readonly onTake: (sample: Sample) => void
  readonly onClose: () => void
}

/** The bays that come with the program. */
export function Samples({ onTake, onClose }: SamplesProps) {
  const choices = samples.map((sample) => ({
    key: sample.id,
    title: sample.title,
    line: sample.line,
    onTake: () => onTake(sample),
  }))
  return <ChoiceDialog title="Sample bays" choices={choices} onClose={onClose} />
}
