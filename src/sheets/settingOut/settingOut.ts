import type { Sheet } from '../sheet'

export const settingOut: Sheet = {
  id: 'setting-out',
  code: 'SO',
  title: 'Setting-out sheet',
  reader: 'Setter-out',
  size: 'small',
  pieces: () => [],
}
