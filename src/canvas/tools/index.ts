import type { ToolId } from '../../store/planner'
import { hand } from './hand'
import { place } from './place'
import { select } from './select'
import { tape } from './tape'
import type { Tool } from './tool'

/** Every tool, in the order of the bar. */
const tools: readonly Tool[] = [select, hand, tape, place]

const byId = new Map(tools.map((tool) => [tool.id, tool]))

export const toolOf = (id: ToolId): Tool => byId.get(id) ?? select
