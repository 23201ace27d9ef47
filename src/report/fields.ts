import { blank, clean, counted, said, type Cell, type Column, type Row, type Table } from '../model/table'
import { thousands } from '../units/thousands'

/** A column of a report and how it is read off what a row is of. */
export interface Field<T> extends Column {
  readonly cell: (of: T) => Cell
  /** For programs alone: on a terminal it would only be in the way. */
  readonly isQuiet?: true
}

/** A part of the report: the whole table for programs, and of it what is read on a terminal. */
export interface Section {
  readonly table: Table
  /** undefined: too long to be read there. */
  readonly onTerminal: Table | undefined
}

/** A number and its words; nothing where it is not known or never comes to an end. */
export const numberCell = (value: number | undefined | null, write: (value: number) => string): Cell =>
  value === undefined || value === null || !Number.isFinite(value)
    ? blank()
    : counted(clean(value), write(value))

export const countCell = (value: number): Cell => counted(value, thousands(value))

export const textField = <T>(key: string, title: string, of: (item: T) => string): Field<T> => ({
  key,
  title,
  unit: 'text',
  cell: (item) => said(of(item)),
})

export const countField = <T>(key: string, title: string, of: (item: T) => number): Field<T> => ({
  key,
  title,
  unit: 'count',
  cell: (item) => countCell(of(item)),
})

export const numberField = <T>(
  key: string,
  title: string,
  unit: Column['unit'],
  write: (value: number) => string,
  of: (item: T) => number | undefined | null,
): Field<T> => ({ key, title, unit, cell: (item) => numberCell(of(item), write) })

export const quiet = <T>(field: Field<T>): Field<T> => ({ ...field, isQuiet: true })

const columnOf = <T>({ key, title, unit }: Field<T>): Column => ({ key, title, unit })

const tableOver = <T>(
  names: Pick<Table, 'id' | 'title'>,
  fields: readonly Field<T>[],
  items: readonly T[],
  keyOf: (item: T, index: number) => string,
): Table => ({
  ...names,
  columns: fields.map(columnOf),
  rows: items.map((item, index): Row => ({
    key: keyOf(item, index),
    cells: fields.map(({ cell }) => cell(item)),
  })),
})

interface SectionOf<T> {
  readonly id: string
  readonly title: string
  readonly fields: readonly Field<T>[]
  readonly items: readonly T[]
  readonly keyOf: (item: T, index: number) => string
  readonly isForPrograms?: boolean
}

/** A table of like things, a row each. */
export const sectionOf = <T>({
  id,
  title,
  fields,
  items,
  keyOf,
  isForPrograms = false,
}: SectionOf<T>): Section => ({
  table: tableOver({ id, title }, fields, items, keyOf),
  onTerminal: isForPrograms
    ? undefined
    : tableOver(
        { id, title },
        fields.filter(({ isQuiet }) => isQuiet !== true),
        items,
        keyOf,
      ),
})
