export const format = { source: 'format', mark: 'format' } as const;
