import loadHighs from 'highs'
import runtimeAddress from 'highs/runtime?url'
import type { IntegerSolver } from '../../solvers/cutting/proof'
import { solverOver } from './solverOver'

/** Solves integer programs with the package that is loaded when this file is. */
export const highsSolver: IntegerSolver = solverOver(loadHighs({ locateFile: () => runtimeAddress }))
