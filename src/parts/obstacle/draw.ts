import type { Body, Built } from '../../model/built'
import type { Mark } from '../../model/drawing'
import { crossMarks, nameMarks, shapeMark } from '../marks'
import type { Obstacle } from './schema'

/** A post is a crossed box, cut through; equipment that hangs overhead is a hidden line. */
const bodyMarks = (part: Obstacle, { role, outline, fromMm }: Body): readonly Mark[] => {
  switch (role) {
    case 'keep-clear':
      return [shapeMark(outline, 'keep-clear', 'keep-clear')]
    case 'footing':
      return [shapeMark(outline, 'hidden', 'none')]
    case 'post':
      return [
        shapeMark(outline, 'outline', 'post'),
        ...(part.shape === 'box' ? crossMarks(outline, 'outline') : []),
      ]
    default:
      return [shapeMark(outline, fromMm > 0 ? 'hidden' : 'outline', 'steel')]
  }
}

/** What lies under is drawn first. */
const order: readonly Body['role'][] = ['keep-clear', 'footing', 'equipment', 'post']

/** A name is wanted once the thing itself can be made out: at about 10 px, or 1 mm of paper. */
const NAMED_FROM = 10

/** The name, left out from so far that a row of posts would be a row of words. */
const named = (part: Obstacle): readonly Mark[] => {
  const nearMm = Math.max(part.lengthMm, part.widthMm) / NAMED_FROM
  return nameMarks(part.name, part.at).map((mark) => ({ ...mark, nearMm }))
}

export const drawObstacle = (part: Obstacle, built: Built): readonly Mark[] => [
  ...order.flatMap((role) => built.bodies.filter((b) => b.role === role).flatMap((b) => bodyMarks(part, b))),
  ...named(part),
]
