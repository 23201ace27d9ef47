/** Lines of a file, commas aside, that are not in another in the same order. */
export const linesLost = (file: string, now: string): readonly string[] => {
  const linesOf = (of: string) => of.split('\n').map((line) => line.replace(/,$/, ''))
  const kept = linesOf(file)
  const found = linesOf(now).reduce((count, line) => (line === kept[count] ? count + 1 : count), 0)
  return kept.slice(found)
}
