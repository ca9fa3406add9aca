import { flags, silent } from '../tester.ts';
import { note } from './_question.ts';

describe('method/blister-sample', () => {
  const code = 'method/blister-sample';
  const asked = 'question: bullous pemphigoid';
  const fluorescence = 'specimen: {label: A, medium: Michel, tests: [DIF]}';

  it('flags a sample from the blister for immunofluorescence', () => {
    flags(code, note('left thigh', 'method: punch', 'relation: ⟦lesional⟧', asked, fluorescence), {
      severity: 'warning',
    });
  });

  it('asks for a second sample where none is for immunofluorescence', () => {
    flags(
      code,
      note(
        'left thigh',
        'method: punch',
        asked.replace('bullous pemphigoid', '⟦bullous pemphigoid⟧'),
        'specimen: {label: A, medium: formalin}',
      ),
      { severity: 'information' },
    );
  });

  it('is silent on perilesional skin, the edge, a second sample, and other questions', () => {
    for (const relation of ['perilesional', 'edge', 'uninvolved', '??'])
      silent(code, note('left thigh', 'method: punch', `relation: ${relation}`, asked, fluorescence));
    silent(
      code,
      `${note('left thigh', 'method: punch', asked, 'specimen: {label: B, medium: formalin}')}  - site: left thigh\n    ${fluorescence}\n`,
    );
    silent(code, note('left thigh', 'method: punch', 'question: lupus', 'relation: lesional', fluorescence));
    silent(code, note('left thigh', 'method: punch', 'question: history of pemphigoid'));
  });
});
