import { expect, test } from 'vitest'
import { shownDrain } from '../../../src/app/drawer/pegs/shownDrain'
import { evaluate } from '../../../src/evaluate/evaluate'
import { scenarios } from '../../support/scenarios'

const layout = scenarios['kestrel-bend-house-2']!()
const evaluation = evaluate(layout)
const idOf = (name: string) => layout.parts.find((part) => part.name === name)!.id

test('the drain whose pegs are shown is the one chosen, that of a row that falls into it, and one for nothing chosen', () => {
  expect(shownDrain(evaluation, [idOf('Drain N')])).toBe(idOf('Drain N'))
  expect(shownDrain(evaluation, [idOf('N1')])).toBe(idOf('Drain N'))
  expect(shownDrain(evaluation, [idOf('S1')])).toBe(idOf('Drain S'))
  expect(evaluation.bay.levels.drains.has(shownDrain(evaluation, [])!)).toBe(true)
})
