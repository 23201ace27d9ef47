import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { inOne, type Steps, walk } from '../../../src/app/drawer/steps'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

/** Steps that write down how often they were asked to go on. */
function* counted(times: number, asked: number[]): Steps<string> {
  for (let step = 1; step <= times; step += 1) {
    asked.push(step)
    yield
  }
  return 'found'
}

test('nothing is asked before the bay has stood still for a while', () => {
  const asked: number[] = []
  walk(counted(2, asked), () => {})
  vi.advanceTimersByTime(149)
  expect(asked).toEqual([])
  vi.advanceTimersByTime(1)
  expect(asked).toEqual([1])
})

test('the page has its turn between any two steps, and the answer comes once', () => {
  const [asked, found]: [number[], string[]] = [[], []]
  walk(counted(3, asked), (answer) => found.push(answer))
  const seen: number[] = []
  while (vi.getTimerCount() > 0) {
    vi.advanceTimersToNextTimer()
    seen.push(asked.length)
  }
  expect(seen).toEqual([1, 2, 3, 3])
  expect(found).toEqual(['found'])
})

test.each([0, 1, 2])('stopped after %d turns it asks no more and tells nothing', (turns) => {
  const [asked, found]: [number[], string[]] = [[], []]
  const stop = walk(counted(3, asked), (answer) => found.push(answer))
  for (let turn = 0; turn < turns; turn += 1) vi.advanceTimersToNextTimer()
  stop()
  vi.runAllTimers()
  expect(asked).toHaveLength(turns)
  expect(found).toEqual([])
})

test('an answer in one lets the page draw first', () => {
  const steps = inOne(() => 7)
  expect(steps.next()).toEqual({ done: false, value: undefined })
  expect(steps.next()).toEqual({ done: true, value: 7 })
})
