import type { Bay, BayRule, PartRule, Rule } from '../checks/context'
import { rules } from '../checks'
import { withSoundMend } from '../checks/mendRoom'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import { type Finding, rankOf } from '../model/finding'
import { rememberEach } from '../model/remember'

const isPartRule = (rule: Rule): rule is PartRule => rule.over === 'part'
const isBayRule = (rule: Rule): rule is BayRule => rule.over === 'bay'

const partRules = rules.filter(isPartRule)
const bayRules = rules.filter(isBayRule)

const partFindings = rememberEach<Built, Settings, readonly Finding[]>((built, settings) =>
  partRules.flatMap((rule) => rule.check(built, settings)),
)

/** What must be mended, then what must be looked at, each in the order of the rules. */
const worstFirst = (findings: readonly Finding[]): Finding[] =>
  [2, 1].flatMap((rank) => findings.filter((finding) => rankOf(finding) === rank))

const ofBay = rememberEach<Bay, undefined, readonly Finding[]>((bay) =>
  worstFirst([
    ...bay.built.flatMap((built) => partFindings(built, bay.settings)),
    ...bayRules.flatMap((rule) => rule.check(bay)).map((finding) => withSoundMend(finding, bay)),
  ]),
)

/**
 * Step 8: every rule over the bay; what must be mended comes first. Remembered for the bay, so that whoever shows findings
 * asks here.
 */
export const findingsOf = (bay: Bay): readonly Finding[] => ofBay(bay, undefined)
