export const note = (specimen: string, rest = ''): string =>
  `visit: 2026-03-02 10:05\nprocedures:\n  - {site: left ear, specimen: {${specimen}}}\n${rest}`;
