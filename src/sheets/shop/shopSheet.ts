import type { Sheet } from '../sheet'

export const shopSheet: Sheet = {
  id: 'shop',
  code: 'SH',
  title: 'Shop list',
  reader: 'Buyer',
  size: 'small',
  pieces: () => [],
}
