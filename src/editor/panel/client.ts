/** What runs inside of the panel: it puts sections in, keeps scroll and focus, and says what was activated. */
import type { Asked, Shown } from './messages.ts';

declare const acquireVsCodeApi: () => {
  postMessage(message: Asked): void;
  setState(state: unknown): void;
};

const editor = acquireVsCodeApi();
const main = document.querySelector('main')!;
const switches = document.querySelectorAll<HTMLButtonElement>('nav button');
let here: number | undefined;

/** Puts in what has changed and nothing else, so that the rest keeps its place. */
function show({ sections, remembered }: Extract<Shown, { kind: 'show' }>): void {
  editor.setState(remembered);
  for (const button of switches)
    button.setAttribute('aria-pressed', String(button.dataset['view'] === remembered.view));
  const wanted = new Set(sections.map(({ id }) => id as string));
  for (const old of [...main.children]) if (!wanted.has(old.id)) old.remove();
  for (const [at, { id, html }] of sections.entries()) {
    const found = document.getElementById(id) ?? Object.assign(document.createElement('section'), { id });
    if (main.children[at] !== found) main.insertBefore(found, main.children[at] ?? null);
    if (written.get(id) !== html || found.childElementCount === 0) replace(found, html);
    written.set(id, html);
  }
  mark();
}

const written = new Map<string, string>();

/** Gives the focus back to what is at the same place of the section, and keeps open what was opened. */
function replace(section: HTMLElement, html: string): void {
  const focused = places(section).indexOf(document.activeElement as HTMLElement);
  const isOpen = section.querySelector('details')?.open === true;
  section.innerHTML = html;
  const details = section.querySelector('details');
  if (details !== null) details.open = isOpen;
  if (focused >= 0) places(section)[focused]?.focus({ preventScroll: true });
}

const places = (section: HTMLElement): HTMLElement[] => [
  ...section.querySelectorAll<HTMLElement>('button, summary, [tabindex]'),
];

/** Marks what belongs to the procedure in which the caret is. */
function mark(): void {
  for (const one of main.querySelectorAll<HTMLElement>('[data-procedure]')) {
    const isHere = one.dataset['procedure'] === String(here);
    one.classList.toggle('wheal-here', isHere);
    if (isHere) one.setAttribute('aria-current', 'true');
    else one.removeAttribute('aria-current');
  }
}

/** Goes where an activated mark points. */
function activate(target: EventTarget | null): boolean {
  const data = (target as Element | null)?.closest<HTMLElement>('[data-start], [data-line]')?.dataset;
  if (data === undefined) return false;
  if (data['start'] !== undefined) editor.postMessage({ kind: 'go', start: Number(data['start']) });
  else editor.postMessage({ kind: 'line', line: Number(data['line']), character: Number(data['character']) });
  return true;
}

window.addEventListener('message', ({ data }: MessageEvent<Shown>) => {
  if (data.kind === 'show') show(data);
  else {
    here = data.procedure;
    mark();
  }
});
main.addEventListener('click', ({ target }) => activate(target));
main.addEventListener('keydown', (event) => {
  // A button does that by itself.
  if ((event.key === 'Enter' || event.key === ' ') && !(event.target instanceof HTMLButtonElement))
    if (activate(event.target)) event.preventDefault();
});
for (const button of switches)
  button.addEventListener('click', () => {
    const view = button.dataset['view'];
    if (view === 'summary' || view === 'handout') editor.postMessage({ kind: 'view', view });
  });
editor.postMessage({ kind: 'ready' });
