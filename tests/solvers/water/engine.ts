import { InitHydOption, LinkProperty, NodeProperty, Project, Workspace } from 'epanet-js'
import type { Network } from '../../../src/solvers/water/network'
import { waterAt } from '../../../src/solvers/water/properties'
import { headAt, pumpCurveOf } from '../../../src/solvers/water/pumpCurve'

/*
 * An independent engine (EPANET, public domain, compiled to WASM) solves the same network. It has its own elimination, its
 * own friction code and its own treatment of what may shut. What is done for it to speak of the same water:
 *
 * - it has g = 32.2 ft/s2, so lengths and losses are made longer by 32.2 ft/s2 over 9.80665 m/s2;
 * - it rounds 8 / (pi^2 g) to 0.02517 s2/ft where it works out losses of fittings, which is made up for;
 * - viscosity is given as a multiple of its 1.1e-5 ft2/s;
 * - a mouth is a pipe with a check valve to an open level of its own, for a level alone would run back;
 * - a valve is a pipe of a tenth of a millimetre with a loss;
 * - it joins the points of a pump's curve by straight lines, so it is given many points of the smooth one;
 * - it takes no notice of 0.15 mm of head or 10 L/h at a check valve, where a tower gets that much: it is given a bay a
 *   hundred times as large by Froude's law of similarity, all heights, lengths and bores times 100, flows times 100^2.5,
 *   viscosity times 100^1.5, in which every Reynolds number is the same;
 * - its usual stop rule looks at a sum over all links, which hides one starved tower: the limits on each link's head and
 *   flow are set as well.
 */

const FOOT_M = 0.3048
const SCALE = 100
const FLOW_SCALE = SCALE ** 2.5
const GRAVITY_RATIO = (32.2 * FOOT_M) / 9.80665
const FITTING_RATIO = (GRAVITY_RATIO * 8) / (Math.PI ** 2 * 32.2) / 0.02517
const VISCOSITY_1 = 1.1e-5 * FOOT_M * FOOT_M
const ROUGHNESS_MM = 0.0015 * SCALE
const FITTING_M = 1e-4
const CURVE_POINTS = 1000

const curveLines = ({ pumps }: Network): string[] =>
  pumps.curves.flatMap((points, i) => {
    const curve = pumpCurveOf(points)
    if (!curve.ok) throw new RangeError(curve.sentence)
    const most = curve.flowM3S.at(-1)! * 1.3
    return Array.from({ length: CURVE_POINTS + 1 }, (_, step) => {
      const flow = (most * step) / CURVE_POINTS
      return { flow, head: headAt(curve, flow, 1) }
    })
      .filter(({ head }, step, all) => step === 0 || (head >= 0 && head < all[step - 1]!.head))
      .map(({ flow, head }) => `C${i} ${flow * 1000 * FLOW_SCALE} ${head * SCALE}`)
  })

const pipeLine = (
  id: string,
  from: string,
  to: string,
  lengthM: number,
  boreM: number,
  lossK: number,
  status: string,
) =>
  `${id} ${from} ${to} ${lengthM * GRAVITY_RATIO * SCALE} ${boreM * 1000 * SCALE} ${ROUGHNESS_MM} ${lossK * FITTING_RATIO} ${status}`

const STRICT = ['TRIALS 1000', 'ACCURACY 0.00001', 'HEADERROR 0.00001', 'FLOWCHANGE 0.0001']

