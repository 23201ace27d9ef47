import type { CurvePoints, Network } from '../../../src/solvers/water/network'

interface Fitting {
  readonly boreM?: number
  readonly lossK?: number
}

interface Length extends Fitting {
  readonly lengthM?: number
}

/** Gathers a network part by part, for tests. Levels must be added before joints, since nodes count levels first. */
export class Net {
  readonly levels: number[] = []
  readonly draws: number[] = []
  readonly pipes: number[][] = []
  readonly valves: number[][] = []
  readonly pumps: number[][] = []
  readonly curves: CurvePoints[] = []
  readonly mouths: number[][] = []

  level(headM: number): number {
    if (this.draws.length > 0) throw new RangeError('Levels come before joints.')
    return this.levels.push(headM) - 1
  }

  joint(drawM3S = 0): number {
    return this.levels.length + this.draws.push(drawM3S) - 1
  }

  pipe(from: number, to: number, { lengthM = 1, boreM = 0.02, lossK = 0 }: Length = {}): number {
    return this.pipes.push([from, to, lengthM, boreM, lossK]) - 1
  }

  valve(
    from: number,
    to: number,
    {
      boreM = 0.0266,
      lossK = 0.2,
      isOpen = true,
      isCheck = false,
    }: Fitting & { isOpen?: boolean; isCheck?: boolean } = {},
  ): number {
    return this.valves.push([from, to, boreM, lossK, isOpen ? 1 : 0, isCheck ? 1 : 0]) - 1
  }

  /** A curve of points such as `[[0, 5], [0.001, 4], [0.002, 1]]`, m3/s and m. */
  curve(points: readonly (readonly [number, number])[]): number {
    const flowM3S = Float64Array.from(points, ([flow]) => flow)
    return this.curves.push({ flowM3S, headM: Float64Array.from(points, ([, head]) => head) }) - 1
  }

  pump(from: number, to: number, curve: number, speed = 1): number {
    return this.pumps.push([from, to, curve, speed]) - 1
  }

  mouth(from: number, levelM: number, { lengthM = 0.9, boreM = 0.003175, lossK = 1.5 }: Length = {}): number {
    return this.mouths.push([from, lengthM, boreM, lossK, levelM]) - 1
  }

  network(): Network {
    const reals = (rows: number[][], i: number) => Float64Array.from(rows, (row) => row[i]!)
    const whole = (rows: number[][], i: number) => Int32Array.from(rows, (row) => row[i]!)
    const marks = (rows: number[][], i: number) => Uint8Array.from(rows, (row) => row[i]!)
    const { pipes, valves, pumps, curves, mouths } = this
    return {
      levels: Float64Array.from(this.levels),
      joints: Float64Array.from(this.draws),
      pipes: {
        from: whole(pipes, 0),
        to: whole(pipes, 1),
        lengthM: reals(pipes, 2),
        boreM: reals(pipes, 3),
        lossK: reals(pipes, 4),
      },
      valves: {
        from: whole(valves, 0),
        to: whole(valves, 1),
        boreM: reals(valves, 2),
        lossK: reals(valves, 3),
        isOpen: marks(valves, 4),
        isCheck: marks(valves, 5),
      },
      pumps: {
        from: whole(pumps, 0),
        to: whole(pumps, 1),
        curve: whole(pumps, 2),
        speed: reals(pumps, 3),
        curves,
      },
      mouths: {
        from: whole(mouths, 0),
        lengthM: reals(mouths, 1),
        boreM: reals(mouths, 2),
        lossK: reals(mouths, 3),
        levelM: reals(mouths, 4),
      },
    }
  }
}
