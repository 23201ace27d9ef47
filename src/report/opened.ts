import { evaluate } from '../evaluate/evaluate'
import type { Judged } from '../evaluate/evaluation'
import { readLayout } from '../layout/file'
import { provedPlan } from './proved'

/** A layout file as it was read, under the name that it was asked for by. */
export interface LayoutText {
  readonly name: string
  readonly text: string
}

type Opened = { readonly ok: true; readonly plan: Judged } | { readonly ok: false; readonly sentence: string }

/** What the page says to whoever has a bay open, as one sentence for who has none. */
const withoutPage = (sentence: string): string =>
  sentence
    .replace(/ Your bay is untouched\.$/, '')
    .replace(/^This file was not opened\. In it, /, '')
    .replace(/^This file /, 'this file ')
    .replace(/, so it was not opened\.$/, '.')

/** The plan of a layout file with its cut lists proven, or one sentence that says what is wrong with the file. */
export const opened = async ({ name, text }: LayoutText): Promise<Opened> => {
  const read = readLayout(text)
  return read.ok
    ? { ok: true, plan: await provedPlan(evaluate(read.layout)) }
    : { ok: false, sentence: `${name}: ${withoutPage(read.sentence)}` }
}
