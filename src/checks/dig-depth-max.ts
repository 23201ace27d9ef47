import { boxOf, middle } from '../geometry/box'
import type { Body, Built } from '../model/built'
import { LADDER_DEPTH_MM, SHORING_DEPTH_MM } from '../model/digCautions'
import type { Finding } from '../model/finding'
import type { PartRule } from './context'
import { CLOSE_MM, found, lengthOf } from './found'

const RULE = 'dig-depth-max'

const isDug = ({ role }: Body): boolean => role === 'trench' || role === 'pit'

const deepestOf = ({ bodies }: Built): Body | undefined =>
  bodies.filter(isDug).reduce<Body | undefined>(
    // Of digs that are alike to the rounding of sums the first: the same one wherever the bay stands.
    (deep, body) => (deep && body.fromMm > deep.fromMm - CLOSE_MM ? deep : body),
    undefined,
  )

const findingOf = (built: Built, body: Body, depthMm: number): Finding => {
  const isShored = depthMm >= SHORING_DEPTH_MM - CLOSE_MM
  return found({
    rule: RULE,
    subject: 'fit',
    state: isShored ? 'Clash' : 'Tight',
    parts: [built.part],
    at: middle(boxOf(body.outline)),
    measured: lengthOf(depthMm),
    limit: lengthOf(isShored ? SHORING_DEPTH_MM : LADDER_DEPTH_MM),
  })
}

/** How deep is dug: what asks for a ladder, and what asks for held sides. */
export const digDepthMax: PartRule = {
  over: 'part',
  id: RULE,
  title: 'Depth of a dig',
  limit: 'Under 4 ft without a ladder in it, under 5 ft without sloped or shored sides',
  source:
    '29 CFR 1926.651(c)(2) and 1926.652(a)(1), from memory. Local rules and a competent person at the dig have the last word',
  mending:
    'Bring the pit nearer, let two shorter lines share the fall, or plan the dig with a competent person.',
  check: (built) => {
    const body = deepestOf(built)
    const depthMm = body ? -body.fromMm : 0
    return body && depthMm >= LADDER_DEPTH_MM - CLOSE_MM ? [findingOf(built, body, depthMm)] : []
  },
  say: ({ parts, state, measured, limit }, { onTape, name }) => {
    const dug = `${name(parts[0] ?? '')} is dug ${onTape(measured.value)} deep`
    return state === 'Clash'
      ? `${dug}; from ${onTape(limit.value)} on nobody goes in until its sides are sloped or shored as a competent person says.`
      : `${dug}; from ${onTape(limit.value)} on a ladder stands by whoever is in it, and a competent person looks at it daily.`
  },
}