/** The network as its input file. */
export const engineText = (
  network: Network,
  temperatureC: number,
  stopRule: 'usual' | 'strict' = 'strict',
): string => {
  const { levels, joints, pipes, valves, pumps, mouths } = network
  const node = (i: number) => (i < levels.length ? `L${i}` : `J${i - levels.length}`)
  const lines = ['[JUNCTIONS]']
  joints.forEach((draw, i) => lines.push(`J${i} 0 ${draw * 1000 * FLOW_SCALE}`))
  lines.push('[RESERVOIRS]')
  levels.forEach((head, i) => lines.push(`L${i} ${head * SCALE}`))
  mouths.levelM.forEach((level, i) => lines.push(`M${i} ${level * SCALE}`))
  lines.push('[PIPES]')
  pipes.from.forEach((from, i) =>
    lines.push(
      pipeLine(
        `P${i}`,
        node(from),
        node(pipes.to[i]!),
        pipes.lengthM[i]!,
        pipes.boreM[i]!,
        pipes.lossK[i]!,
        'Open',
      ),
    ),
  )
  valves.from.forEach((from, i) => {
    const status = valves.isOpen[i] === 0 ? 'Closed' : valves.isCheck[i] === 1 ? 'CV' : 'Open'
    lines.push(
      pipeLine(
        `V${i}`,
        node(from),
        node(valves.to[i]!),
        FITTING_M,
        valves.boreM[i]!,
        valves.lossK[i]!,
        status,
      ),
    )
  })
  mouths.from.forEach((from, i) =>
    lines.push(
      pipeLine(`T${i}`, node(from), `M${i}`, mouths.lengthM[i]!, mouths.boreM[i]!, mouths.lossK[i]!, 'CV'),
    ),
  )
  lines.push('[PUMPS]')
  pumps.from.forEach((from, i) =>
    lines.push(`U${i} ${node(from)} ${node(pumps.to[i]!)} HEAD C${pumps.curve[i]!} SPEED ${pumps.speed[i]!}`),
  )
  lines.push('[CURVES]', ...curveLines(network))
  lines.push(
    '[OPTIONS]',
    'UNITS LPS',
    'HEADLOSS D-W',
    `VISCOSITY ${(waterAt(temperatureC).kinematicM2S * SCALE ** 1.5) / VISCOSITY_1}`,
    ...(stopRule === 'strict' ? STRICT : []),
    '[TIMES]',
    'DURATION 0',
    '[REPORT]',
    'STATUS NO',
    '[END]',
  )
  return lines.join('\n')
}

export interface EngineAnswer {
  readonly pipeM3S: Float64Array
  readonly valveM3S: Float64Array
  readonly mouthM3S: Float64Array
  readonly pumpM3S: Float64Array
  /** Of joints alone. */
  readonly jointHeadM: Float64Array
}

export interface Engine {
  /** Reads a network and solves it, and nothing more. */
  run(text: string): void
  /** Reads a network now and solves it each time it is called. */
  runner(text: string): () => void
  /** Solves a network and reads everything out. */
  answer(network: Network, temperatureC: number): EngineAnswer
}

export const startEngine = async (): Promise<Engine> => {
  const workspace = new Workspace()
  await workspace.loadModule()
  const read = (text: string): Project => {
    const project = new Project(workspace)
    workspace.writeFile('in.inp', text)
    project.open('in.inp', 'out.rpt', 'out.bin')
    return project
  }
  const solve = (project: Project): void => {
    project.openH()
    project.initH(InitHydOption.InitFlow)
    project.runH()
  }
  const open = (text: string): Project => {
    const project = read(text)
    solve(project)
    return project
  }
  const close = (project: Project) => {
    project.closeH()
    project.close()
  }
  return {
    run: (text) => {
      close(open(text))
    },
    runner: (text) => {
      const project = read(text)
      return () => {
        solve(project)
        project.closeH()
      }
    },
    answer: (network, temperatureC) => {
      const project = open(engineText(network, temperatureC))
      const flows = (sort: string, count: number) =>
        Float64Array.from(
          { length: count },
          (_, i) =>
            project.getLinkValue(project.getLinkIndex(`${sort}${i}`), LinkProperty.Flow) / 1000 / FLOW_SCALE,
        )
      const all = {
        pipeM3S: flows('P', network.pipes.from.length),
        valveM3S: flows('V', network.valves.from.length),
        mouthM3S: flows('T', network.mouths.from.length),
        pumpM3S: flows('U', network.pumps.from.length),
        jointHeadM: Float64Array.from(
          network.joints,
          (_, i) => project.getNodeValue(project.getNodeIndex(`J${i}`), NodeProperty.Head) / SCALE,
        ),
      }
      close(project)
      return all
    },
  }
}
