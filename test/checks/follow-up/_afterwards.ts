export const note = (rest: string): string => `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: punch
    size: 4 mm
${rest}`;
