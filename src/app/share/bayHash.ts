/** What stands in an address's hash before a bay. Nothing after a `#` is ever sent to a server. */
const MARK = '#bay='

export const holdsBay = (hash: string): boolean => hash.startsWith(MARK)

export const asHash = (text: string): string => `${MARK}${text}`

export const fromHash = (hash: string): string => hash.slice(MARK.length)
