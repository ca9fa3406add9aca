/** Exit codes: nothing wrong enough to be an error, errors found, nothing could be judged. */
export const exit = { clean: 0, errors: 1, nothing: 2 } as const;
