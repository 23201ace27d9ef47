export { hasMark, memberName } from '../store/memberNames'
