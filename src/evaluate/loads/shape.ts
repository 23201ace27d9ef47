import type { RackFacts } from '../../model/rackFacts'
import { spotAt, type Frame, type FrameStick } from './frame'
import { borneTubes } from './rowLoads'
import type { RowSpot } from '../../model/strength'

/**
 * A row's built things without their place on the floor: rows of one shape bear and stand alike. `words` and `numbers` hold all that
 * any screen may read of a row.
 */
export interface RowShape {
  readonly words: string
  readonly numbers: Float64Array
}

type Put = (value: number) => void

const putSpot = (put: Put, { u, v, z }: RowSpot): void => {
  put(u)
  put(v)
  put(z)
}

const putStick = (put: Put, { from, to, stick }: FrameStick): void => {
  putSpot(put, from)
  putSpot(put, to)
  put(stick.widthMm)
  put(stick.heightMm)
  put(stick.lengthMm)
  for (const { centreMm, diameterMm, asideMm } of stick.holes) {
    put(centreMm)
    put(diameterMm)
    put(asideMm ?? 0)
  }
}

/** How far a bearing reaches along the row and across it. */
const putSupports = (put: Put, { built, axes }: Frame): void => {
  const isAlongX = Math.abs(axes.along.x) > Math.abs(axes.along.y)
  for (const { at, halfXMm, halfYMm } of built.supports) {
    putSpot(put, spotAt(axes, at))
    put(isAlongX ? halfXMm : halfYMm)
    put(isAlongX ? halfYMm : halfXMm)
  }
}

/** What a row says of itself, but for where it stands. */
const factsKey = ({ leftFace: _left, rightFace: _right, ...facts }: RackFacts): string =>
  JSON.stringify(facts)

/** Marks and stocks, told once for each run of sticks that share them. */
const sticksKey = (sticks: readonly FrameStick[]): string => {
  const runs: string[] = []
  let [stock, count] = ['', 0]
  for (const { stick } of sticks) {
    if (stick.stock !== stock && count > 0) runs.push(`${stock} ${count}`)
    if (stick.stock !== stock) [stock, count] = [stick.stock, 0]
    count += 1
  }
  return [...runs, `${stock} ${count}`].join()
}

const strapsOf = ({ built }: Frame) => built.fittings.filter(({ item }) => item === 'house-strap')

const putAll = (put: Put, frame: Frame): void => {
  for (const laid of frame.sticks.values()) for (const each of laid) putStick(put, each)
  for (const tower of frame.towers) putSpot(put, tower)
  for (const { path } of borneTubes(frame.built))
    for (const place of path) putSpot(put, spotAt(frame.axes, place))
  putSupports(put, frame)
  if (frame.rack.carriedBy === 'house')
    for (const { at } of strapsOf(frame)) putSpot(put, spotAt(frame.axes, at))
}

export const shapeOf = (frame: Frame): RowShape => {
  const numbers: number[] = []
  putAll((value) => numbers.push(value), frame)
  return {
    words: [
      factsKey(frame.rack),
      ...[...frame.sticks].map(([mark, laid]) => `${mark} ${sticksKey(laid)}`),
      borneTubes(frame.built)
        .map(({ role, stock }) => `${role} ${stock}`)
        .join(),
    ].join('\n'),
    numbers: Float64Array.from(numbers),
  }
}

/** Rows whose sticks lie within this of each other, mm, are of one shape: noise of where they stand. */
const SAME_MM = 1e-3

export const isSameShape = (a: RowShape, b: RowShape): boolean => {
  if (a.words !== b.words || a.numbers.length !== b.numbers.length) return false
  for (let index = 0; index < a.numbers.length; index += 1)
    if (Math.abs((a.numbers[index] ?? 0) - (b.numbers[index] ?? 0)) > SAME_MM) return false
  return true
}
