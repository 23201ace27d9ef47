/** Places at least `gap` apart, in the same order and as near to where they were as that allows. */
export const spread = (places: readonly number[], gap: number): number[] => {
  // Groups of places that push each other, each set about the mean of where its members want to be.
  const groups: { sum: number; count: number }[] = []
  const startOf = ({ sum, count }: { sum: number; count: number }) => sum / count - (gap * (count - 1)) / 2
  for (const place of places) {
    let group = { sum: place, count: 1 }
    for (let last = groups.at(-1); last !== undefined; last = groups.at(-1)) {
      if (startOf(last) + gap * last.count <= startOf(group)) break
      group = { sum: last.sum + group.sum, count: last.count + group.count }
      groups.pop()
    }
    groups.push(group)
  }
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, i) => startOf(group) + gap * i))
}
