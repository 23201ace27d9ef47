import type { Sheet } from '../sheet'

export const drillStick: Sheet = {
  id: 'drill-stick',
  code: 'DS',
  title: 'Drill stick',
  reader: 'Drill hand',
  size: 'small',
  pieces: () => [],
}
