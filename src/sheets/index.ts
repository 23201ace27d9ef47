import { floorSheet } from './floor/floorSheet'
import { assemblyCard } from './assembly/assemblyCard'
import { bundleLabels } from './labels/bundleLabels'
import { changeNote } from './change/changeNote'
import { drillStick } from './drill/drillStick'
import { gutterCard } from './gutters/gutterCard'
import { levelsSheet } from './levels/levelsSheet'
import { pegTable } from './pegs/pegTable'
import { pipeList } from './pipes/pipeList'
import { roundCard } from './round/roundCard'
import { safetySheet } from './safety/safetySheet'
import { sawList } from './saw/sawList'
import { settingOut } from './settingOut/settingOut'
import { shopSheet } from './shop/shopSheet'
import { startUpSheet } from './startUp/startUpSheet'
import { tubeCard } from './tubes/tubeCard'
import { valveCard } from './valves/valveCard'
import type { Sheet } from './sheet'

/** Every paper that the program can draw, in the order in which the job needs them. */
export const sheets: readonly Sheet[] = [
  floorSheet,
  settingOut,
  pegTable,
  levelsSheet,
  sawList,
  drillStick,
  bundleLabels,
  assemblyCard,
  gutterCard,
  pipeList,
  tubeCard,
  shopSheet,
  valveCard,
  startUpSheet,
  roundCard,
  changeNote,
  safetySheet,
]
