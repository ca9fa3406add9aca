export const note = (specimen: string, rest = ''): string => `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: shave
    closure: none
    specimen:
${specimen}${rest}`;

export const sent = '      label: A\n      sent: 2026-03-02\n';

export const received = (rest: string): string =>
  note(`${sent}      results:\n        - received: 2026-03-09\n${rest}`);
