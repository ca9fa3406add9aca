import { flags, silent } from '../tester.ts';
import { note } from './_question.ts';

describe('method/hair-loss-sample', () => {
  const code = 'method/hair-loss-sample';
  const asked = 'question: scarring alopecia vs alopecia areata';

  it('flags what is too small or too shallow', () => {
    flags(code, note('vertex of scalp', 'method: punch', 'size: ⟦3 mm⟧', asked), { severity: 'warning' });
    flags(code, note('vertex of scalp', 'method: ⟦shave⟧', asked), { severity: 'warning' });
    flags(code, note('vertex of scalp', 'method: punch', 'size: 4 mm', 'depth: ⟦deep dermis⟧', asked), {
      severity: 'information',
    });
  });

  it('is information where one punch is to serve both planes, and nobody said which', () => {
    const one = (size: string, question: string, ...more: readonly string[]): string =>
      note(
        'vertex of scalp',
        'method: punch',
        `size: ${size}`,
        'depth: subcutis',
        `question: ${question}`,
        ...more,
      );
    flags(code, one('⟦4 mm⟧', 'scarring alopecia'), { severity: 'information' });
    silent(code, one('4 mm', 'scarring alopecia, horizontal sections'));
    silent(code, one('4 mm', 'scarring alopecia', 'specimen: {tests: [transverse sections]}'));
    silent(code, one('6 mm', 'scarring alopecia', 'specimen: [{label: A}, {label: B}]'));
    const other = '  - site: vertex of scalp, 1 cm behind\n    method: punch\n    size: 4 mm\n';
    silent(code, one('4 mm', 'scarring alopecia') + other);
  });

  it('is information where the punch went in across the hair', () => {
    const by = (instrument: string): string =>
      note(
        'vertex of scalp',
        'method: punch',
        'size: 4 mm',
        'depth: subcutis',
        asked,
        `instrument: ${instrument}`,
        'specimen: [{label: A}, {label: B}]',
      );
    flags(code, by('⟦punch perpendicular to the skin⟧'), { severity: 'information' });
    silent(code, by('punch angled with the hair'));
  });

  for (const question of ['inflammation in areas of alopecia', 'papule in alopecia; lichen planopilaris?'])
    it(`flags the question ${question}`, () => {
      flags(code, note('vertex of scalp', 'method: punch', 'size: ⟦3 mm⟧', `question: "${question}"`));
    });

  it('is silent on 4 mm into fat, on other questions and off the hair', () => {
    silent(
      code,
      note(
        'vertex of scalp',
        'method: punch',
        'size: 4 mm',
        'depth: subcutis',
        `${asked}, vertical sections`,
      ),
    );
    silent(code, note('vertex of scalp', 'method: punch', 'size: 3 mm', 'question: basal cell carcinoma'));
    for (const question of [
      'papule in an area of alopecia, basal cell carcinoma?',
      'lesion within alopecia',
      'squamous cell carcinoma arising in a patch of scarring alopecia',
    ])
      silent(code, note('vertex of scalp', 'method: shave', `question: "${question}"`));
    silent(
      code,
      note('vertex of scalp', 'method: punch', 'size: 3 mm', 'question: "psoriasis, no alopecia"'),
    );
    silent(code, note('left forearm', 'method: punch', 'size: 3 mm', asked));
  });
});
