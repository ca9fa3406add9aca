import { flags, silent } from '../tester.ts';
import { note } from './_specimen.ts';

describe('specimen/orientation-missing', () => {
  const code = 'specimen/orientation-missing';
  const excised = (question: string, specimen: string, ...more: readonly string[]): string =>
    note(['site: left cheek', 'method: excisional', `question: "${question}"`, ...more, specimen]);

  it('asks for it where an excision is for a suspected malignancy', () => {
    for (const question of ['rule out melanoma', 'BCC', 'known SCC, re-excision', 'melanoma in situ'])
      flags(code, excised(question, '⟦specimen⟧: {label: A, medium: formalin}'), { severity: 'information' });
    flags(code, excised('?', '⟦specimen⟧: {label: A}', 'lesion: biopsy-proven basal cell carcinoma'));
    flags(code, excised('BCC', '⟦specimen⟧: {label: A}').replace('excisional', 'ellipse'));
  });

  it('asks where a mark is that is said without its place', () => {
    for (const words of ['suture', 'marked with ink', 'oriented'])
      flags(code, excised('nevus', `specimen: {label: A, orientation: ⟦${words}⟧}`), {
        severity: 'information',
      });
  });

  it('is silent where it is said, anywhere, where nothing is suspected, and for other methods', () => {
    for (const words of [
      "suture at 12 o'clock",
      'not oriented',
      '??',
      'see diagram',
      'stitch marks the pole',
    ])
      silent(code, excised('melanoma', `specimen: {label: A, orientation: "${words}"}`));
    silent(code, excised('melanoma', 'specimen: {label: A}', "remarks: suture tag at 12 o'clock"));
    silent(code, excised('melanoma', 'specimen: {label: A}', 'remarks: specimen oriented as usual'));
    silent(code, excised('melanoma', 'specimen: not sent, patient declined'));
    silent(code, excised('melanoma', 'specimen: [{label: A, orientation: suture superior}, {label: B}]'));
    for (const question of ['cyst', 'no concern for melanoma', 'nevus, 6 mm', 'lipoma'])
      silent(code, excised(question, 'specimen: {label: A}'));
    for (const method of ['punch', 'shave', 'incisional'])
      silent(code, excised('melanoma', 'specimen: {label: A}').replace('excisional', method));
  });
});
