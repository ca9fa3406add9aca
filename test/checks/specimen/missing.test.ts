import { flags, silent } from '../tester.ts';
import { note, sent } from './_specimen.ts';

describe('specimen/missing', () => {
  it('flags every method that takes tissue', () => {
    for (const method of [
      'shave',
      'saucerization',
      'snip',
      'curettage',
      'punch',
      'incisional',
      'ellipse',
      'ED&C',
    ])
      flags('specimen/missing', note(['⟦site⟧: left cheek', `method: ${method}`]), { severity: 'warning' });
  });

  it('is silent where the specimen is named, nothing was taken, or the method is not known', () => {
    silent('specimen/missing', sent('{label: A}'));
    silent('specimen/missing', sent('not sent, skin tag'));
    silent('specimen/missing', sent('??'));
    silent('specimen/missing', note(['site: left cheek', 'method: cryotherapy']));
    silent('specimen/missing', note(['site: left cheek', 'method: whatever']));
    silent('specimen/missing', note(['site: left cheek']));
  });
});
