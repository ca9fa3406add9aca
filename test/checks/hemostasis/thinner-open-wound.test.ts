import { flags, silent } from '../tester.ts';

interface Wound {
  readonly medications?: string;
  readonly size?: string;
  readonly hemostasis?: string;
  readonly closure?: string;
  readonly dressing?: string;
}

const note = ({
  medications = 'warfarin',
  size = '6 mm',
  hemostasis = 'pressure',
  closure = 'second intention',
  dressing = 'gauze',
}: Wound): string =>
  `visit: 2026-03-02\npatient: {id: C-1, medications: "${medications}"}\nprocedures:\n  - {site: chin, method: punch, size: ${size}, hemostasis: ⟦${hemostasis}⟧, closure: ${closure}, dressing: ${dressing}}\n`;

const quiet = (wound: Wound): string => note(wound).replace(/[⟦⟧]/g, '');

describe('hemostasis/thinner-open-wound', () => {
  const code = 'hemostasis/thinner-open-wound';

  it('warns with anticoagulants', () => {
    for (const medications of [
      'warfarin',
      'on rivaroxaban',
      'blood thinner, unsure which',
      'not on aspirin, on dabigatran',
    ])
      flags(code, note({ medications }), { severity: 'warning' });
    flags(code, note({ size: '5 mm' }), { severity: 'warning' });
  });

  it('is information with antiplatelets, and silent with aspirin', () => {
    flags(code, note({ medications: 'clopidogrel' }), { severity: 'information' });
    silent(code, quiet({ medications: 'aspirin 81 mg' }));
  });

  it('is silent where the wound is small, closed, stopped or bound', () => {
    silent(code, quiet({ size: '4 mm' }));
    silent(code, quiet({ closure: '{material: nylon, size: 4-0, count: 2}' }));
    silent(code, quiet({ hemostasis: 'aluminum chloride' }));
    silent(code, quiet({ dressing: 'pressure dressing' }));
  });

  it('is silent where the medicine is denied or over', () => {
    silent(code, quiet({ medications: 'no blood thinners' }));
    silent(code, quiet({ medications: 'warfarin stopped 2019' }));
    silent(code, quiet({ medications: 'was on warfarin until 2021' }));
  });
});
