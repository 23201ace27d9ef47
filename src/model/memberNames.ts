/** What each member mark stands for, in the crew's words. */
const names: Readonly<Record<string, string>> = {
  'RS-p': 'riser, plain hole',
  'RS-s': 'riser, sleeve hole',
  'RS-d': 'riser, two holes',
  BX: 'base cross-piece',
  TT: 'top tie',
  BR: 'base runner',
  SP: 'runner splice plate',
  SB: 'side brace',
  XB: 'cross brace',
  RL: 'rail',
  'RL-b': 'rail, big stick',
  SV: 'sleeve',
  DW: 'rail dowel',
  HB: 'hanger bar',
  GB: 'gutter bearer',
  GT: 'gutter trough',
}

/** Whether a member goes by a mark, as all that is cut from sticks does; tubes go by their role. */
export const hasMark = (mark: string): boolean => Object.hasOwn(names, mark)

/** The full name of a member; a tube's role is its own name. */
export const memberName = (mark: string): string => names[mark] ?? mark.replaceAll('-', ' ')

/** The same as a title: `Hanger bar`, `Riser pipe`. */
export const memberTitle = (mark: string): string => {
  const name = memberName(mark)
  return name.charAt(0).toUpperCase() + name.slice(1)
}
