/** Sources of body sites. */
export const siteSources = {};
