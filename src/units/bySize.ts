/** Things by what they are and then by how big, as a shelf has them: 3/4 in before 1 in, though a 1 sorts before a 3. */

const SIZE = /(?:(\d+)-)?(\d+)\/(\d+)|\d+(?:\.\d+)?/g

const sizesIn = (words: string): number[] =>
  [...words.matchAll(SIZE)].map(([all, whole = '0', part, of]) =>
    part === undefined ? Number(all) : Number(whole) + Number(part) / Number(of),
  )

const compare = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)

/** Order of two names such as `Elbow, 1-1/2 in poly pipe`: by their words, then size by size. */
export const bySize = (a: string, b: string): number => {
  const words = compare(a.replaceAll(SIZE, ''), b.replaceAll(SIZE, ''))
  if (words !== 0) return words
  const sizes = sizesIn(b)
  return sizesIn(a).reduce((order, size, at) => order || size - (sizes[at] ?? 0), 0)
}
