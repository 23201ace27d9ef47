import { Matrix, solve } from 'ml-matrix'
import type { Beam, BeamLoad } from '../../../src/solvers/beam/beam'

/**
 * A beam solved another way than the program does: Macaulay's brackets with the reactions, the lie of the left end and the kinks at the
 * hinges as unknowns, all in one dense matrix. The moment of each is integrated twice over the varying stiffness by Gauss's three
 * points between breaks, which is exact for what occurs here. W. H. Macaulay, *Messenger of Mathematics* 48 (1919), from memory.
 */
export interface Macaulay {
  readonly reactionsN: readonly number[]
  readonly momentAt: (mm: number) => number
  readonly sagAt: (mm: number) => number
}

type Moment = (mm: number) => number

const bracket = (mm: number): number => Math.max(0, mm)

const eiAt = ({ sections }: Beam, mm: number): number => sections.find(({ toMm }) => mm <= toMm)!.eiNmm2

const gauss = [
  [-Math.sqrt(0.6), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(0.6), 5 / 9],
] as const

/** Lift of the beam at `mm` over its tangent at the left end, for a moment that bends it. */
const liftAt = (beam: Beam, breaks: readonly number[], moment: Moment, mm: number): number => {
  const bounds = [...breaks.filter((at) => at < mm), mm]
  let lift = 0
  for (let k = 1; k < bounds.length; k += 1) {
    const [from, to] = [bounds[k - 1]!, bounds[k]!]
    for (const [place, weight] of gauss) {
      const at = (from + to) / 2 + (place * (to - from)) / 2
      lift += (((to - from) / 2) * weight * ((mm - at) * moment(at))) / eiAt(beam, at)
    }
  }
  return lift
}

const loadMoment =
  ({ points, lines }: BeamLoad): Moment =>
  (mm) =>
    -points.reduce((sum, { atMm, downN }) => sum + downN * bracket(mm - atMm), 0) -
    lines.reduce(
      (sum, { fromMm, toMm, downNPerMm }) =>
        sum + (downNPerMm * (bracket(mm - fromMm) ** 2 - bracket(mm - toMm) ** 2)) / 2,
      0,
    )

const breaksOf = (beam: Beam, { points, lines }: BeamLoad): number[] =>
  [
    beam.fromMm,
    beam.toMm,
    ...beam.sections.map(({ toMm }) => toMm),
    ...beam.supports.map(({ atMm }) => atMm),
    ...points.map(({ atMm }) => atMm),
    ...lines.flatMap(({ fromMm, toMm }) => [fromMm, toMm]),
  ].toSorted((a, b) => a - b)

export const macaulay = (beam: Beam, load: BeamLoad): Macaulay => {
  const { fromMm, toMm, supports, hinges } = beam
  const breaks = breaksOf(beam, load)
  const loaded = loadMoment(load)
  // A clamp stands at the start, where it holds a moment and the slope.
  const clamps = supports.filter(({ isClamped }) => isClamped)
  const unit: Moment[] = [
    ...supports.map(
      ({ atMm }): Moment =>
        (mm) =>
          bracket(mm - atMm),
    ),
    ...clamps.map((): Moment => () => -toMm),
  ]
  const totalN =
    load.points.reduce((sum, { downN }) => sum + downN, 0) +
    load.lines.reduce((sum, line) => sum + (line.toMm - line.fromMm) * line.downNPerMm, 0)
  // Scales that keep the columns alike: a sag for each newton, a slope over the length.
  const length = toMm - fromMm
  const soft = length ** 3 / eiAt(beam, toMm)
  const rows: number[][] = []
  const right: number[] = []
  for (const { atMm } of supports) {
    rows.push([
      ...unit.map((moment) => -liftAt(beam, breaks, moment, atMm) / soft),
      1,
      (atMm - fromMm) / length,
      ...hinges.map((h) => bracket(atMm - h) / length),
    ])
    right.push(liftAt(beam, breaks, loaded, atMm) / soft)
  }
  for (const at of [...hinges, toMm]) {
    rows.push([...unit.map((moment) => moment(at) / length), 0, 0, ...hinges.map(() => 0)])
    right.push(-loaded(at) / length)
  }
  rows.push([...supports.map(() => 1), ...clamps.map(() => 0), 0, 0, ...hinges.map(() => 0)])
  right.push(totalN)
  for (const _ of clamps) {
    rows.push([...unit.map(() => 0), 0, 1, ...hinges.map(() => 0)])
    right.push(0)
  }
  const x = solve(new Matrix(rows), Matrix.columnVector(right)).to1DArray()
  const holds = x.slice(0, unit.length)
  const [lie = 0, slope = 0, ...kinks] = x.slice(unit.length)
  const momentAt: Moment = (mm) => loaded(mm) + holds.reduce((sum, r, k) => sum + r * unit[k]!(mm), 0)
  return {
    reactionsN: holds.slice(0, supports.length),
    momentAt,
    sagAt: (mm) =>
      soft *
        (lie +
          (slope * (mm - fromMm) + kinks.reduce((sum, kink, k) => sum + kink * bracket(mm - hinges[k]!), 0)) /
            length) -
      liftAt(beam, breaks, momentAt, mm),
  }
}
