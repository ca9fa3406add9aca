import type { Command } from './command.ts';

/** Shows what is open over all notes. */
export const showOpen: Command = ({ open }) => open.show();

/** Looks at all notes again. */
export const lookAgain: Command = ({ open }) => {
  open.lookAgain();
  return Promise.resolve();
};

/** Stops looking at notes. */
export const stopLooking: Command = ({ open }) => {
  open.stop();
  return Promise.resolve();
};
