import { forceOf, inFeet, lengthOf, pressureOf, term } from '../../checks/found'
import type { Support } from '../../model/built'
import type { RailLine, RowSpot, Screen } from '../../model/strength'
import { kilopascals } from '../../units/force'
import { type Frame, type FrameStick, spotAt, sticksOf } from './frame'
import { houseScreens } from './house'
import { stateOf } from './risersScreen'
import type { RowInput } from './rowInput'

/** A board lies on the ground that is no higher over it than this, mm. */
const ON_GROUND_MM = 1

const lowestRunners = (frame: Frame): readonly FrameStick[] =>
  sticksOf(frame, 'BR').filter(({ from, stick }) => from.z - stick.heightMm / 2 <= ON_GROUND_MM)

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

interface Pressed {
  readonly mark: string
  readonly at: RowSpot
  readonly loadN: number
  /** Sides of what lies on the ground, mm. */
  readonly sidesMm: readonly [number, number]
}

/** Runners on the ground spread all of the row's weight along them. */
const underRunners = (runners: readonly FrameStick[], { loads, frame }: RowInput): Pressed => ({
  mark: 'BR',
  at: { u: frame.lengthMm / 2, v: runners[0]?.from.v ?? 0, z: 0 },
  loadN: loads.fullN,
  sidesMm: [sum(runners.map(({ stick }) => stick.lengthMm)), runners[0]?.stick.widthMm ?? 0],
})

/** The most that the rail over a foot hands down to its riser, N. */
const handedTo = (rails: readonly RailLine[], { u, v }: RowSpot): number => {
  const rail = rails.find((each) => Math.sign(each.v) === Math.sign(v))
  const nearest = rail?.reactions.toSorted((a, b) => Math.abs(a.u - u) - Math.abs(b.u - u))[0]
  return nearest?.mostN ?? 0
}

/** Each foot bears its riser, and its share of the frame, the base and all else that the rails do not carry. */
const underFeet = (feet: readonly Support[], { frame, rails, loads }: RowInput): readonly Pressed[] => {
  const byRailsN = sum(rails.flatMap(({ reactions }) => reactions.map(({ fullN }) => fullN)))
  const shareN = Math.max(0, loads.fullN - byRailsN) / feet.length
  return feet.map(({ at, halfXMm, halfYMm }) => {
    const spot = spotAt(frame.axes, at)
    return {
      mark: 'FP',
      at: spot,
      loadN: handedTo(rails, spot) + shareN,
      sidesMm: [2 * halfXMm, 2 * halfYMm],
    }
  })
}

const pressedBy = (input: RowInput): readonly Pressed[] => {
  const runners = lowestRunners(input.frame)
  if (runners.length > 0) return [underRunners(runners, input)]
  const feet = input.frame.built.supports.filter(({ rests }) => rests === 'floor')
  return underFeet(feet, input)
}

const kpaOf = ({ loadN, sidesMm: [a, b] }: Pressed): number => kilopascals(loadN / (a * b))

const groundScreen = (pressed: Pressed, soilKpa: number): Screen => {
  const kpa = kpaOf(pressed)
  const used = kpa / soilKpa
  return {
    id: 'ground-bearing',
    mark: pressed.mark,
    state: stateOf(used),
    used,
    measured: pressureOf(kpa),
    limit: pressureOf(soilKpa),
    under: 'full',
    at: pressed.at,
    terms: [
      term(pressed.mark === 'BR' ? 'Weight of the row' : 'Worst foot bears', forceOf(pressed.loadN)),
      term(
        pressed.mark === 'BR' ? 'Runners on the ground, together' : 'Foot, one side',
        inFeet(pressed.sidesMm[0]),
      ),
      term(
        pressed.mark === 'BR' ? 'Their side on the ground' : 'The other side',
        lengthOf(pressed.sidesMm[1]),
      ),
      term('Pressure on the ground', pressureOf(kpa)),
    ],
  }
}

/** What the row rests on at its worst place: the ground under runners or feet, or the house that it hangs from. */
export const groundScreens = (input: RowInput): readonly Screen[] => {
  if (input.facts.carriedBy === 'house') return houseScreens(input)
  const [first, ...others] = pressedBy(input)
  if (!first) return []
  const worst = others.reduce((most, each) => (kpaOf(each) > kpaOf(most) ? each : most), first)
  return [groundScreen(worst, input.settings.soilKpa)]
}
