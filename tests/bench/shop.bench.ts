import { bench, describe } from 'vitest'
import { beforeChecks } from '../../src/evaluate/beforeChecks'
import { bayChange } from '../../src/evaluate/shop/change'
import type { Evaluation } from '../../src/evaluate/evaluation'
import { movePartsBy } from '../../src/layout/edits'
import { scenarios } from '../support/scenarios'

/** Frames of a drag of the first row; each is an evaluation that nobody has asked for its cost yet. */
const framesOf = (name: string): { before: Evaluation; frames: readonly Evaluation[] } => {
  const layout = scenarios[name]!()
  const row = layout.parts.find(({ kind }) => kind === 'rack-row')!
  const frames = Array.from({ length: 24 }, (_, step) =>
    beforeChecks(movePartsBy(layout, [row.id], 10 * (step + 1), 0)),
  )
  return { before: beforeChecks(layout), frames }
}

// Goals for what a drag costs beside the pointer: 0.3 ms at the sample bay, 1 ms at the acre.
describe('what a drag does to boards, money and hours', () => {
  for (const name of ['kestrel-bend-house-2', 'sallow-flats-one-acre']) {
    const { before, frames } = framesOf(name)
    let frame = 0
    bench(`${name}, a frame`, () => {
      frame += 1
      // Another object each time, as in a drag: what is remembered for an evaluation must not answer.
      bayChange(before, { ...frames[frame % frames.length]! })
    })
  }
})
