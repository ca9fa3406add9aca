export const note = (timeOut: string, ...injections: string[]): string =>
  `visit: 2026-03-02\ntime-out: ${timeOut}\nprocedures:\n${injections
    .map((one) => `  - {site: left ear, anesthetic: {${one}}}\n`)
    .join('')}`;
