import type { Table } from '../../model/table'
import { buyTable, pieceTable } from './countTables'
import { flowTable, levelTable } from './figureTables'
import { findingTable } from './findingTable'
import { partTable } from './partTable'
import { sumTable } from './sumTable'
import type { Told } from './told'

/** All that differs between two plans, table by table; a table without a difference is left out. */
export const differenceTables = (told: Told): readonly Table[] =>
  [
    partTable(told),
    sumTable(told),
    findingTable(told),
    levelTable(told),
    flowTable(told),
    pieceTable(told),
    buyTable(told),
  ].filter(({ rows }) => rows.length > 0)
