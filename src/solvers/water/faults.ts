import type { CurvePoints, Fault, Network } from './network'
import { COLDEST_C, HOTTEST_C } from './properties'
import { type PumpCurve, pumpCurveOf } from './pumpCurve'

const fault = (sentence: string): Fault => ({ ok: false, sentence })

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

const inPipes = ({ pipes }: Network, nodes: number): string | undefined => {
  const { from, to, lengthM, boreM, lossK } = pipes
  return (
    unequal('pipe', [
      ['from', from],
      ['to', to],
      ['lengths', lengthM],
      ['bores', boreM],
      ['losses', lossK],
    ]) ??
    inLinks('pipe', pipes, nodes) ??
    unsound('pipe', ['length in m', lengthM], 0) ??
    unsound('pipe', ['bore in m', boreM], 0, true) ??
    unsound('pipe', ['loss in velocity heads', lossK], 0)
  )
}

const inValves = ({ valves }: Network, nodes: number): string | undefined => {
  const { from, to, boreM, lossK, isOpen, isCheck } = valves
  return (
    unequal('valve', [
      ['from', from],
      ['to', to],
      ['bores', boreM],
      ['losses', lossK],
      ['marks of open', isOpen],
      ['marks of check', isCheck],
    ]) ??
    inLinks('valve', valves, nodes) ??
    unsound('valve', ['bore in m', boreM], 0, true) ??
    unsound('valve', ['loss in velocity heads', lossK], 0)
  )
}

const inPumps = ({ pumps }: Network, nodes: number): string | undefined => {
  const { from, to, curve, speed, curves } = pumps
  return (
    unequal('pump', [
      ['from', from],
      ['to', to],
      ['curves', curve],
      ['speeds', speed],
    ]) ??
    inLinks('pump', pumps, nodes) ??
    outOfRange('pump', ['curve', curve], curves.length, 'curves') ??
    unsound('pump', ['speed', speed], 0)
  )
}

const inMouths = ({ mouths }: Network, nodes: number): string | undefined => {
  const { from, lengthM, boreM, lossK, levelM } = mouths
  return (
    unequal('mouth', [
      ['from', from],
      ['lengths', lengthM],
      ['bores', boreM],
      ['losses', lossK],
      ['levels', levelM],
    ]) ??
    outOfRange('mouth', ['from', from], nodes, NODES) ??
    unsound('mouth', ['length in m', lengthM], 0) ??
    unsound('mouth', ['bore in m', boreM], 0, true) ??
    unsound('mouth', ['loss in velocity heads', lossK], 0) ??
    unsound('mouth', ['level in m', levelM], -Infinity, true)
  )
}

const inLevels = ({ levels, joints }: Network): string | undefined =>
  levels.length === 0
    ? `There is no open level for ${joints.length} joints: no head is known to count from.`
    : (unsound('level', ['head in m', levels], -Infinity, true) ??
      unsound('joint', ['draw in m3/s', joints], -Infinity, true))

const inWater = (temperatureC: number): string | undefined =>
  temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C
    ? undefined
    : `The water is at ${temperatureC} °C; it must be from ${COLDEST_C} to ${HOTTEST_C}.`

export interface Sound {
  readonly ok: true
  readonly curves: readonly PumpCurve[]
}

const curvesOf = (points: readonly CurvePoints[]): Sound | Fault => {
  const curves: PumpCurve[] = []
  for (const [i, each] of points.entries()) {
    const curve = pumpCurveOf(each)
    if (!curve.ok) return fault(`Curve ${i}: ${curve.sentence}`)
    curves.push(curve)
  }
  return { ok: true, curves }
}

/** The pump curves of a network that can be solved, or what is wrong with it; who hangs in the air is told later. */
export const faultIn = (network: Network, temperatureC: number): Sound | Fault => {
  const nodes = network.levels.length + network.joints.length
  const sentence =
    inLevels(network) ??
    inPipes(network, nodes) ??
    inValves(network, nodes) ??
    inPumps(network, nodes) ??
    inMouths(network, nodes) ??
    inWater(temperatureC)
  return sentence === undefined ? curvesOf(network.pumps.curves) : fault(sentence)
}
