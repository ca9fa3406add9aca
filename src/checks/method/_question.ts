export const question = 'what is asked';
