import type { Language } from '../../note/words/language.ts';
import { dayNumber, weekdayOf } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';

const weekdays: Readonly<Record<Language, readonly string[]>> = {
  en: ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'],
  es: ['domingo', 'lunes', 'martes', 'miércoles', 'jueves', 'viernes', 'sábado'],
};

const months: Readonly<Record<Language, readonly string[]>> = {
  en: 'January February March April May June July August September October November December'.split(' '),
  es: 'enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre'.split(' '),
};

/** A date as people say it: `Thursday, March 12, 2026`, `jueves 12 de marzo de 2026`. */
export function dateWords(date: IsoDate, language: Language): string {
  const [year, month, day] = date.split('-').map(Number);
  const weekday = weekdays[language][weekdayOf(dayNumber(date))] ?? '';
  const name = months[language][(month ?? 0) - 1] ?? '';
  return language === 'en'
    ? `${weekday}, ${name} ${day ?? ''}, ${year ?? ''}`
    : `${weekday} ${day ?? ''} de ${name} de ${year ?? ''}`;
}

/** Things as a sentence lists them: `a, b and c`. */
export function listed(words: readonly string[], language: Language): string {
  const last = words.at(-1) ?? '';
  if (words.length < 2) return last;
  const and = language === 'en' ? 'and' : /^h?i(?!e)/i.test(last) ? 'e' : 'y';
  return `${words.slice(0, -1).join(', ')} ${and} ${last}`;
}
