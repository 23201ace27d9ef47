import { clampsAnEnd, clampsOf, reducerKey, saddleKey } from '../catalogue/barbed'
import type { Place } from '../geometry/point'
import type { Fitting } from '../model/built'

/** One thing, counted as often as it is there. */
export const times = (count: number, item: string, at: Place): Fitting[] =>
  Array<Fitting>(count).fill({ item, at })

/** A fitting such as an `elbow` for pipe of a stock, with the clamps on its barbs. */
export const onPipe = (noun: string, stock: string, at: Place, isDoubleClamped = false): Fitting[] => [
  { item: `${noun}-${stock}`, at },
  ...times(clampsOf(noun, stock, isDoubleClamped), `clamp-${stock}`, at),
]

/** What joins pipes of two stocks, with clamps on each; nothing where they are one. */
export const reducerOn = (a: string, b: string, at: Place, isDoubleClamped = false): Fitting[] => {
  const item = reducerKey(a, b)
  if (item === undefined) return []
  return [
    { item, at },
    ...[a, b].flatMap((stock) => times(clampsAnEnd(stock, isDoubleClamped), `clamp-${stock}`, at)),
  ]
}

/** What gives a pipe its water from a main: a saddle with one barb, or a tee in the main for a pipe as big. */
export const branchOn = (main: string, pipe: string, at: Place, isDoubleClamped = false): Fitting[] => {
  const item = saddleKey(main, pipe)
  return item === undefined
    ? [...onPipe('tee', main, at, isDoubleClamped), ...reducerOn(main, pipe, at, isDoubleClamped)]
    : [{ item, at }, ...times(clampsAnEnd(pipe, isDoubleClamped), `clamp-${pipe}`, at)]
}

/** A cap on the end of a main, clamped on. */
export const capOn = (stock: string, at: Place, isDoubleClamped = false): Fitting[] =>
  onPipe('main-cap', stock, at, isDoubleClamped)
