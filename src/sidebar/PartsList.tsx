import { Lock } from 'lucide-react'
import { memo, useDeferredValue, useMemo } from 'react'
import type { Selection } from 'react-aria-components'
import { Collection, Header, ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components/ListBox'
import type { Evaluation } from '../evaluate/evaluation'
import { usePlanner, usePlannerState } from '../store/react'
import { centredOn } from '../store/view'
import { writerFor } from '../units/writer'
import { type PartRow, partRows } from './partRows'
import './partsList.css'
import { placeOfPart } from './placeWords'
import { StateMark } from './StateMark'

function Row({ row }: { readonly row: PartRow }) {
  return (
    <ListBoxItem id={row.id} className="parts-list-row" textValue={`${row.name}, ${row.place}, ${row.word}`}>
      <b>
        {row.name} {row.isLocked && <Lock size={12} aria-label="locked" />}
      </b>
      <StateMark word={row.word} rank={row.rank} />
      <span>{row.place}</span>
    </ListBoxItem>
  )
}

const List = memo(function List({ evaluation }: { readonly evaluation: Evaluation }) {
  const planner = usePlanner()
  const [selection, units] = usePlannerState((state) => [state.selection, state.units])
  const groups = useMemo(() => partRows(evaluation, writerFor(units)), [evaluation, units])
  const select = (keys: Selection) =>
    planner.select(keys === 'all' ? evaluation.layout.parts.map(({ id }) => id) : [...keys].map(String))
  const bringToMiddle = (id: string) => {
    const { view, size } = planner.store.getState()
    const part = evaluation.layout.parts.find((p) => p.id === id)
    if (part) planner.set({ view: centredOn(view, placeOfPart(part), size, view.pxPerMm) })
  }
  return (
    <ListBox
      aria-label="Parts of the bay"
      className="parts-list"
      selectionMode="multiple"
      selectionBehavior="replace"
      selectedKeys={selection}
      onSelectionChange={select}
      onAction={(key) => bringToMiddle(String(key))}
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
  )
})

/** The floor plan as a list, for keys and for screen readers: what stands where, and how it fares. */
export function PartsList() {
  return <List evaluation={useDeferredValue(usePlannerState((state) => state.evaluation))} />
}
