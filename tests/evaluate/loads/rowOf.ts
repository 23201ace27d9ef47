import type { Built } from '../../../src/model/built'
import type { RowStrength, Screen, ScreenId } from '../../../src/model/strength'
import { frameOf, type Frame } from '../../../src/evaluate/loads/frame'
import { rowStrength } from '../../../src/evaluate/loads/rowStrength'
import { settingsSchema, type Settings } from '../../../src/layout/settings'
import type { RackRow } from '../../../src/parts/rack-row/schema'
import { build, row } from '../../support/rackRows'

/** Settings as they come, but for these. */
export const settingsWith = (more: Partial<Settings> = {}): Settings => ({
  ...settingsSchema.parse({}),
  ...more,
})

export const frameOfBuilt = (built: Built): Frame => frameOf(built)!

/** Step 5 of built things, reckoned anew: nothing is remembered. */
export const strengthOfBuilt = (built: Built, settings = settingsWith()): RowStrength =>
  rowStrength(frameOfBuilt(built), { settings, measured: [] })

/** Of a row of the schema's defaults but for these, on a level floor. */
export const strengthOfRow = (more: Partial<RackRow> = {}, settings = settingsWith()): RowStrength =>
  strengthOfBuilt(build(row(more)), settings)

export const screenOf = ({ screens }: RowStrength, id: ScreenId, mark?: string): Screen =>
  screens.find((screen) => screen.id === id && (mark === undefined || screen.mark === mark))!
