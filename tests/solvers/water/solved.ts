import type { Fault, Network, Solution } from '../../../src/solvers/water/network'

/** The solution, or an error with the sentence of the fault. */
export const solved = (result: Solution | Fault): Solution => {
  if (!result.ok) throw new RangeError(result.sentence)
  return result
}

/** The sentence of the fault, or an error where there is none. */
export const sentenceOf = (result: Solution | Fault): string => {
  if (result.ok) throw new RangeError('There is no fault.')
  return result.sentence
}

/** Flow that is missing at each joint, m3/s: what comes in, less what goes out and what is drawn. */
export const missingAtJoints = (network: Network, solution: Solution): Float64Array => {
  const { levels, joints, pipes, valves, pumps, mouths } = network
  const missing = new Float64Array(levels.length + joints.length)
  const links = [
    [pipes, solution.pipeM3S],
    [valves, solution.valveM3S],
    [pumps, solution.pumpM3S],
  ] as const
  for (const [{ from, to }, flows] of links)
    flows.forEach((flow, i) => {
      missing[from[i]!]! -= flow
      missing[to[i]!]! += flow
    })
  mouths.from.forEach((node, i) => (missing[node]! -= solution.mouthM3S[i]!))
  return missing
    .subarray(levels.length)
    .map((flow, i) => (Number.isNaN(solution.headM[levels.length + i]!) ? 0 : flow - joints[i]!))
}
