export { hasMark, memberName } from '../model/memberNames'
