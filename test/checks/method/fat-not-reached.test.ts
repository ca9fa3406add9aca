import { flags, silent } from '../tester.ts';
import { note } from './_question.ts';

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
