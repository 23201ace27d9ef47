/** A field that holds another value. Whoever puts it in words reads its schema. */
export interface FieldChange {
  readonly field: string
  readonly from: unknown
  readonly to: unknown
}

/** Equal by content. Keys stand in the order of their schema on both sides. */
const isSame = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b)

/** Fields of two records of one kind that differ, in the order of the later one; `without` names those that are told otherwise. */
export const fieldChanges = (
  before: object,
  after: object,
  without: ReadonlySet<string> = new Set(),
): readonly FieldChange[] => {
  const was = new Map<string, unknown>(Object.entries(before))
  const is = new Map<string, unknown>(Object.entries(after))
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((field) => {
    const [from, to] = [was.get(field), is.get(field)]
    return without.has(field) || isSame(from, to) ? [] : [{ field, from, to }]
  })
}
