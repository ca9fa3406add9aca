export { rowsIn, rowsSaid } from '../note/words/understood.ts';
