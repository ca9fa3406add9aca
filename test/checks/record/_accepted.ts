export const note = (accepted: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: left ear\n    accepted: [${accepted}]\n`;
