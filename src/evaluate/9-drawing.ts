import type { Part } from '../layout/schema'
import type { Built } from '../model/built'
import type { Mark } from '../model/drawing'
import type { PartId } from '../model/ids'
import { kindOf } from '../parts'
import { discMark, lineMark } from '../parts/marks'
import { isSameList, rememberEach } from '../model/remember'
import { inches } from '../units/length'

const marksFor = rememberEach<Part, Built, readonly Mark[]>((part, built) => kindOf(part).draw(part, built))

/** Half of what a fitting at a join is drawn as: that of a 2 in one. */
const FITTING_RADIUS_MM = inches(1.25)

/** What is drawn of the pipes between parts: the way of the water, or, where none is added, what stands at the ends of mains. */
const joinedMarks = rememberEach<Built, null, readonly Mark[]>(({ tubes, fittings }) =>
  tubes.length > 0
    ? tubes.map(({ path }) => lineMark(path, 'water'))
    : fittings
        .filter(({ item }) => !item.startsWith('clamp-'))
        .map(({ at }) => discMark(at, FITTING_RADIUS_MM, 'water', 'paper')),
)

const withJoined = rememberEach<readonly Mark[], readonly (readonly Mark[])[], readonly Mark[]>(
  // Over the timber that they pass under: a pipe that is not seen on the plan is forgotten on the floor.
  (own, joined) => [...own, ...joined.flat()],
  isSameList,
)

const byPart = (joined: readonly Built[]): ReadonlyMap<PartId, readonly (readonly Mark[])[]> => {
  const marks = new Map<PartId, (readonly Mark[])[]>()
  for (const pipes of joined)
    marks.set(pipes.part, [...(marks.get(pipes.part) ?? []), joinedMarks(pipes, null)])
  return marks
}

/** Step 9: the drawing operations of each part, with the pipes that join it. `built` is in the order of `parts`. */
export const draw = (
  parts: readonly Part[],
  built: readonly Built[],
  joined: readonly Built[],
): ReadonlyMap<PartId, readonly Mark[]> => {
  const marks = new Map<PartId, readonly Mark[]>()
  const between = byPart(joined)
  parts.forEach((part, index) => {
    const things = built[index]
    if (!things) return
    const own = marksFor(part, things)
    const pipes = between.get(part.id)
    marks.set(part.id, pipes ? withJoined(own, pipes) : own)
  })
  return marks
}
