import type { PaperSet } from './paperSet'

export function SetDeeds(_: { readonly set: PaperSet }) {
  return <></>
}
