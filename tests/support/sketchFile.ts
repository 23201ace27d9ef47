import { readLayout, writeLayout } from '../../src/layout/file'
import type { Layout } from '../../src/layout/schema'
import { bay } from './bay'

/** A small bay as a file, to be spoilt in one place. */
export const sketch = (): Layout =>
  bay('30 x 96 ft', 'Test bay')
    .row('Row 1', [60, 100])
    .row('Row 2', [170, 100])
    .post('Post', [115, 300])
    .drain('Drain 1', [
      [20, 450],
      [340, 450],
    ])
    .layout()

// eslint-disable-next-line typescript/no-explicit-any -- a file as anybody may have changed it
export type Json = Record<string, any>

export const text = (change: (file: Json) => void = () => {}): string => {
  const file: Json = JSON.parse(writeLayout(sketch()))
  change(file)
  return JSON.stringify(file, null, 2)
}

export const sentenceOf = (file: string): string => {
  const read = readLayout(file)
  return read.ok ? 'opened' : read.sentence
}
