import type { Paint } from '../../store/planner'
import { strengthMarks } from '../strength/strengthWords'
import { flowMarks, type MarksOf } from './rowStates'

/** What rows say of themselves on a painted plan; undefined where they say nothing. */
const marksBy: Readonly<Partial<Record<Paint, MarksOf>>> = { flow: flowMarks, strength: strengthMarks }

export const rowMarks = (as: Paint): MarksOf | undefined => marksBy[as]
