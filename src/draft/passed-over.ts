import { wordSet } from './word-set.ts';

/** Words that say nothing by themselves: what is not placed and is among them is passed over. A closed list. */
export const passWords = wordSet(
  'the a an and or of in on at to for with was were is are be been being has had have this that these those it its then than as by from into ' +
    "he she they him her his hers their them we i us our you your patient pt patient's pt's there here so also well okay ok " +
    'procedure performed done area site sites skin used using use placed applied obtained achieved given got get did do does taken made ' +
    "today's who which where when " +
    'approximate total ml mr mrs ms miss dr doctor prof nurse ' +
    'please thank thanks dictating dictation dictated next alright all right now just',
);
