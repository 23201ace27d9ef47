import type { Built } from '../model/built'
import type { Finding } from '../model/finding'
import { clashFinding } from './clashFinding'
import { clashesBetween, type Clash, type Owner } from './clashes'
import type { BayRule } from './context'
import { buriedOf, type Solids, standingOf } from './solids'

const RULE = 'body-overlap'

const owners = (
  built: readonly Built[],
  solidsOf: (built: Built, none: null) => Solids | undefined,
): Owner[] =>
  built.flatMap((b) => {
    const solids = solidsOf(b, null)
    return solids ? [{ part: b.part, solids }] : []
  })

const roleNames: Readonly<Record<string, string>> = {
  canopy: 'leaves',
  frame: 'frame',
  foot: 'foot',
  trough: 'trough',
  post: 'post',
  equipment: 'equipment',
  footing: 'footing',
  pit: 'pit',
  trench: 'trench',
}

const roleName = (role: string): string => roleNames[role] ?? role

const findingOf = (clash: Clash): Finding =>
  clashFinding(clash, {
    rule: RULE,
    // Two posts may meet above the floor, and their footings below it.
    detail: clash.b.toMm <= 0 ? 'below' : '',
    facts: { a: roleName(clash.a.role), b: roleName(clash.b.role) },
    depth: 'Least shift that parts them',
  })

/** A drain ends in its pit, and drains join each other: those two may share the ground. */
const isMeant = ({ a, b }: Clash): boolean => {
  const roles = [a.role, b.role].sort().join(' ')
  return roles === 'pit trench' || roles === 'trench trench'
}

/** Two things can't stand in one place at the same height, above the floor or below it. */
export const bodyOverlap: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Two things in one place',
  limit: 'No overlap at the same height',
  source: 'Geometry',
  mending: 'Move one of the two.',
  check: ({ built }) => {
    const standing = owners(built, standingOf)
    const buried = owners(built, buriedOf)
    const clashes = [...clashesBetween(standing, standing), ...clashesBetween(buried, buried)]
    return clashes.filter((clash) => !isMeant(clash)).map(findingOf)
  },
  say: ({ parts, measured, facts }, { onTape, name }) => {
    const [a = '', b = ''] = parts
    return `${name(a)} (${facts['a']}) runs ${onTape(measured.value)} into ${name(b)} (${facts['b']}).`
  },
}
