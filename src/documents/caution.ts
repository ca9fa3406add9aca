/** What everything says that names a dose or may be taken for advice. */
export const caution =
  'Decision support for trained staff: verify every value; the treating clinician, local protocol and the current label decide.';
