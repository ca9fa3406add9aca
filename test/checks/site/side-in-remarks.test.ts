import { flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/side-in-remarks', () => {
  const code = 'site/side-in-remarks';
  const remark = (text: string, key = 'remarks'): string => one('left cheek', `    ${key}: ${text}\n`);

  it('flags the same place on the other side', () => {
    flags(code, remark('tolerated the punch of the ⟦right cheek⟧ well'), { severity: 'warning' });
    flags(code, remark('specimen from ⟦right cheek⟧ labeled in front of the patient'));
    flags(code, remark('slight oozing from the ⟦right cheek⟧', 'complications'));
  });

  it('reads a side that is abbreviated', () => {
    flags(code, remark('⟦Rt cheek⟧ biopsied without trouble'));
    flags(code, remark('oozing from ⟦R cheek⟧'));
  });

  it('reads the remarks of the visit and each of a list too', () => {
    flags(code, `${one('left cheek')}remarks: punch of the ⟦right cheek⟧ without trouble\n`);
    flags(code, one('left cheek', '    remarks: [tolerated well, oozing of the ⟦right cheek⟧]\n'));
  });

  it('is silent for the same side, another place, the past, another day and another lesion', () => {
    for (const text of [
      'tolerated the punch of the left cheek well',
      'lies on her right side',
      'melanoma of the right cheek in 2014',
      'history of BCC on the right cheek',
      'BCC of the right cheek treated with Mohs',
      'right cheek AK treated with cryotherapy',
      'will look at the right cheek next visit',
      'also has a scar on the right cheek',
      'compared with the right cheek',
      'prior excision of the right cheek',
      'hx SCC R cheek',
      'mother had a melanoma of the right cheek',
      'FHx melanoma right cheek',
      's/p Mohs right cheek',
    ])
      silent(code, remark(text));
  });

  it('is silent where the other side is sampled too', () => {
    silent(code, `${remark('done before the right cheek')}  - site: right cheek\n    method: punch\n`);
  });
});
