import type { Layout } from '../../layout/schema'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { kindOf } from '../../parts'
import { toTicks } from '../../units/length'

/** Like pieces of one stock that the same fields make shorter. */
export interface Members {
  readonly stock: string
  readonly lengthTicks: number
  /** In order of the alphabet. */
  readonly marks: readonly string[]
  readonly count: number
  /** Parts that have such a piece. */
  readonly parts: readonly PartId[]
  /** Fields of these parts that make them shorter, the one that is given up most lightly first; none where nothing does. */
  readonly fields: readonly string[]
}

interface Growing {
  readonly stock: string
  readonly lengthTicks: number
  readonly fields: readonly string[]
  readonly marks: Set<string>
  readonly parts: Set<PartId>
  count: number
}

/** The sticks of a bay by what they are cut from, how long they are, and what makes them shorter. */
export const membersOf = ({ parts }: Layout, built: readonly Built[]): readonly Members[] => {
  const all = new Map<string, Growing>()
  parts.forEach((part, index) => {
    const { shavedBy = {} } = kindOf(part)
    for (const { stock, mark, lengthMm } of built[index]?.sticks ?? []) {
      const lengthTicks = toTicks(lengthMm)
      const fields = shavedBy[mark] ?? []
      const key = `${stock} ${lengthTicks} ${fields.join()}`
      const same = all.get(key) ?? {
        stock,
        lengthTicks,
        fields,
        marks: new Set(),
        parts: new Set(),
        count: 0,
      }
      all.set(key, same)
      same.marks.add(mark)
      same.parts.add(part.id)
      same.count += 1
    }
  })
  return [...all.values()].map((each) => ({ ...each, marks: [...each.marks].sort(), parts: [...each.parts] }))
}
