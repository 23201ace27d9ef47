import { Lock } from 'lucide-react'
import { memo, useDeferredValue, useMemo } from 'react'
import type { Selection } from 'react-aria-components'
import { Collection, Header, ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components/ListBox'
import { ListLayout, Virtualizer } from 'react-aria-components/Virtualizer'
import type { Evaluation } from '../evaluate/evaluation'
import { usePlanner, usePlannerState } from '../store/react'
import { writerFor } from '../units/writer'
import { type PartRow, partRows } from './partRows'
import './partsList.css'
import { bringInSight } from './floorActions'
import { Said } from './Said'
import { StateMark } from './StateMark'

/** px; the list draws only the rows in sight, so it must know their sizes beforehand. */
const sizes = { rowSize: 50, headingSize: 38 }

const waterWords = ({ water }: PartRow): string => (water ? `${water.word} ${water.words}` : '')

const strengthWords = ({ strength = [] }: PartRow): string =>
  strength.map(({ word, words }) => `${word} ${words}`.trim()).join(', ')

function Row({ row }: { readonly row: PartRow }) {
  return (
    <ListBoxItem
      id={row.id}
      className="parts-list-row"
      textValue={[row.name, row.place, row.word, waterWords(row), strengthWords(row)]
        .filter(Boolean)
        .join(', ')}
    >
      <b>
        {row.name} {row.isLocked && <Lock size={12} aria-label="locked" />}
      </b>
      <span className="parts-list-states">
        <StateMark word={row.word} rank={row.rank} />
        {row.strength?.map(({ word, rank, words }) => (
          <span key={word} title={words}>
            <StateMark word={word} rank={rank} /> <span className="only-heard">{words}</span>
          </span>
        ))}
      </span>
      <span>
        <Said words={row.place} />
      </span>
      {row.water && (
        <span className="parts-list-flow">
          <StateMark word={row.water.word} rank={row.water.rank} /> {row.water.words}
        </span>
      )}
    </ListBoxItem>
  )
}

const List = memo(function List({ evaluation }: { readonly evaluation: Evaluation }) {
  const planner = usePlanner()
  const [selection, units] = usePlannerState((state) => [state.selection, state.units])
  const groups = useMemo(() => partRows(evaluation, writerFor(units)), [evaluation, units])
  const select = (keys: Selection) => {
    const ids = keys === 'all' ? evaluation.layout.parts.map(({ id }) => id) : [...keys].map(String)
    planner.select(ids)
    const [only, ...more] = ids
    if (only !== undefined && more.length === 0) bringInSight(planner, only)
  }
  return (
    <Virtualizer layout={ListLayout} layoutOptions={sizes}>
      <ListBox
        aria-label="Parts of the bay"
        className="parts-list"
        selectionMode="multiple"
        selectionBehavior="replace"
        selectedKeys={selection}
        onSelectionChange={select}
        items={groups}
        renderEmptyState={() => 'Nothing stands in this bay yet.'}
      >
        {({ kind, title, rows }) => (
          <ListBoxSection id={kind}>
            <Header className="parts-list-kind">
              {title} <span>{rows.length}</span>
            </Header>
            <Collection items={rows}>{(row) => <Row row={row} />}</Collection>
          </ListBoxSection>
        )}
      </ListBox>
    </Virtualizer>
  )
})

/** The floor plan as a list, for keys and for screen readers: what stands where, and how it fares. */
export function PartsList() {
  return <List evaluation={useDeferredValue(usePlannerState((state) => state.evaluation))} />
}
