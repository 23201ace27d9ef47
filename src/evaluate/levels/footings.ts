import { slopeOf } from '../../geometry/lineFit'
import { distance, type Point } from '../../geometry/point'
import type { Settings } from '../../layout/settings'
import type { Built } from '../../model/built'
import { climbAt, type Foot, type RowGrade } from '../../model/levels'
import type { RackFace } from '../../model/rackFacts'
import { rememberEach } from '../../model/remember'
import type { Site } from '../../model/site'

export type Footing = Omit<Foot, 'shimMm'>

/** Where a part with a rack datum meets the floor: its feet, or the corners of a row that hangs over it. */
const placesOf = ({ supports, rack }: Built): readonly Point[] =>
  rack?.carriedBy === 'house'
    ? [rack.leftFace, rack.rightFace].flatMap(({ from, to }) => [from, to])
    : supports.filter((support) => support.rests === 'floor').map(({ at }) => at)

/** The floor under each foot of a part that stands on the rack datum, and under the corners of one that hangs over it. */
export const footingsOf = rememberEach<Built, Site, readonly Footing[]>((built, site) =>
  built.zFrom !== 'rack-datum'
    ? []
    : placesOf(built).map(({ x, y }) => ({ part: built.part, at: { x, y }, groundMm: site.groundAt(x, y) })),
)

const highestOf = rememberEach<readonly Footing[], null, Footing | undefined>((footings) =>
  footings.reduce<Footing | undefined>(
    (high, footing) => (high && high.groundMm >= footing.groundMm ? high : footing),
    undefined,
  ),
)

/** Where a rack datum lies: level, or climbing along the row. */
interface Datum {
  readonly levelMm: number
  readonly grade: RowGrade | undefined
}

const isSameDatum = (a: Datum, b: Datum): boolean => a.levelMm === b.levelMm && a.grade === b.grade

/** Every foot but the highest is shimmed up to it. */
export const feetOf = rememberEach<readonly Footing[], Datum, readonly Foot[]>(
  (footings, { levelMm, grade }) =>
    footings.map((footing) => ({
      ...footing,
      shimMm: levelMm + climbAt(grade, footing.at) - footing.groundMm,
    })),
  isSameDatum,
)

/** The datum of a row on grade: the floor's own climb along it, held up by the foot that stands out most. */
const gradedDatum = rememberEach<readonly Footing[], RackFace, Datum>((footings, { from, to }) => {
  const runMm = distance(from, to)
  const perX = (to.x - from.x) / runMm
  const perY = (to.y - from.y) / runMm
  const alongOf = ({ at }: Footing) => (at.x - from.x) * perX + (at.y - from.y) * perY
  const climb = slopeOf(footings.map((footing) => ({ x: alongOf(footing), y: footing.groundMm })))
  return {
    levelMm: Math.max(...footings.map((footing) => footing.groundMm - climb * alongOf(footing))),
    grade: { from, perX: perX * climb, perY: perY * climb },
  }
})

export const highestFooting = (footings: readonly (readonly Footing[])[]): Footing | undefined => {
  let highest: Footing | undefined
  for (const list of footings) {
    const high = highestOf(list, null)
    if (high && (!highest || high.groundMm > highest.groundMm)) highest = high
  }
  return highest
}

/** The datum of one part with feet, as the bay's rails are level. */
export const datumOf = (
  { rack }: Built,
  footings: readonly Footing[],
  across: Settings['datum'],
  highest: Footing | undefined,
): Datum | undefined => {
  if (footings.length === 0) return undefined
  if (across === 'grade' && rack) return gradedDatum(footings, rack.leftFace)
  const top = across === 'bay' ? highest : highestOf(footings, null)
  return top && { levelMm: top.groundMm, grade: undefined }
}
