import { stockOf } from '../../catalogue/stock'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Built, Hole, Stick } from '../../model/built'
import type { PartId } from '../../model/ids'
import type { DrilledFor } from '../../model/rackFacts'
import { toTicks } from '../../units/length'

/** What lies in a hole. */
export interface Passing {
  /** As the crew calls it: `rail`, `sleeve`, `big rail`. */
  readonly name: string
  readonly stockTitle: string
  /** Outside diameter as a caliper finds it, mm. */
  readonly odMm: number
}

/** Members that are cut and drilled alike. */
export interface DrilledKind {
  /** The mark, and which of the kinds of that mark it is where there are several. Stays while the order of the rows does. */
  readonly key: string
  readonly mark: string
  readonly stock: string
  readonly count: number
  readonly lengthMm: number
  /** Of the face that is drilled through, mm. */
  readonly faceMm: number
  /** From the foot up. */
  readonly holes: readonly Hole[]
  readonly passing: Passing | undefined
  /** Rows that they stand in, in the order of the plan. */
  readonly parts: readonly PartId[]
}

/** Which of the conduits of a row lies in the holes of a member; facts have the plain hole's first. */
const conduitFor = (mark: string, drilledFor: readonly DrilledFor[]): DrilledFor | undefined => {
  const isBig = mark === 'RS-s'
  return isBig ? drilledFor.at(-1) : drilledFor[0]
}

const passingOf = ({ rack, sticks }: Built, mark: string): Passing | undefined => {
  const conduit = rack && conduitFor(mark, rack.drilledFor)
  if (!conduit) return undefined
  const hasSleeves = sticks.some((stick) => stick.mark === 'SV')
  const name = mark === 'RS-s' ? (hasSleeves ? 'sleeve' : 'big rail') : 'rail'
  return { name, stockTitle: stockOf(conduit.stock).title, odMm: conduit.odMm }
}

const signOf = ({ mark, stock, lengthMm, heightMm, holes }: Stick): string =>
  [
    mark,
    stock,
    toTicks(lengthMm),
    toTicks(heightMm),
    // A left riser turned round is a right one.
    ...holes
      .flatMap(({ centreMm, diameterMm, asideMm = 0 }) => [
        [toTicks(centreMm), toTicks(diameterMm), toTicks(Math.abs(asideMm))].join('/'),
      ])
      .toSorted(),
  ].join(' ')

interface Growing {
  readonly stick: Stick
  readonly built: Built
  readonly parts: Set<PartId>
  count: number
}

const tallied = (all: readonly Built[]): readonly Growing[] => {
  const kinds = new Map<string, Growing>()
  for (const built of all)
    for (const stick of built.sticks) {
      if (stick.holes.length === 0) continue
      const sign = signOf(stick)
      const kind = kinds.get(sign) ?? { stick, built, parts: new Set<PartId>(), count: 0 }
      kinds.set(sign, kind)
      kind.count += 1
      kind.parts.add(built.part)
    }
  return [...kinds.values()]
}

/** Every kind of drilled member of a bay: those of one mark together, in the order in which the rows stand in the plan. */
export const drilledKinds = ({ bay }: Pick<Evaluation, 'bay'>): readonly DrilledKind[] => {
  const kinds = tallied(bay.built)
  const marks = [...new Set(kinds.map(({ stick }) => stick.mark))].sort()
  return marks.flatMap((mark) =>
    kinds
      .filter(({ stick }) => stick.mark === mark)
      .map(({ stick, built, parts, count }, index): DrilledKind => ({
        key: index === 0 ? mark : `${mark}/${index + 1}`,
        mark,
        stock: stick.stock,
        count,
        lengthMm: stick.lengthMm,
        faceMm: stick.heightMm,
        holes: stick.holes.toSorted((a, b) => a.centreMm - b.centreMm),
        passing: passingOf(built, mark),
        parts: [...parts],
      })),
  )
}

/** From the foot to the bottom of a hole, where the conduit lies; mm. */
export const bottomOf = ({ centreMm, diameterMm }: Hole): number => centreMm - diameterMm / 2

/** Wood left between a hole and the nearer edge of the face, mm; at either side where it is drilled through the middle. */
export const edgeOf = ({ faceMm }: Pick<DrilledKind, 'faceMm'>, { diameterMm, asideMm = 0 }: Hole): number =>
  (faceMm - diameterMm) / 2 - Math.abs(asideMm)
