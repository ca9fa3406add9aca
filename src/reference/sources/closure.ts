/** Sources of wound closure and suture removal. */
export const closureSources = {};
