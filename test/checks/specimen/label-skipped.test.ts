import { flags, silent } from '../tester.ts';
import { note } from './_specimen.ts';

describe('specimen/label-skipped', () => {
  const code = 'specimen/label-skipped';
  const labels = (...of: readonly string[]): string =>
    note(...of.map((label) => ['site: left cheek', 'method: shave', `specimen: {label: ${label}}`]));

  it('flags the label after a gap', () => {
    flags(code, labels('A', '⟦C⟧'), { severity: 'information' });
    flags(code, labels('⟦4⟧', '1'));
    flags(code, labels('a', 'b', '⟦d⟧'));
  });

  it('is silent without a gap, with letters that are often left out, and where labels are no series', () => {
    silent(code, labels('A', 'B', 'C'));
    silent(code, labels('C', 'B', 'A'));
    silent(code, labels('B'));
    silent(code, labels('H', 'J'));
    silent(code, labels('L', 'R'));
    silent(code, labels('A1', 'A3'));
    silent(code, labels('A', 'A', 'B'));
  });

  it('is silent where a label is still open or missing', () => {
    silent(code, labels('A', '??', 'C'));
    silent(
      code,
      note(
        ['site: left cheek', 'method: shave', 'specimen: {label: A}'],
        ['site: left cheek', 'method: shave', 'specimen: {medium: formalin}'],
        ['site: left cheek', 'method: shave', 'specimen: {label: C}'],
      ),
    );
  });

  it('counts the label of what was not sent', () => {
    silent(
      code,
      note(
        ['site: left cheek', 'method: shave', 'specimen: {label: A}'],
        ['site: left cheek', 'method: shave', 'specimen: {label: B, not-sent: benign skin tag}'],
        ['site: left cheek', 'method: shave', 'specimen: {label: C}'],
      ),
    );
  });
});
