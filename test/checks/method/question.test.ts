import { flags, silent } from '../tester.ts';

const note = (site: string, ...lines: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n${lines.map((line) => `    ${line}\n`).join('')}`;

describe('method/melanoma-sample', () => {
  const code = 'method/melanoma-sample';
  const asked = 'question: rule out melanoma';

  it('flags methods that may cut through the base', () => {
    for (const method of ['shave', 'tangential', 'snip', 'curettage'])
      flags(code, note('left upper back', `method: ⟦${method}⟧`, asked), { severity: 'warning' });
    flags(
      code,
      note('left upper back', 'method: ⟦shave⟧', 'depth: mid dermis', 'question: melanoma vs nevus'),
    );
  });

  it('counts lentigo maligna as melanoma, and leaves its broad shave on head and neck', () => {
    const lentigo = 'question: lentigo maligna';
    flags(code, note('left forearm', 'method: ⟦shave⟧', 'depth: mid dermis', lentigo), {
      severity: 'warning',
    });
    flags(code, note('left forearm', 'method: ⟦shave⟧', 'question: r/o LMM'));
    for (const site of ['left cheek', 'vertex of the scalp', 'left lateral neck'])
      silent(code, note(site, 'method: shave', 'depth: mid dermis', lentigo));
    flags(code, note('left lateral neck', 'method: ⟦shave⟧', 'depth: mid dermis', asked));
    silent(code, note('left forearm', 'method: shave', 'question: solar lentigo'));
    silent(code, note('left forearm', 'method: shave', 'question: solar lentigo, lentigo maligna unlikely'));
  });

  it('is information where a punch takes a part', () => {
    flags(code, note('left upper back', 'lesion: macule 7 x 5 mm', 'method: punch', 'size: ⟦4 mm⟧', asked), {
      severity: 'information',
    });
    flags(code, note('left upper back', 'lesion: macule 0.9 cm', 'method: punch', 'size: ⟦6 mm⟧', asked));
  });

  it('is information where a deep shave or an excision is smaller than its lesion', () => {
    for (const method of ['deep shave', 'excisional'])
      flags(
        code,
        note('left upper back', 'lesion: macule 7 x 5 mm', `method: ${method}`, 'size: ⟦5 x 5 mm⟧', asked),
        {
          severity: 'information',
        },
      );
    silent(
      code,
      note('left upper back', 'lesion: macule 7 x 5 mm', 'method: deep shave', 'size: 9 x 7 mm', asked),
    );
    silent(
      code,
      note('left upper back', 'lesion: macule 7 x 5 mm', 'method: incisional', 'size: 5 mm', asked),
    );
  });

  it('is silent on what the guideline allows', () => {
    for (const method of ['deep shave', 'excisional', 'punch', 'incisional'])
      silent(code, note('left upper back', `method: ${method}`, asked));
    silent(code, note('left upper back', 'method: shave', 'depth: deep dermis', asked));
    silent(code, note('left cheek', 'method: shave', asked));
    silent(code, note('left sole', 'method: shave', asked));
    silent(code, note('left upper back', 'lesion: macule 4 mm', 'method: punch', 'size: 6 mm', asked));
    silent(code, note('left upper back', 'lesion: patch 22 mm', 'method: punch', 'size: 4 mm', asked));
  });

  for (const question of [
    'melanoma of the left thigh in 2026',
    'rule out melanoma of the left thigh in 2014',
    'melanoma, changing since 2014',
    'nevus since 2014, melanoma',
    'r/o MM',
    'r/o mm',
    'pigmented, 6 mm, MM?',
    'favor melanoma over seborrheic keratosis',
    'favor dysplastic nevus over melanoma',
    'melanoma, less likely seborrheic keratosis',
    'melanoma must be excluded',
  ])
    it(`flags the question ${question}`, () => {
      flags(code, note('left upper back', 'method: ⟦shave⟧', `question: "${question}"`));
    });

  for (const question of [
    'no concern for melanoma',
    'not melanoma',
    'history of melanoma',
    'seborrheic keratosis, favor benign, r/o melanoma',
    'melanoma unlikely',
    'seborrheic keratosis, low suspicion of melanoma',
    'family history of melanoma; nevus',
    'basal cell carcinoma; melanoma of the left thigh in 2014',
    'melanoma 2014, now nevus',
    'dysplastic nevus',
    'seborrheic keratosis, 6 mm, growing',
    'seborrheic keratosis of a few mm',
    'favor seborrheic keratosis over melanoma',
    'seborrheic keratosis, less likely melanoma',
    '??',
  ])
    it(`is silent on the question ${question}`, () => {
      silent(code, note('left upper back', 'method: shave', `question: "${question}"`));
    });
});

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

describe('method/fat-not-reached', () => {
  const code = 'method/fat-not-reached';

  it('flags the depth, or else the method', () => {
    flags(code, note('left shin', 'method: punch', 'depth: ⟦deep dermis⟧', 'question: erythema nodosum'), {
      severity: 'warning',
    });
    flags(code, note('left shin', 'method: ⟦shave⟧', 'question: panniculitis?'));
  });

  it('is silent where fat was taken or nothing is said, and on a question that denies it', () => {
    silent(code, note('left shin', 'method: excisional', 'depth: subcutis', 'question: erythema nodosum'));
    silent(code, note('left shin', 'method: punch', 'question: erythema nodosum'));
    silent(code, note('left shin', 'method: shave', 'question: no panniculitis'));
    silent(code, note('left shin', 'method: shave', 'question: history of erythema nodosum, now nevus'));
  });
});

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
