import type { CurvePoints, Network } from './network'
import { COLDEST_C, HOTTEST_C } from './properties'
import { type PumpCurve, pumpCurveOf } from './pumpCurve'

type Column = readonly [name: string, values: ArrayLike<number>]

const unequal = (sort: string, columns: readonly Column[]): string | undefined => {
  const [first, ...others] = columns
  if (first === undefined) return undefined
  const odd = others.find(([, values]) => values.length !== first[1].length)
  return (
    odd &&
    `The arrays of the ${sort}s differ in length: ${first[1].length} ${first[0]}, ${odd[1].length} ${odd[0]}.`
  )
}

/** The first value that is below the least allowed, or no number. */
const unsound = (
  sort: string,
  [name, values]: Column,
  least: number,
  isOpenBound = false,
): string | undefined => {
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i] ?? NaN
    if ((isOpenBound ? value > least : value >= least) && value < Infinity) continue
    const wanted = least === -Infinity ? 'a number' : isOpenBound ? `more than ${least}` : `${least} or more`
    return `The ${name} of ${sort} ${i} is ${value}; it must be ${wanted}.`
  }
  return undefined
}

const outOfRange = (sort: string, [name, values]: Column, end: number, of: string): string | undefined => {
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i] ?? 0
    if (value < 0 || value >= end)
      return `The ${name} of ${sort} ${i} is ${value}, but there are ${end} ${of}, counted from 0.`
  }
  return undefined
}

const loop = (sort: string, from: Int32Array, to: Int32Array): string | undefined => {
  for (let i = 0; i < from.length; i += 1)
    if (from[i] === to[i]) return `Both ends of ${sort} ${i} are at node ${from[i]}.`
  return undefined
}

const NODES = 'levels and joints'

const inLinks = (
  sort: string,
  { from, to }: { readonly from: Int32Array; readonly to: Int32Array },
  nodes: number,
): string | undefined =>
  outOfRange(sort, ['from', from], nodes, NODES) ??
  outOfRange(sort, ['to', to], nodes, NODES) ??
  loop(sort, from, to)

const pipesUneven = ({ from, to, lengthM, boreM, lossK }: Network['pipes']): string | undefined =>
  unequal('pipe', [
    ['from', from],
    ['to', to],
    ['lengths', lengthM],
    ['bores', boreM],
    ['losses', lossK],
  ])

const valvesUneven = (valves: Network['valves']): string | undefined =>
  unequal('valve', [
    ['from', valves.from],
    ['to', valves.to],
    ['bores', valves.boreM],
    ['losses', valves.lossK],
    ['marks of open', valves.isOpen],
    ['marks of check', valves.isCheck],
  ])

const pumpsUneven = ({ from, to, curve, speed }: Network['pumps']): string | undefined =>
  unequal('pump', [
    ['from', from],
    ['to', to],
    ['curves', curve],
    ['speeds', speed],
  ])

const mouthsUneven = ({ from, lengthM, boreM, lossK, levelM }: Network['mouths']): string | undefined =>
  unequal('mouth', [
    ['from', from],
    ['lengths', lengthM],
    ['bores', boreM],
    ['losses', lossK],
    ['levels', levelM],
  ])

/** What can be told without a look at each number. */
export const faultInArrays = (network: Network, temperatureC: number): string | undefined => {
  const { levels, joints, pipes, valves, pumps, mouths } = network
  if (levels.length === 0)
    return `There is no open level for ${joints.length} joints: no head is known to count from.`
  if (!(temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C))
    return `The water is at ${temperatureC} °C; it must be from ${COLDEST_C} to ${HOTTEST_C}.`
  return (
    pipesUneven(pipes) ??
    valvesUneven(valves) ??
    pumpsUneven(pumps) ??
    mouthsUneven(mouths) ??
    outOfRange('pump', ['curve', pumps.curve], pumps.curves.length, 'curves')
  )
}

/** What is wrong with how a network of even arrays is joined up; joints that no level reaches are told later. */
export const faultInJoins = ({
  levels,
  joints,
  pipes,
  valves,
  pumps,
  mouths,
}: Network): string | undefined => {
  const nodes = levels.length + joints.length
  return (
    inLinks('pipe', pipes, nodes) ??
    inLinks('valve', valves, nodes) ??
    inLinks('pump', pumps, nodes) ??
    outOfRange('mouth', ['from', mouths.from], nodes, NODES)
  )
}

const inSizes = (
  sort: string,
  { lengthM, boreM, lossK }: Readonly<Record<'lengthM' | 'boreM' | 'lossK', Float64Array>>,
): string | undefined =>
  unsound(sort, ['length in m', lengthM], 0) ??
  unsound(sort, ['bore in m', boreM], 0, true) ??
  unsound(sort, ['loss in velocity heads', lossK], 0)

/** The first number that is none that it may be. */
export const faultInNumbers = (network: Network): string | undefined => {
  const { levels, joints, pipes, valves, pumps, mouths } = network
  return (
    unsound('level', ['head in m', levels], -Infinity, true) ??
    unsound('joint', ['draw in m3/s', joints], -Infinity, true) ??
    inSizes('pipe', pipes) ??
    inSizes('valve', { ...valves, lengthM: new Float64Array(0) }) ??
    unsound('pump', ['speed', pumps.speed], 0) ??
    inSizes('mouth', mouths) ??
    unsound('mouth', ['level in m', mouths.levelM], -Infinity, true)
  )
}

/** The smooth pump curves, or what is wrong with one. */
export const curvesThrough = (points: readonly CurvePoints[]): readonly PumpCurve[] | string => {
  const curves: PumpCurve[] = []
  for (const [i, each] of points.entries()) {
    const curve = pumpCurveOf(each)
    if (!curve.ok) return `Curve ${i}: ${curve.sentence}`
    curves.push(curve)
  }
  return curves
}
