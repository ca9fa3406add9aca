/** Sources of allergy, devices, hemostasis and specimens. */
export const dangerSources = {};
