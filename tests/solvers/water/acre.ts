import type { Network } from '../../../src/solvers/water/network'

/**
 * A house of rows as large as wanted, written straight into arrays: one pump with its check valve and filter feeds as many
 * mains as it takes, each main 18 rows through a valve a row, each row two laterals of 24 stations with two towers each.
 * All rows are alike but for what stands in `settings`.
 */
export interface AcreSettings {
  readonly towers: number
  /** Velocity heads lost in each row's valve; by row. */
  readonly valveK?: (row: number) => number
  /** How much higher than the others a row's towers hang, m. */
  readonly higherM?: (row: number) => number
  /** Laterals joined at their far ends. */
  readonly hasRings?: boolean
}

const ROWS_A_MAIN = 18
const LATERALS = 2
const STATIONS = 24
const TOWERS = 2
const TOWERS_A_ROW = LATERALS * STATIONS * TOWERS
const TOWER_M3S = 2.63e-6

const boreFor = (rows: number): number =>
  Math.max(0.0266, Math.sqrt((4 * rows * TOWERS_A_ROW * TOWER_M3S) / Math.PI))

export const acre = ({
  towers,
  valveK = () => 4,
  higherM = () => 0,
  hasRings = false,
}: AcreSettings): Network => {
  const rows = Math.max(1, Math.round(towers / TOWERS_A_ROW))
  const stations = Math.min(STATIONS, Math.ceil(towers / rows / LATERALS / TOWERS))
  const laterals = rows * LATERALS
  const joints = 3 + rows * 2 + laterals * stations
  const pipeCount = 1 + rows * 2 + laterals * stations + (hasRings ? rows : 0)
  const from = new Int32Array(pipeCount)
  const to = new Int32Array(pipeCount)
  const lengthM = new Float64Array(pipeCount)
  const boreM = new Float64Array(pipeCount)
  const lossK = new Float64Array(pipeCount)
  const mouthCount = laterals * stations * TOWERS
  const mouthFrom = new Int32Array(mouthCount)
  const levelM = new Float64Array(mouthCount)
  const valveFrom = new Int32Array(rows + 2)
  const valveTo = new Int32Array(rows + 2)
  const valveLoss = new Float64Array(rows + 2)
  let pipe = 0
  const addPipe = (a: number, b: number, length: number, bore: number, loss: number): void => {
    from[pipe] = a
    to[pipe] = b
    lengthM[pipe] = length
    boreM[pipe] = bore
    lossK[pipe] = loss
    pipe += 1
  }
  // Level 0 the pit; joints 1 pump, 2 check valve, 3 filter; then a tee and a row's head each; then stations.
  valveFrom.set([1, 2])
  valveTo.set([2, 3])
  valveLoss.set([2.5, 4])
  let joint = 4
  const lateralBore = 0.0209
  addPipe(3, joint, 4, boreFor(rows), 2)
  let mouth = 0
  const source = joint
  for (let row = 0; row < rows; row += 1) {
    const tee = joint
    const rowHead = joint + 1
    joint += 2
    const inMain = row % ROWS_A_MAIN
    if (row > 0)
      addPipe(
        inMain === 0 ? source : tee - 2 - (laterals / rows) * stations,
        tee,
        1.8,
        boreFor(ROWS_A_MAIN - inMain),
        0.3,
      )
    valveFrom[row + 2] = tee
    valveTo[row + 2] = rowHead
    valveLoss[row + 2] = valveK(row)
    const level = 1.9 + higherM(row)
    let lastEnd = 0
    for (let lateral = 0; lateral < LATERALS; lateral += 1) {
      let at = rowHead
      for (let station = 0; station < stations; station += 1) {
        addPipe(at, joint, 0.381, lateralBore, station === 0 ? 1.5 : 0.05)
        for (let tower = 0; tower < TOWERS; tower += 1) {
          mouthFrom[mouth] = joint
          levelM[mouth] = level
          mouth += 1
        }
        at = joint
        joint += 1
      }
      if (hasRings && lateral === 1) addPipe(lastEnd, at, 1, lateralBore, 1)
      lastEnd = at
    }
  }
  const designM3S = mouthCount * TOWER_M3S
  const pipes = { from, to, lengthM, boreM, lossK }
  if (pipe < pipeCount)
    for (const [name, values] of Object.entries(pipes))
      Object.assign(pipes, { [name]: values.subarray(0, pipe) })
  return {
    levels: Float64Array.of(0),
    joints: new Float64Array(joints),
    pipes,
    valves: {
      from: valveFrom,
      to: valveTo,
      boreM: new Float64Array(rows + 2).fill(0.0266).fill(boreFor(rows), 0, 2),
      lossK: valveLoss,
      isOpen: new Uint8Array(rows + 2).fill(1),
      isCheck: Uint8Array.from({ length: rows + 2 }, (_, i) => (i === 0 ? 1 : 0)),
    },
    pumps: {
      from: Int32Array.of(0),
      to: Int32Array.of(1),
      curve: Int32Array.of(0),
      speed: Float64Array.of(1),
      curves: [
        {
          flowM3S: Float64Array.from([0, 0.5, 1, 2], (share) => share * designM3S),
          headM: Float64Array.of(4, 3.8, 3.1, 0.5),
        },
      ],
    },
    mouths: {
      from: mouthFrom,
      lengthM: new Float64Array(mouthCount).fill(0.9144),
      boreM: new Float64Array(mouthCount).fill(0.003175),
      lossK: new Float64Array(mouthCount).fill(1.5),
      levelM,
    },
  }
}
